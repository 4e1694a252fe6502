import { useState } from 'react';
import { Field } from '../claims/Field.tsx';
import { useAsked } from './supposed.ts';

/** The most that may be spent; empty where there is no limit. */
export function Budget({ currency }: { readonly currency: string }) {
  const [{ budget }, ask] = useAsked();
  const [text, setText] = useState(budget === null ? '' : String(budget));
  const wrong = text.trim() !== '' && !/^\d+([.,]\d+)?$/.test(text.trim());
  const type = (typed: string) => {
    setText(typed);
    const plain = typed.trim().replace(',', '.');
    if (plain === '') ask({ budget: null });
    else if (/^\d+(\.\d+)?$/.test(plain)) ask({ budget: Number(plain) });
  };
  return (
    <div className="budget">
      <Field
        label={`Budget, ${currency}`}
        hint={wrong ? 'A number, such as 300.' : 'Empty: no limit.'}
        wrong={wrong}
      >
        {(ties) => (
          <input
            {...ties}
            inputMode="decimal"
            value={text}
            onChange={({ target }) => type(target.value)}
          />
        )}
      </Field>
    </div>
  );
}

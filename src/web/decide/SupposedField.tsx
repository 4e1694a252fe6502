import { useState } from 'react';
import { Field } from '../claims/Field.tsx';

interface Props {
  readonly label: string;
  /** As the desk has it. */
  readonly as: string;
  /** What is supposed in its place; undefined where nothing is. */
  readonly value: string | undefined;
  readonly set: (value: string | undefined) => void;
}

const NUMBER = /^\d{1,12}([.,]\d{1,6})?$/;

/** A number that may be supposed to be another; emptied, it is again what the desk has. */
export function SupposedField({ label, as, value, set }: Props) {
  const [typed, setTyped] = useState<string>();
  // What was typed stays as it was written for as long as it means what is supposed.
  const shown = typed !== undefined && same(typed, value) ? typed : (value ?? '');
  const wrong = typed !== undefined && typed.trim() !== '' && !isAmount(typed);
  return (
    <Field
      label={label}
      hint={wrong ? 'A number above 0.' : value === undefined ? '' : `Supposed; it is ${as}.`}
      wrong={wrong}
    >
      {(ties) => (
        <input
          {...ties}
          className={value === undefined ? undefined : 'changed'}
          inputMode="decimal"
          placeholder={as}
          value={wrong ? typed : shown}
          onChange={({ target }) => {
            setTyped(target.value);
            if (target.value.trim() === '') set(undefined);
            else if (isAmount(target.value)) set(plain(target.value));
          }}
        />
      )}
    </Field>
  );
}

function plain(text: string): string {
  return text.trim().replace(',', '.');
}

function isAmount(text: string): boolean {
  return NUMBER.test(text.trim()) && Number(plain(text)) > 0;
}

function same(typed: string, value: string | undefined): boolean {
  if (value === undefined) return typed.trim() === '';
  return Number(plain(typed)) === Number(value);
}

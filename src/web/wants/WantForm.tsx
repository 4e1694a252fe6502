import { type FormEvent, useState } from 'react';
import type { Wanted } from '../../contract/index.ts';
import { useDesk } from '../app/context.ts';
import { Field } from '../claims/Field.tsx';
import { shortName } from '../view/index.ts';
import { draftOf, type WantDraft, wantStep, wrongWant } from './draft.ts';

interface Props {
  /** The want to change; without it one is added. */
  readonly want: Wanted | undefined;
  /** Of the desk. */
  readonly currency: string;
  readonly done: () => void;
}

const FIELDS: readonly (readonly [key: keyof WantDraft, label: string, hint: string])[] = [
  ['service', 'In a slab of', 'Empty: raw.'],
  ['grade', 'Grade', 'Empty: any.'],
  ['max_price', 'At most, landed', 'Empty: no limit, and none is bought.'],
  ['currency', 'Currency', ''],
  ['note', 'Note', ''],
];

/** The form for something wanted. */
export function WantForm({ want, currency, done }: Props) {
  const { book, change } = useDesk();
  const [draft, setDraft] = useState(() => draftOf(want, currency));
  const [tried, setTried] = useState(false);
  const wrong = wrongWant(draft);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (wrong !== '') return;
    change(wantStep(draft, want, shortName(book, draft.printing)));
    done();
  };
  return (
    <form
      className="want-form"
      aria-label={want ? 'Change the want' : 'Add a want'}
      onSubmit={submit}
    >
      <Field label="Printing" hint="">
        {(ties) => (
          <select
            {...ties}
            value={draft.printing}
            onChange={({ target }) => setDraft({ ...draft, printing: target.value })}
          >
            <option value="">choose …</option>
            {book.dossier.printings.map(({ id }) => (
              <option key={id} value={id}>
                {shortName(book, id)}
              </option>
            ))}
          </select>
        )}
      </Field>
      {FIELDS.map(([key, label, hint]) => (
        <Field key={key} label={label} hint={hint}>
          {(ties) => (
            <input
              {...ties}
              value={draft[key]}
              onChange={({ target }) => setDraft({ ...draft, [key]: target.value })}
            />
          )}
        </Field>
      ))}
      {tried && wrong ? <p className="form-trouble">{wrong}</p> : null}
      <div className="acts">
        <button type="submit" className="choice chosen">
          {want ? 'Change it' : 'Add it'}
        </button>
        <button type="button" className="choice" onClick={done}>
          Leave it
        </button>
      </div>
    </form>
  );
}

import type { FormEvent } from 'react';
import { nameOfCode } from '../../catalogue/index.ts';
import { Field } from '../claims/Field.tsx';
import { type ListingDraft, wrongListing } from './draft.ts';

interface Props {
  readonly draft: ListingDraft;
  readonly set: (draft: ListingDraft) => void;
  readonly weigh: () => void;
  readonly busy: boolean;
}

const FIELDS: readonly (readonly [key: keyof ListingDraft, label: string, hint: string])[] = [
  ['price', 'Price asked', ''],
  ['currency', 'Currency', 'Three letters, such as BRL.'],
  ['shipping', 'Shipping', 'In the same currency; empty where not known.'],
  ['origin', 'From', 'A country, such as BR; empty counts as abroad.'],
  ['shippedBy', 'Sent by', 'As your charges name the carrier.'],
  ['service', 'In a slab of', 'Empty: raw.'],
  ['grade', 'Grade', ''],
];

/** What is asked of a listing. */
export function ListingForm({ draft, set, weigh, busy }: Props) {
  const wrong = wrongListing(draft);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (wrong === '') weigh();
  };
  const country = /^[A-Za-z]{2}$/.test(draft.origin)
    ? nameOfCode(draft.origin.toUpperCase(), 'region')
    : '';
  return (
    <form className="listing-form" onSubmit={submit}>
      <Field label="The seller’s own words" hint="Title and text, as they stand, in any language.">
        {(ties) => (
          <textarea
            {...ties}
            rows={6}
            maxLength={50_000}
            value={draft.words}
            onChange={({ target }) => set({ ...draft, words: target.value })}
          />
        )}
      </Field>
      <div className="listing-fields">
        {FIELDS.map(([key, label, hint]) => (
          <Field key={key} label={label} hint={key === 'origin' && country ? `${country}.` : hint}>
            {(ties) => (
              <input
                {...ties}
                value={draft[key]}
                inputMode={key === 'price' || key === 'shipping' ? 'decimal' : 'text'}
                onChange={({ target }) => set({ ...draft, [key]: target.value })}
              />
            )}
          </Field>
        ))}
      </div>
      <div className="acts">
        <button type="submit" className="choice chosen" disabled={wrong !== '' || busy}>
          {busy ? 'Being weighed …' : 'Weigh it'}
        </button>
        <span className="detail" aria-live="polite">
          {draft.words === '' ? '' : wrong}
        </span>
      </div>
    </form>
  );
}

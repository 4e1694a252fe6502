import { sayEdtf } from '../../evidence/index.ts';
import { Field } from '../claims/Field.tsx';
import { readDate } from '../claims/readDate.ts';
import { Chance } from '../marks/index.ts';
import { isDateProperty, PROPERTIES } from '../words/index.ts';
import type { DraftClaim } from './draft.ts';

interface Props {
  readonly claim: DraftClaim;
  /** Of its radio buttons; one on the page. */
  readonly name: string;
  readonly set: (part: Partial<DraftClaim>) => void;
}

/** A recognised claim: what, when, by whom, and how sure the reading is. */
export function NoteClaim({ claim, name, set }: Props) {
  const date = isDateProperty(claim.property) ? readDate(claim.value) : undefined;
  return (
    <fieldset className={claim.keep ? 'note-claim' : 'note-claim left-out'}>
      <legend className="unseen">A claim read from this line</legend>
      <label className="field">
        <span>states its</span>
        <select value={claim.property} onChange={(event) => set({ property: event.target.value })}>
          {PROPERTIES.map(({ property, name: words }) => (
            <option key={property} value={property}>
              {words}
            </option>
          ))}
        </select>
      </label>
      <Field
        label="as"
        hint={date ? date.wrong || sayEdtf(claim.value) : ''}
        wrong={Boolean(date?.wrong)}
      >
        {(ties) => (
          <input
            {...ties}
            value={claim.value}
            onChange={(event) => set({ value: event.target.value })}
          />
        )}
      </Field>
      <label className="field">
        <span>by</span>
        <input
          value={claim.source}
          placeholder="my notes"
          onChange={(event) => set({ source: event.target.value })}
        />
      </label>
      <span className="field">
        <span>read with</span>
        <Chance
          p={claim.p}
          why="Probability that the line was read as it was meant: property, value and source together."
        />
      </span>
      <button type="button" className="choice" onClick={() => set({ keep: !claim.keep })}>
        {claim.keep ? 'Leave out' : 'Take in'}
      </button>
      {claim.choices.length === 2 ? <Choice claim={claim} name={name} set={set} /> : null}
    </fieldset>
  );
}

function Choice({ claim, name, set }: Props) {
  const both = `[${claim.choices.join(',')}]`;
  const options = [
    ...claim.choices.map((value) => [value, sayEdtf(value)] as const),
    [both, 'leave it open'] as const,
  ];
  return (
    <div className="two-ways" role="radiogroup" aria-label="This day can be read two ways">
      <span>Two ways to read this day:</span>
      {options.map(([value, words]) => (
        <label key={value}>
          <input
            type="radio"
            name={name}
            checked={claim.value === value}
            onChange={() => set({ value })}
          />{' '}
          {words}
        </label>
      ))}
    </div>
  );
}

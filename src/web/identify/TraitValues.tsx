import { type FormEvent, useState } from 'react';
import { nameOfCode, sayTrait } from '../../catalogue/index.ts';
import type { IdentifyAnswer } from '../../contract/index.ts';
import { useBook } from '../app/context.ts';
import { Field } from '../claims/Field.tsx';
import { candidateName } from './Candidates.tsx';
import type { Sight } from './observe.ts';

interface Props {
  readonly trait: IdentifyAnswer['traits'][number];
  readonly answer: IdentifyAnswer;
  readonly see: (sight: Sight) => void;
  readonly unsee: (trait: string) => void;
}

/** What a trait may show, to be ticked as seen; a number is written with its unit. */
export function TraitValues({ trait, answer, see, unsee }: Props) {
  const seen = answer.readings.filter(
    (one) =>
      (one.from === 'seen' || one.from === 'told') && sayTrait(one.trait) === sayTrait(trait.trait),
  );
  if (trait.unit !== null) return <Measured {...{ trait, answer, see }} now={seen[0]?.value} />;
  const said = trait.values.some(({ value }) => value === 'none')
    ? trait.values
    : [...trait.values, { value: 'none', ids: [] }];
  return (
    <fieldset className="trait-values">
      <legend className="unseen">{sayTrait(trait.trait)}, as seen</legend>
      {said.map(({ value, ids }) => (
        <Tick
          key={value}
          words={
            trait.trait === 'language' && value !== 'none' ? nameOfCode(value, 'language') : value
          }
          {...{ ids, answer }}
          on={seen.some((one) => one.value === value)}
          toggle={(on) =>
            on ? see({ trait: trait.trait, value, sees: trait.sees }) : unsee(trait.trait)
          }
        />
      ))}
    </fieldset>
  );
}

interface TickProps {
  readonly words: string;
  readonly ids: readonly string[];
  readonly answer: IdentifyAnswer;
  readonly on: boolean;
  readonly toggle: (on: boolean) => void;
}

function Tick({ words, ids, answer, on, toggle }: TickProps) {
  const book = useBook();
  const names = ids.map((id) => candidateName(book, answer, id)).join('; ');
  return (
    <button
      type="button"
      className="choice"
      aria-pressed={on}
      data-why={ids.length === 0 ? 'Known to be absent.' : `So on: ${names}.`}
      onClick={() => toggle(!on)}
    >
      {on ? '✓ ' : ''}
      {words}
    </button>
  );
}

interface MeasuredProps {
  readonly trait: Props['trait'];
  readonly answer: IdentifyAnswer;
  readonly see: (sight: Sight) => void;
  readonly now: string | undefined;
}

function Measured({ trait, answer, see, now }: MeasuredProps) {
  const book = useBook();
  const [text, setText] = useState('');
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (text.trim() === '') return;
    see({ trait: trait.trait, value: text.trim(), sees: trait.sees });
    setText('');
  };
  const known = trait.values.map(
    ({ value, ids }) =>
      `${value}: ${ids.length > 3 ? `${ids.length} of them` : ids.map((id) => candidateName(book, answer, id)).join(', ')}`,
  );
  return (
    <form className="trait-number" onSubmit={submit}>
      <Field
        label={`Measured, with its unit${now === undefined ? '' : `; noted: ${now}`}`}
        hint={known.join('; ')}
      >
        {(ties) => (
          <input {...ties} value={text} onChange={({ target }) => setText(target.value)} />
        )}
      </Field>
      <button type="submit" className="choice">
        Note it
      </button>
    </form>
  );
}

import { Link, useNavigate, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import type { IdentifyAnswer } from '../../contract/index.ts';
import { dayFrom, sayDay } from '../../evidence/index.ts';
import { useDesk } from '../app/context.ts';
import { Field } from '../claims/Field.tsx';
import { Screen } from '../marks/index.ts';
import { shortName } from '../view/index.ts';
import { useBenchList, useIdentify } from '../wire/index.ts';
import { count } from '../words/index.ts';
import { Candidates } from './Candidates.tsx';
import { Looks } from './Looks.tsx';
import { notingStep, ownReadings, type Sight, takingBackStep } from './observe.ts';
import { Readings } from './Readings.tsx';

/** A card in hand: what is ticked is kept only for as long as the screen is open. */
export function IdentifyCard() {
  const [saw, setSaw] = useState<readonly Sight[]>([]);
  const { book } = useDesk();
  const { data, error } = useIdentify(book.dossier.version, { saw: [...saw] });
  const others = (trait: string) => saw.filter((one) => one.trait !== trait);
  return (
    <Sheet
      answer={data}
      error={error}
      copy={undefined}
      see={(sight) => setSaw([...others(sight.trait), sight])}
      unsee={(trait) => setSaw(others(trait))}
    />
  );
}

/** A copy of the desk: what is ticked is kept with it, and can be undone. */
export function IdentifyCopy() {
  const { id } = useParams({ from: '/identify/$id' });
  const { book, change } = useDesk();
  const { data, error } = useIdentify(book.dossier.version, { copy: id, saw: [] });
  const noted = (trait: string) => (data ? ownReadings(data, trait) : []);
  return (
    <Sheet
      key={id}
      answer={data}
      error={error}
      copy={id}
      see={(sight) => change(notingStep(id, sight, noted(sight.trait)))}
      unsee={(trait) => change(takingBackStep(id, noted(trait)))}
    />
  );
}

interface Props {
  readonly answer: IdentifyAnswer | undefined;
  readonly error: Error | null;
  readonly copy: string | undefined;
  readonly see: (sight: Sight) => void;
  readonly unsee: (trait: string) => void;
}

function Sheet({ answer, error, copy, see, unsee }: Props) {
  return (
    <Screen title="Which printing is it?" lead={answer ? sayGround(answer) : 'One moment …'}>
      {error ? (
        <p className="trouble" role="alert">
          {error.message}
        </p>
      ) : null}
      <div className="acts identify-acts">
        <ChooseCopy copy={copy} />
        <Link to="/key" className="choice">
          The key on one page
        </Link>
      </div>
      {answer ? (
        <div className="identify-columns">
          <div>
            <Candidates answer={answer} />
            <Readings answer={answer} unsee={unsee} />
          </div>
          <Looks answer={answer} see={see} unsee={unsee} />
        </div>
      ) : null}
    </Screen>
  );
}

function sayGround({ readings, on }: IdentifyAnswer): string {
  const asOf = on === '' ? '' : ` as of ${sayDay(dayFrom(on))}`;
  const by =
    readings.length === 0 ? 'No reading yet: by' : `By ${count(readings.length, 'reading')} and by`;
  return `${by} how many of each are about${asOf}. Every reading may be wrong, and this is no verdict on a copy.`;
}

/** Which copy the screen is about. */
function ChooseCopy({ copy }: { readonly copy: string | undefined }) {
  const { book } = useDesk();
  const navigate = useNavigate();
  const { data } = useBenchList(book.dossier.version);
  const choose = (id: string) =>
    void (id === ''
      ? navigate({ to: '/identify' })
      : navigate({ to: '/identify/$id', params: { id } }));
  return (
    <Field label="Of">
      {(ties) => (
        <select {...ties} value={copy ?? ''} onChange={({ target }) => choose(target.value)}>
          <option value="">a card in hand, nothing is kept</option>
          {(data?.copies ?? []).map(({ id, printing }) => (
            <option key={id} value={id}>
              {id}: {nameOf(printing, (one) => shortName(book, one))}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}

function nameOf(cell: string, called: (id: string) => string): string {
  const [first, ...others] = cell.split('|').filter(Boolean);
  if (first === undefined) return 'not known yet';
  return `${called(first.trim())}${others.length > 0 ? ` or ${count(others.length, 'other')}` : ''}`;
}

import { sayTrait } from '../../catalogue/index.ts';
import type { IdentifyAnswer } from '../../contract/index.ts';
import { Num } from '../marks/index.ts';
import { count, sayBits } from '../words/index.ts';
import { CardPlace } from './CardPlace.tsx';
import type { Sight } from './observe.ts';
import { TraitValues } from './TraitValues.tsx';

interface Props {
  readonly answer: IdentifyAnswer;
  readonly see: (sight: Sight) => void;
  readonly unsee: (trait: string) => void;
}

type Trait = IdentifyAnswer['traits'][number];

const WHY =
  'Expected fall of the doubt about which printing it is, in bits: 1 bit halves it. Looks stand in order of bits for their effort; a look by eye is the lightest.';

/** The traits that can be looked at, first what tells most for its effort, then the rest. */
export function Looks({ answer, see, unsee }: Props) {
  const gains = new Map(answer.next.map((look, at) => [look.trait, { ...look, at }]));
  const rank = ({ trait }: Trait) => gains.get(trait)?.at ?? gains.size;
  const inOrder = [...answer.traits].sort((a, b) => rank(a) - rank(b));
  const open = inOrder.filter(({ trait }) => gains.has(trait));
  const seen = new Set(
    answer.readings
      .filter(({ from }) => from === 'seen' || from === 'told')
      .map(({ trait }) => sayTrait(trait)),
  );
  const isSeen = ({ trait }: Trait) => seen.has(sayTrait(trait));
  const done = inOrder.filter((one) => !gains.has(one.trait) && isSeen(one));
  const rest = inOrder.filter((one) => !gains.has(one.trait) && !isSeen(one));
  const row = (trait: Trait) => (
    <Look
      key={trait.trait}
      trait={trait}
      bits={gains.get(trait.trait)?.gainBits}
      {...{ answer, see, unsee }}
    />
  );
  return (
    <section aria-label="Where to look next">
      <h2>Where to look next</h2>
      {open.length > 0 ? (
        <p className="detail">
          What tells most for its effort first; in bits, 1 bit halves the doubt.
        </p>
      ) : null}
      {open.length === 0 ? (
        <p className="empty">No further trait in the dossier would tell more.</p>
      ) : (
        <ol className="looks">{open.map(row)}</ol>
      )}
      {done.length > 0 ? (
        <>
          <h3>
            <span>Looked at</span>
          </h3>
          <ol className="looks rest">{done.map(row)}</ol>
        </>
      ) : null}
      {rest.length > 0 ? (
        <details className="outcomes">
          <summary>{count(rest.length, 'trait')} that would tell nothing more</summary>
          <ol className="looks rest">{rest.map(row)}</ol>
        </details>
      ) : null}
    </section>
  );
}

interface LookProps extends Props {
  readonly trait: Trait;
  readonly bits: number | undefined;
}

function Look({ trait, bits, answer, see, unsee }: LookProps) {
  const { sees, side, region, caution } = trait;
  return (
    <li className="look-at">
      <CardPlace card={answer.card} region={region} side={side} />
      <div>
        <p>
          <strong>{sayTrait(trait.trait)}</strong>{' '}
          <span className="detail">
            by {sees}, {side}
            {sayBox(region)}
          </span>
        </p>
        <TraitValues trait={trait} answer={answer} see={see} unsee={unsee} />
        {caution === '' ? null : <p className="detail">{caution}</p>}
      </div>
      {bits === undefined ? null : (
        <span className="figure">
          <Num why={WHY}>{sayBits(bits)}</Num>
        </span>
      )}
    </li>
  );
}

/** `x0 y0 x1 y1` in words; empty where it is not told. */
export function sayBox(region: string): string {
  const [x0, y0, x1, y1, ...more] = region.match(/\d+(\.\d+)?/g) ?? [];
  if (y1 === undefined || more.length > 0) return '';
  return `, ${x0} to ${x1} mm from the left, ${y0} to ${y1} mm from the top`;
}

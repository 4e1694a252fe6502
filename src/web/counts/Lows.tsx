import type { PopulationAnswer, WirePrintingCount } from '../../contract/index.ts';
import { useBook } from '../app/context.ts';
import { Num, PrintingLink } from '../marks/index.ts';
import { lanesOf, NO_FILTER } from '../view/index.ts';
import { sayP } from '../words/index.ts';
import { explainLow } from './tell.ts';

type Low = NonNullable<WirePrintingCount['low']>;

/** Few exist, or few were sent in? */
export function Lows({ population: { printings } }: { readonly population: PopulationAnswer }) {
  const lanes = lanesOf(useBook(), NO_FILTER);
  const byId = new Map(printings.map((one) => [one.id, one]));
  const lows = lanes.flatMap((id) => {
    const low = byId.get(id)?.low;
    return low ? [{ id, low }] : [];
  });
  if (lows.length === 0) return null;
  return (
    <section>
      <h2>Few exist, or few were sent in?</h2>
      <p className="lead">
        Printings whose population is low among those of the dossier, and what that is put down to.
      </p>
      <ul className="rows lows">
        {lows.map(({ id, low }) => (
          <li key={id}>
            <span className="low-name">
              <PrintingLink id={id} />
            </span>
            <LowBar low={low} />
            <span className="detail">
              {low.settle === null
                ? 'Settled by what is known.'
                : `Would settle it: ${low.settle}.`}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The two explanations against each other, with the probability of the first. */
export function LowBar({ low }: { readonly low: Low }) {
  const few = low.p_few_exist;
  return (
    <span className="low-bar">
      <span>
        few exist <Num why={explainLow(low)}>{sayP(few)}</Num>
      </span>
      <svg viewBox="0 0 160 10" width="160" height="10" aria-hidden="true">
        <rect className="exist" width={160 * few} height="10" />
        <path className="frame-line" d="M.5.5H159.5V9.5H.5z" />
      </svg>
      <span className="detail">{sayP(1 - few)} few sent in</span>
    </span>
  );
}

import type { PopulationAnswer, WireExtant } from '../../contract/index.ts';
import { useBook } from '../app/context.ts';
import { Num, PrintingLink } from '../marks/index.ts';
import { lanesOf, NO_FILTER } from '../view/index.ts';
import { count } from '../words/index.ts';
import { explainExtant, sayExtant } from './tell.ts';

/** Certified copies that can turn up, from certificates that were seen again. */
export function Extants({ population: { printings } }: { readonly population: PopulationAnswer }) {
  const lanes = lanesOf(useBook(), NO_FILTER);
  const byId = new Map(printings.map((one) => [one.id, one]));
  const known = lanes.flatMap((id) => {
    const extant = byId.get(id)?.extant;
    return extant ? [{ id, extant }] : [];
  });
  const most = Math.max(1, ...known.map(({ extant }) => extant.interval95[1]));
  return (
    <section>
      <h2>Certified copies that can turn up</h2>
      <p className="lead">
        From certificates seen again. Copies that lie still in a collection are in none of it; dear
        ones are seen again more often, so it errs low. The lines are on a scale of square roots,
        from none to {most}.
      </p>
      {known.length === 0 ? (
        <p className="empty">Not known: no certificate was seen twice.</p>
      ) : (
        <div className="wide">
          <table className="list">
            <thead>
              <tr>
                <th scope="col">Printing</th>
                <th scope="col" className="figure">
                  Copies
                </th>
                <th scope="col">95 % within</th>
                <th scope="col">Method</th>
                <th scope="col" className="figure">
                  Certificates seen
                </th>
                <th scope="col">Misleads where</th>
              </tr>
            </thead>
            <tbody>
              {known.map(({ id, extant }) => (
                <Row key={id} {...{ id, extant, most }} />
              ))}
            </tbody>
          </table>
        </div>
      )}
      {known.length < lanes.length && known.length > 0 ? (
        <p className="detail">
          Not known of {count(lanes.length - known.length, 'printing')} more: no certificate was
          seen twice.
        </p>
      ) : null}
    </section>
  );
}

interface RowProps {
  readonly id: string;
  readonly extant: WireExtant;
  readonly most: number;
}

function Row({ id, extant, most }: RowProps) {
  const [low, high] = extant.interval95;
  const x = (value: number) => 1 + 118 * Math.sqrt(value / most);
  return (
    <tr>
      <th scope="row">
        <PrintingLink id={id} />
      </th>
      <td className="figure" data-head="copies">
        <Num why={explainExtant(extant)}>{sayExtant(extant)}</Num>
      </td>
      <td className="no-break" data-head="95 % within">
        <svg
          className="interval extant"
          viewBox="0 0 120 12"
          width="120"
          height="12"
          aria-hidden="true"
        >
          <path className="ground" d="M1 6H119" />
          <path className="span" d={`M${x(low)} 2v8M${x(low)} 6H${x(high)}M${x(high)} 2v8`} />
          <rect className="best" x={x(extant.estimate) - 1.5} y="1" width="3" height="10" />
        </svg>{' '}
        {low} to {high}
      </td>
      <td data-head="method">{extant.method}</td>
      <td className="figure" data-head="seen">
        {extant.seen}, {extant.again} again
      </td>
      <td className="detail cautions" data-head="misleads">
        {extant.cautions.join(' ')}
      </td>
    </tr>
  );
}

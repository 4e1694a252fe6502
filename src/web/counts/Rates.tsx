import { useState } from 'react';
import type { CountingService, PopulationAnswer } from '../../contract/index.ts';
import { sayEdtf } from '../../evidence/index.ts';
import { useBook } from '../app/context.ts';
import { type AxisLine, AxisWords, axisPath, Num, PrintingLink } from '../marks/index.ts';
import { lanesOf, NO_FILTER } from '../view/index.ts';
import { ORDERS, type Order, type RateRow, rateRows } from './order.ts';
import { explainRate, explainShrunk, percent } from './tell.ts';

/** Top rates of each service with their intervals side by side, raw and shrunk, sorted by choice. */
export function Rates({ population }: { readonly population: PopulationAnswer }) {
  const { services, printings } = population;
  const lanes = lanesOf(useBook(), NO_FILTER);
  const [order, setOrder] = useState<Order>('shrunk');
  return (
    <section>
      <h2>Top rates</h2>
      <p className="lead">
        The share of the graded copies at a top grade: as counted, and in the light of the service’s
        other printings. The lines hold the rate with probability 0.95.
      </p>
      <div className="rates-head">
        <label className="field">
          <span>Sorted by</span>
          <select value={order} onChange={(event) => setOrder(event.target.value as Order)}>
            {ORDERS.map(([id, words]) => (
              <option key={id} value={id}>
                {words}
              </option>
            ))}
          </select>
        </label>
        <div className="legend">
          <div>
            <RateMark interval={[0, 1]} rate={0.5} most={1} kind="raw" width={44} /> as counted
          </div>
          <div>
            <RateMark interval={[0.1, 0.9]} rate={0.5} most={1} kind="shrunk" width={44} /> shrunk
          </div>
        </div>
      </div>
      {services.map((service) => {
        const rows = rateRows(printings, service.id, order, lanes);
        return rows.length > 0 ? <Service key={service.id} service={service} rows={rows} /> : null;
      })}
    </section>
  );
}

interface ServiceProps {
  readonly service: CountingService;
  readonly rows: readonly RateRow[];
}

function Service({ service, rows }: ServiceProps) {
  const newest = service.reports.at(-1)?.as_of ?? '';
  const most = Math.max(0.1, ...rows.map(({ count }) => Math.min(1, count.shrunk95[1] * 1.6)));
  const top = [0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.8, 1].find((one) => one >= most) ?? 1;
  const lines = linesUpTo(top);
  return (
    <div className="wide">
      <table className="list brief rates">
        <caption>
          {service.title}, as of {sayEdtf(newest)}
        </caption>
        <thead>
          <tr>
            <th scope="col">Printing</th>
            <th scope="col" className="rate-axis">
              <AxisWords lines={lines} />
            </th>
            <th scope="col" className="figure">
              As counted
            </th>
            <th scope="col" className="figure">
              Shrunk
            </th>
            <th scope="col" className="figure">
              Top of graded
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <Row key={row.id} {...{ row, service, top, lines }} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** Lines at every 5, 10 or 20 % from nothing to the top. */
function linesUpTo(top: number): readonly AxisLine[] {
  const step = top <= 0.25 ? 5 : top <= 0.6 ? 10 : 20;
  const upTo = Math.round(100 * top);
  return Array.from({ length: Math.floor(upTo / step) + 1 }, (_, i) => ({
    at: (i * step) / upTo,
    words: `${i * step} %`,
  }));
}

interface RowProps {
  readonly row: RateRow;
  readonly service: CountingService;
  readonly top: number;
  readonly lines: readonly AxisLine[];
}

function Row({ row: { id, count }, service, top, lines }: RowProps) {
  const about = count.lumped_with.length > 0 ? '≈ ' : '';
  return (
    <tr>
      <th scope="row">
        <PrintingLink id={id} />
      </th>
      <td className="rate-drawn">
        <RateMark
          {...{ lines, most: top }}
          interval={count.interval95}
          rate={count.rate}
          kind="raw"
        />
        <RateMark
          {...{ lines, most: top }}
          interval={count.shrunk95}
          rate={count.shrunk}
          kind="shrunk"
        />
      </td>
      <td className="figure" data-head="as counted">
        <Num why={explainRate(count, service)}>
          {count.rate === null ? 'none' : percent(count.rate)}
        </Num>
      </td>
      <td className="figure" data-head="shrunk">
        <Num why={explainShrunk(count, service)}>{percent(count.shrunk)}</Num>
      </td>
      <td className="figure" data-head="top of graded">
        {about}
        {Math.round(count.top)} of {Math.round(count.total)}
      </td>
    </tr>
  );
}

interface MarkProps {
  readonly interval: readonly [number, number];
  readonly rate: number | null;
  /** What the right end stands for. */
  readonly most: number;
  readonly kind: 'raw' | 'shrunk';
  readonly width?: number;
  readonly lines?: readonly AxisLine[];
}

/** A rate on its interval; an interval that goes on beyond the axis ends in an arrow. */
function RateMark({ interval: [low, high], rate, most, kind, width, lines = [] }: MarkProps) {
  const x = (value: number) => 2 + 296 * Math.min(1, value / most);
  const beyond = high > most;
  return (
    <svg
      className={`rate ${kind}`}
      viewBox="0 0 300 12"
      preserveAspectRatio="none"
      {...(width ? { width, height: 12 } : { width: '100%', height: 12 })}
      aria-hidden="true"
    >
      <path className="rules" d={axisPath(lines)} vectorEffect="non-scaling-stroke" />
      <path className="span" d={`M${x(low)} 6H${x(high)}`} vectorEffect="non-scaling-stroke" />
      <path
        className="span"
        d={`M${x(low)} 2v8${beyond ? '' : `M${x(high)} 2v8`}`}
        vectorEffect="non-scaling-stroke"
      />
      {beyond ? (
        <path className="span" d="M292 2l6 4l-6 4" vectorEffect="non-scaling-stroke" />
      ) : null}
      {rate === null || rate > most ? null : (
        <path className="best" d={`M${x(rate)} 0v12`} vectorEffect="non-scaling-stroke" />
      )}
    </svg>
  );
}

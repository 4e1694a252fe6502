import type { BenchCopy } from '../../contract/index.ts';
import { capital, count } from '../words/index.ts';
import { sayIso, sayLeft } from './tell.ts';

/** The deadlines that press, the nearest first. */
export function Clock({ clock: { open, unclear } }: Pick<BenchCopy, 'clock'>) {
  if (open.length === 0 && unclear.length === 0) return null;
  return (
    <section>
      <h3>
        The clock <span>last day</span>
      </h3>
      <ul className="rows">
        {open.map(({ against, days, counts, startsFrom, startsOn, last, left }) => (
          <li key={`${against}${last}`}>
            <span>
              {capital(against)}: <mark>{sayLeft(left)}</mark>
              <span className="detail">
                {' '}
                {count(days, `${counts} day`)} from {sayIso(startsOn)}, {startsFrom}
              </span>
            </span>
            <span className="figure">{sayIso(last)}</span>
          </li>
        ))}
        {unclear.map(({ against, why }) => (
          <li key={against + why}>
            <span>
              {capital(against)} <span className="detail">{why}</span>
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

import { nameOfCode } from '../../catalogue/index.ts';
import type { WeekdayRow } from '../../contract/index.ts';
import { useBook } from '../app/context.ts';
import { Num, SourceLink } from '../marks/index.ts';
import { count, sayP, sayStated } from '../words/index.ts';

const DAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];

/** The weekdays on which each market mostly released, as learned from the dossier. */
export function Weekdays() {
  const { dating, dossier } = useBook();
  const habits = dating?.weekdays ?? [];
  if (habits.length === 0 && dossier.weekdays.length === 0) return null;
  return (
    <section>
      <h2>Weekdays</h2>
      <p className="lead">Shares of the releases of a market, learned from this dossier.</p>
      <div className="wide">
        <table className="list weekdays">
          <thead>
            <tr>
              <th scope="col">Market</th>
              {DAYS.map((day) => (
                <th scope="col" className="figure" key={day}>
                  <abbr title={day}>{day.slice(0, 2)}</abbr>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {habits.map(({ market, channel, shares, releases }) => (
              <tr key={`${market}|${channel}`}>
                <th scope="row">
                  {[nameOfCode(market, 'region') || 'market not known', channel]
                    .filter(Boolean)
                    .join(', ')}
                  <span className="detail"> {count(releases, 'release')}</span>
                </th>
                {shares.map((share, at) => (
                  <td key={DAYS[at]} className="figure">
                    <Share share={share} day={DAYS[at] ?? ''} releases={releases} />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <Stated rows={dossier.weekdays} />
    </section>
  );
}

/** The habits that the dossier states, each with whose word it is. */
function Stated({ rows }: { readonly rows: readonly WeekdayRow[] }) {
  if (rows.length === 0) return null;
  return (
    <>
      <h3>Stated; each counts as eight releases on its weekdays</h3>
      <ul className="rows">
        {rows.map(({ row, cells }) => (
          <li key={row}>
            <span>
              {sayStated(cells)}
              {cells.source ? (
                <>
                  {' '}
                  (<SourceLink id={cells.source} />
                  {cells.locator ? `, ${cells.locator}` : ''})
                </>
              ) : null}
              {cells.note ? <span className="detail"> {cells.note}</span> : null}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}

interface ShareProps {
  readonly share: number;
  readonly day: string;
  readonly releases: number;
}

function Share({ share, day, releases }: ShareProps) {
  const why = `Expected share of releases on a ${day}: ${sayP(share)}, learned from ${count(releases, 'release')} and drawn towards the other markets.`;
  return (
    <>
      <svg className="axis upright" width="14" height="24" aria-hidden="true">
        <rect className="ink" x="3" y={24 - share * 24} width="8" height={share * 24} />
      </svg>
      <Num why={why}>{sayP(share)}</Num>
    </>
  );
}

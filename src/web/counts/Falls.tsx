import type { CountingService, WireFall } from '../../contract/index.ts';
import { sayEdtf } from '../../evidence/index.ts';

interface Props {
  readonly falls: readonly WireFall[];
  readonly services: readonly CountingService[];
}

/** Falls shown, the newest. */
const SHOWN = 40;

/** Counts that fell between two reports, with what may lie behind each. */
export function Falls({ falls, services }: Props) {
  if (falls.length === 0) return null;
  const titles = new Map(services.map(({ id, title }) => [id, title]));
  return (
    <section>
      <h2>Counts that fell</h2>
      <p className="lead">Grading alone makes no count smaller.</p>
      <ul className="rows falls">
        {falls.slice(-SHOWN).map((fall) => (
          <li key={`${fall.service} ${fall.label} ${fall.grade} ${fall.to}`}>
            <span>
              <span className="crossed" aria-hidden="true">
                ×
              </span>{' '}
              {titles.get(fall.service)}, “{fall.label}”
              {fall.grade === null ? '' : `, grade ${fall.grade}`}: {fall.before} as of{' '}
              {sayEdtf(fall.from)}, {fall.after} as of {sayEdtf(fall.to)}{' '}
              <span className="detail">{fall.explanation}</span>
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

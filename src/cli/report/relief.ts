import type { Relief } from '../../bench/index.ts';
import { likelyMarks } from './marks.ts';
import { withDoubt } from './numbers.ts';
import { tableOf } from './table.ts';
import { wrapped } from './width.ts';
import { percent } from './words.ts';

/** Dents that are more likely there than not, what the set could not show, and what is wrong with it. */
export function reliefReport(
  defects: Relief['defects'],
  limits: Relief['limits'],
  faults: readonly string[],
  width: number,
): string {
  const rows = likelyMarks(defects).map(
    ({ kind, centreMm: [x, y], diameterMm, depthMm, sd, p }) => [
      kind,
      `${x.toFixed(1)}, ${y.toFixed(1)}`,
      withDoubt(diameterMm, sd.diameterMm),
      depthMm === null || sd.depthMm === null
        ? 'not known'
        : `${depthMm.toFixed(3)} ± ${(1.96 * sd.depthMm).toFixed(3)}`,
      percent(p),
    ],
  );
  const columns = [
    { head: 'kind' },
    { head: 'mm from left, top' },
    { head: 'mm wide at half depth' },
    { head: 'mm deep' },
    { head: 'p', align: 'right' },
  ] as const;
  const table = rows.length > 0 ? tableOf(columns, rows, width) : '';
  const nothing = rows.length > 0 ? 'Nothing else was found' : 'No dent was found';
  const shown = limits.map(
    ({ diameterMm, depthMm }) =>
      `${depthMm.toFixed(3)} mm deep at ${diameterMm.toFixed(1)} mm wide`,
  );
  const limit =
    limits.length > 0
      ? [`${nothing} that these pictures could show, down to ${shown.join(', ')}.`]
      : [];
  const words = [...faults, ...limit]
    .flatMap((one) => wrapped(one, width))
    .map((line) => `${line}\n`);
  return [table, words.join('')].filter((part) => part !== '').join('\n');
}

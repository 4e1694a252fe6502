import type { Relief } from '../../bench/index.ts';
import { sayDoubt } from '../../evidence/index.ts';
import { likelyMarks } from './marks.ts';
import { withDoubt } from './numbers.ts';
import { tableOf } from './table.ts';
import { wrapped } from './width.ts';
import { percent } from './words.ts';

/** Dents, creases and grooves that are more likely there than not, what the set could not show, and what is wrong with it. */
export function reliefReport(
  defects: Relief['defects'],
  limits: Relief['limits'],
  faults: readonly string[],
  width: number,
): string {
  const rows = likelyMarks(defects).map(
    ({ kind, centreMm: [x, y], lengthMm, diameterMm, depthMm, heightMm, sd, p }) => [
      kind,
      `${x.toFixed(1)}, ${y.toFixed(1)}`,
      lengthMm === null ? '' : lengthMm.toFixed(0),
      withDoubt(diameterMm, sd.diameterMm),
      withRise(depthMm, heightMm, sd.depthMm),
      percent(p),
    ],
  );
  const columns = [
    { head: 'kind' },
    { head: 'mm from left, top' },
    { head: 'mm long', align: 'right' },
    { head: 'mm wide at half depth' },
    { head: 'mm deep, or high' },
    { head: 'p', align: 'right' },
  ] as const;
  const table = rows.length > 0 ? tableOf(columns, rows, width) : '';
  const nothing = rows.length > 0 ? 'Nothing else was found' : 'No dent or crease was found';
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

/** The depth, or the height of a ridge, with half of its 95 % interval. */
function withRise(depth: number | null, height: number | null, sd: number | null): string {
  if (sd === null) return 'not known';
  const doubt = `± ${sayDoubt(sd, 3)}`;
  if (height !== null) return `${height.toFixed(3)} ${doubt} high`;
  return depth === null ? 'not known' : `${depth.toFixed(3)} ${doubt}`;
}

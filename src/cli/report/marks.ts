import type { Defect } from '../../bench/index.ts';
import { tableOf } from './table.ts';
import { percent } from './words.ts';

/** The marks that are more likely there than not, the likeliest first; their places are their numbers. */
export function likelyMarks<Mark extends Pick<Defect, 'p'>>(
  marks: readonly Mark[],
): readonly Mark[] {
  return marks.filter(({ p }) => p >= 0.5).sort((a, b) => b.p - a.p);
}

/** A table of the marks that are more likely there than not; empty where there is none. */
export function marksReport(defects: readonly Defect[], width: number): string {
  const rows = likelyMarks(defects).map(
    ({ kind, wear, centreMm: [x, y], areaMm2, lengthMm, p }, i) => [
      String(i + 1),
      wear ? `${kind.replace('-', ' ')}, ${wear}` : kind.replace('-', ' '),
      `${x.toFixed(1)}, ${y.toFixed(1)}`,
      lengthMm === null ? '' : lengthMm.toFixed(1),
      areaMm2.toFixed(2),
      percent(p),
    ],
  );
  if (rows.length === 0) return '';
  return tableOf(
    [
      { head: 'mark', align: 'right' },
      { head: 'kind' },
      { head: 'mm from left, top' },
      { head: 'mm long', align: 'right' },
      { head: 'mm²', align: 'right' },
      { head: 'p', align: 'right' },
    ],
    rows,
    width,
  );
}

import type { Defect, PointMm, SizeMm } from '../../bench/index.ts';
import { likelyMarks } from '../report/marks.ts';
import { MAGENTA, path, text } from './strokes.ts';

/** How far outside the card the numbers stand, and the least from one to the next, in millimetres. */
const OUT = 5;
const APART = 3.5;

interface Placed {
  readonly defect: Defect;
  readonly number: number;
}

/** Marks more likely there than not, each with its number on a leader line to the nearer side. */
export function numberedMarks(
  defects: readonly Defect[],
  [width, height]: SizeMm,
): readonly string[] {
  const placed = likelyMarks(defects).map((defect, i) => ({ defect, number: i + 1 }));
  const left = placed.filter(({ defect }) => defect.centreMm[0] < width / 2);
  const right = placed.filter((one) => !left.includes(one));
  return [
    ...placed.map(({ defect }) => outlineOf(defect)),
    ...column(left, -OUT, height),
    ...column(right, width + OUT, height),
  ];
}

/** Kinds whose polygon is the line along their middle. */
const LONG: readonly Defect['kind'][] = ['scratch', 'crease', 'print-line'];

function outlineOf({ polygonMm, boxMm: [x0, y0, x1, y1], kind }: Defect): string {
  const box: readonly PointMm[] = [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
  if (LONG.includes(kind) || polygonMm.length < 3)
    return path(polygonMm.length > 1 ? polygonMm : box, MAGENTA, polygonMm.length < 2);
  return path(polygonMm, MAGENTA, true);
}

/** Numbers one below the other in the order of their marks, so that no two leader lines cross. */
function column(marks: readonly Placed[], x: number, height: number): readonly string[] {
  const sorted = [...marks].sort((a, b) => a.defect.centreMm[1] - b.defect.centreMm[1]);
  let last = Number.NEGATIVE_INFINITY;
  return sorted.flatMap(({ defect, number }, i) => {
    const room = height - APART * (sorted.length - 1 - i);
    const y = Math.max(last + APART, Math.min(defect.centreMm[1], room));
    last = y;
    const inner = x < 0 ? x + 1.5 : x - 1.5;
    const line: readonly PointMm[] = [defect.centreMm, [inner, y]];
    return [path(line, MAGENTA), text([x, y + 0.9], String(number), MAGENTA)];
  });
}

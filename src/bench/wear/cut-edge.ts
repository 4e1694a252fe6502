import { quantileOf } from '../../maths/index.ts';
import type { BorderStrip } from './border-strip.ts';
import type { SideEdge } from './moved-rays.ts';
import { changeOf } from './tip-radius.ts';

const OUTSIDE_MM = 0.1;
const INSIDE_MM = 0.25;
const FIRM_MM = 0.05;
/** Outwards lies the card's own side face, so that the edge is trusted further inwards. */
const [MOST_OUT_MM, MOST_IN_MM] = [0.04, 0.15];
/** Share of the steepest change that an edge further in must have to be taken instead. */
const STEEP = 0.6;

/**
 * How far the cut edge lies inside the given outline along each of the four sides, top first and
 * clockwise: a straight line, fitted robustly to the steepest change of colour, so that an outline
 * that is a little off is no wear, while wear along a stretch does not move the line. 0 along a
 * side whose edge is too faint, from -0.04 to 0.15.
 */
export function cutEdgesOf(strip: BorderStrip): readonly SideEdge[] {
  const change = changeOf(strip, 2);
  return [0, 2, 4, 6].map((part) => {
    const columns = strip.rays.flatMap((ray, column) => (ray.part === part ? [column] : []));
    const line = lineOf(columns.map((column) => [column, edgeDepthOf(strip, change, column)]));
    return [line(columns[0] as number), line(columns.at(-1) as number)];
  });
}

type Point = readonly [column: number, depth: number];

/** Depth of the innermost steep change near the outline. */
function edgeDepthOf(
  { rows, firstMm, stepMm }: BorderStrip,
  change: Float32Array,
  column: number,
): number {
  const from = Math.round((-OUTSIDE_MM - firstMm) / stepMm);
  const to = Math.round((INSIDE_MM - firstMm) / stepMm);
  const steps = change.subarray(column * rows, (column + 1) * rows);
  let best = from;
  for (let row = from; row <= to; row++)
    if ((steps[row] as number) > (steps[best] as number)) best = row;
  const enough = STEEP * (steps[best] as number);
  for (let row = to; row > best; row--)
    if ((steps[row] as number) >= enough && isPeak(steps, row)) best = row;
  const [a, b, c] = [-1, 0, 1].map((k) => steps[best + k] as number);
  const bend = (a as number) - 2 * (b as number) + (c as number);
  const shift = bend < 0 ? ((a as number) - (c as number)) / (2 * bend) : 0;
  return firstMm + (best - 0.5 + shift) * stepMm;
}

function isPeak(steps: Float32Array, row: number): boolean {
  const here = steps[row] as number;
  return here >= (steps[row - 1] as number) && here >= (steps[row + 1] as number);
}

/** A line through most of the points, by reweighting (Tukey's biweight, `huber:1981`). */
function lineOf(points: readonly Point[]): (column: number) => number {
  const middle = quantileOf(
    points.map(([, depth]) => depth),
    0.5,
  );
  const centre = (points[0]?.[0] ?? 0) / 2 + (points.at(-1)?.[0] ?? 0) / 2;
  let [level, slope] = [middle, 0];
  let scatter = 0;
  for (let round = 0; round < 8; round++) {
    const off = points.map(([x, y]) => y - level - slope * (x - centre));
    scatter = 1.4826 * quantileOf(off.map(Math.abs), 0.5);
    const reach = 4 * Math.max(scatter, 0.005);
    let [w0, w1, w2, r0, r1] = [0, 0, 0, 0, 0];
    points.forEach(([x, y], i) => {
      const u = (off[i] as number) / reach;
      if (Math.abs(u) >= 1) return;
      const weight = (1 - u * u) ** 2;
      const d = x - centre;
      w0 += weight;
      w1 += weight * d;
      w2 += weight * d * d;
      r0 += weight * y;
      r1 += weight * d * y;
    });
    const determinant = w0 * w2 - w1 * w1;
    if (!(determinant > 0)) break;
    level = (r0 * w2 - r1 * w1) / determinant;
    slope = (w0 * r1 - w1 * r0) / determinant;
  }
  if (!(scatter < FIRM_MM)) return () => 0;
  return (column) =>
    Math.max(-MOST_OUT_MM, Math.min(MOST_IN_MM, level + slope * (column - centre)));
}

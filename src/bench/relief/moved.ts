import { solveSymmetric } from '../../maths/index.ts';
import { type CardMap, cardPointOf } from '../geometry/card-map.ts';
import type { PointPx } from '../geometry/points.ts';
import { centreOf, type Grid } from './grid.ts';
import { onCard } from './slopes.ts';

/** How a card lies in a picture against how it lies in the first one. */
export interface Moved {
  /** By how many blocks, right and down. */
  readonly blocks: PointPx;
  /** Clockwise as seen, radians. */
  readonly turn: number;
  /** Correlation of the print's detail in both once laid on each other, noise set apart; 1 where all of it agrees. */
  readonly likeness: number;
}

/** Farthest shift that is looked for, mm. */
export const FARTHEST_MM = 3;
/** Detail is what differs from its surroundings of so many mm to each side. */
const DETAIL_MM = 1.2;
/** Blocks from one point compared to the next, for whole shifts and for their fractions. */
const COARSE = 4;
const FINE = 2;
/** A difference beyond this is a mark, gloss or shadow, and weighs less (Huber's weights). */
const MOST = 0.25;

/**
 * Shift and turn of a card between two pictures: the whole blocks by which the print's detail
 * correlates best, then weighted least squares on its changes (`lucas:1981`), contrast free. Null where the
 * print has no detail to tell it by, or no more than noise has.
 */
export function movedBetween(
  map: CardMap,
  grid: Grid,
  first: Float32Array,
  other: Float32Array,
): Moved | null {
  const a = detailOf(first, grid);
  const b = detailOf(other, grid);
  const coarse = pointsOf(map, grid, COARSE);
  const shift = bestShift(a, b, grid, coarse);
  return refined(a, b, grid, pointsOf(map, grid, FINE), shift);
}

/** Logarithm of light less its mean over a square about it. */
function detailOf(light: Float32Array, { width, height, perMm }: Grid): Float32Array {
  const reach = Math.max(1, Math.round(DETAIL_MM * perMm));
  const log = light.map((value) => Math.log(value + 0.01));
  const sums = new Float64Array((width + 1) * (height + 1));
  for (let y = 0; y < height; y++) {
    let row = 0;
    for (let x = 0; x < width; x++) {
      row += log[y * width + x] as number;
      sums[(y + 1) * (width + 1) + x + 1] = (sums[y * (width + 1) + x + 1] as number) + row;
    }
  }
  const at = (x: number, y: number) => sums[y * (width + 1) + x] as number;
  return log.map((value, i) => {
    const x = i % width;
    const y = Math.floor(i / width);
    const [x0, x1] = [Math.max(0, x - reach), Math.min(width, x + reach + 1)];
    const [y0, y1] = [Math.max(0, y - reach), Math.min(height, y + reach + 1)];
    const sum = at(x1, y1) - at(x0, y1) - at(x1, y0) + at(x0, y0);
    return value - sum / ((x1 - x0) * (y1 - y0));
  });
}

/** Blocks of the card from which every shift stays on the grid. */
function pointsOf(map: CardMap, grid: Grid, every: number): Int32Array {
  const reach = Math.ceil(FARTHEST_MM * grid.perMm) + 2;
  const points: number[] = [];
  for (let y = reach; y < grid.height - reach; y += every)
    for (let x = reach; x < grid.width - reach; x += every)
      if (onCard(cardPointOf(map, centreOf(grid, x, y)), map.sizeMm))
        points.push(y * grid.width + x);
  return Int32Array.from(points);
}

function bestShift(a: Float32Array, b: Float32Array, { width, perMm }: Grid, points: Int32Array) {
  const reach = Math.ceil(FARTHEST_MM * perMm);
  let best: PointPx = [0, 0];
  let most = Number.NEGATIVE_INFINITY;
  for (let dy = -reach; dy <= reach; dy++)
    for (let dx = -reach; dx <= reach; dx++) {
      const offset = dy * width + dx;
      const like = likenessOf(points, a, (i) => b[i + offset] as number);
      // A shift of none wins where a blank print tells none.
      const here = like - 1e-4 * Math.hypot(dx, dy);
      if (here > most) {
        most = here;
        best = [dx, dy];
      }
    }
  return best;
}

function likenessOf(points: Int32Array, a: Float32Array, b: (i: number) => number): number {
  let [aa, ab, bb] = [1e-12, 0, 1e-12];
  for (const i of points) {
    const here = a[i] as number;
    const there = b(i);
    aa += here * here;
    ab += here * there;
    bb += there * there;
  }
  return ab / Math.sqrt(aa * bb);
}

/** Least mean square of the print's detail by which a shift can be told (Judgement, no source). */
const LEAST_DETAIL = 1e-3;

/** Least share of print in what both pictures show as detail (Judgement, no source). */
const LEAST_SHARE = 0.5;

/**
 * Share of the print in a picture's detail, the rest being noise: that is learned from how far a block
 * lies from the mean of its four neighbours, at the median, since print changes in few places. 0 where
 * the print's mean square is too small to tell a shift.
 */
function printShareOf(detail: Float32Array, width: number, points: Int32Array): number {
  let power = 0;
  const steps = new Float32Array(points.length);
  points.forEach((i, k) => {
    const here = detail[i] as number;
    power += here * here;
    const beside = (detail[i - 1] as number) + (detail[i + 1] as number);
    const upright = (detail[i - width] as number) + (detail[i + width] as number);
    steps[k] = Math.abs(here - (beside + upright) / 4);
  });
  const middle = steps.sort()[points.length >> 1] as number;
  // A median of 0.6745 standard deviations; the mean of four adds a quarter to the variance.
  const noise = (middle / 0.6745) ** 2 / 1.25;
  const print = power / points.length - noise;
  return print > LEAST_DETAIL ? print / (print + noise) : 0;
}

function refined(
  a: Float32Array,
  b: Float32Array,
  { width, height }: Grid,
  points: Int32Array,
  [sx, sy]: PointPx,
): Moved | null {
  if (points.length < 50) return null;
  const told = Math.min(printShareOf(a, width, points), printShareOf(b, width, points));
  if (told < LEAST_SHARE) return null;
  const at = placer(width, height, [sx, sy, 0, 1]);
  for (let round = 0; round < 12; round++) {
    const step = stepOf(a, b, width, points, at);
    for (let k = 0; k < 3; k++) at.theta[k] = (at.theta[k] as number) - (step[k] as number);
    at.theta[3] = (at.theta[3] as number) + (step[3] as number);
    if (Math.hypot(step[0] as number, step[1] as number) < 1e-3) break;
  }
  const [x, y, turn] = at.theta as [number, number, number, number];
  const likeness = likenessOf(points, a, (i) => sampled(b, width, at(i)));
  return { blocks: [x, y], turn, likeness: Math.min(1, likeness / told) };
}

/** Where a block of the first picture lies in another one, for a shift, a turn about the middle and a contrast. */
function placer(width: number, height: number, theta: number[]) {
  const place = (i: number): PointPx => {
    const [sx, sy, turn] = theta as [number, number, number];
    const x = (i % width) - width / 2;
    const y = Math.floor(i / width) - height / 2;
    const px = x + sx - turn * y + width / 2;
    const py = y + sy + turn * x + height / 2;
    return [Math.min(Math.max(px, 0), width - 1.001), Math.min(Math.max(py, 0), height - 1.001)];
  };
  return Object.assign(place, { theta, centre: [width / 2, height / 2] as PointPx });
}

function sampled(b: Float32Array, width: number, [x, y]: PointPx): number {
  const at = Math.floor(y) * width + Math.floor(x);
  const fx = x - Math.floor(x);
  const fy = y - Math.floor(y);
  const above = (1 - fx) * (b[at] as number) + fx * (b[at + 1] as number);
  const below = (1 - fx) * (b[at + width] as number) + fx * (b[at + width + 1] as number);
  return (1 - fy) * above + fy * below;
}

/** A Gauss-Newton step of shift right, shift down, turn and contrast. */
function stepOf(
  a: Float32Array,
  b: Float32Array,
  width: number,
  points: Int32Array,
  at: ReturnType<typeof placer>,
): Float64Array {
  const normal = new Float64Array(16);
  const right = new Float64Array(4);
  const row = new Float64Array(4);
  for (const i of points) {
    const across = ((a[i + 1] as number) - (a[i - 1] as number)) / 2;
    const down = ((a[i + width] as number) - (a[i - width] as number)) / 2;
    const x = (i % width) - at.centre[0];
    const y = Math.floor(i / width) - at.centre[1];
    row.set([across, down, down * x - across * y, a[i] as number]);
    const off = sampled(b, width, at(i)) - (at.theta[3] as number) * (a[i] as number);
    const weight = Math.min(1, MOST / Math.abs(off));
    for (let j = 0; j < 4; j++) {
      const weighed = weight * (row[j] as number);
      right[j] = (right[j] as number) + weighed * off;
      for (let k = 0; k < 4; k++)
        normal[j * 4 + k] = (normal[j * 4 + k] as number) + weighed * (row[k] as number);
    }
  }
  for (let j = 0; j < 4; j++) normal[j * 5] = (normal[j * 5] as number) * (1 + 1e-9) + 1e-12;
  solveSymmetric(normal, right, 4);
  return right;
}

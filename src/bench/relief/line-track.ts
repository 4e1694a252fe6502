import type { PointPx } from '../geometry/points.ts';
import type { Field } from './slope-field.ts';

/** A place on a line, in blocks, with the height of the line there, mm, and its weight. */
export interface Knot {
  readonly at: PointPx;
  readonly height: number;
  /** Inverse variance of the height, by the slopes' own weights. */
  readonly weight: number;
}

/** A unit vector. */
export type Way = readonly [x: number, y: number];

/** Blocks from knot to knot, and half the length over which each is read. */
const STEP = 4;
const HALF = 3;
/** Places across the line at which it may go on, blocks. */
const ASIDE = [-1.8, -1.35, -0.9, -0.45, 0, 0.45, 0.9, 1.35, 1.8];
/** Share of the line's height so far that it must keep to go on; misses in a row that end it. */
const KEPT = 0.3;
const MISSES = 2;

/** Follows a ridge or groove both ways from a place where it is strong, as far as it keeps its height. */
export function trackedLine(
  field: Field,
  start: PointPx,
  way: Way,
  sigma: number,
  perMm: number,
): readonly Knot[] {
  const first = bestAcross(field, start, way, sigma, perMm, 0);
  if (!first) return [];
  const sign = Math.sign(first.height);
  const forth = walked(field, first, way, sigma, perMm, sign);
  const back = walked(field, first, [-way[0], -way[1]], sigma, perMm, sign);
  return [...back.reverse(), first, ...forth];
}

function walked(
  field: Field,
  first: Knot,
  way: Way,
  sigma: number,
  perMm: number,
  sign: number,
): Knot[] {
  const knots: Knot[] = [];
  let now = way;
  let last = first.at;
  let usual = Math.abs(first.height);
  for (let miss = 0, ahead = 1; miss < MISSES; ahead++) {
    const next: PointPx = [last[0] + ahead * STEP * now[0], last[1] + ahead * STEP * now[1]];
    const knot = bestAcross(field, next, now, sigma, perMm, sign);
    if (!knot) break;
    if (knot.height * sign < KEPT * usual || knot.height ** 2 * knot.weight < 4) {
      miss++;
      continue;
    }
    miss = 0;
    ahead = 0;
    knots.push(knot);
    usual += 0.2 * (Math.abs(knot.height) - usual);
    const from = knots[knots.length - 4]?.at ?? first.at;
    now = towards(from, knot.at, now);
    last = knot.at;
  }
  return knots;
}

function towards([x0, y0]: PointPx, [x1, y1]: PointPx, otherwise: Way): Way {
  const length = Math.hypot(x1 - x0, y1 - y0);
  if (length < STEP / 2) return otherwise;
  return [(x1 - x0) / length, (y1 - y0) / length];
}

/** The place across the way at which the line is strongest, of the sign asked for (0: of either). */
function bestAcross(
  field: Field,
  [x, y]: PointPx,
  way: Way,
  sigma: number,
  perMm: number,
  sign: number,
): Knot | null {
  let best: Knot | null = null;
  let most = Number.NEGATIVE_INFINITY;
  for (const aside of ASIDE) {
    const knot = knotAt(field, [x - aside * way[1], y + aside * way[0]], way, sigma, perMm);
    if (!knot) continue;
    // What lies straight ahead is likelier than a turn.
    const z = knot.height * Math.sqrt(knot.weight) * (1 - 0.03 * aside * aside);
    const strength = sign === 0 ? Math.abs(z) : sign * z;
    if (strength <= most) continue;
    most = strength;
    best = knot;
  }
  return best;
}

/** Height of a Gaussian ridge through a place by weighted least squares; null off the card. */
function knotAt(field: Field, at: PointPx, way: Way, sigma: number, perMm: number): Knot | null {
  const { width, height, right, down, weight } = field;
  const reach = Math.ceil(3 * sigma + HALF);
  const [cx, cy] = [Math.round(at[0]), Math.round(at[1])];
  if (!((weight[cy * width + cx] ?? 0) > 0) || cx < 0 || cx >= width) return null;
  let seen = 0;
  let power = 0;
  for (let y = Math.max(0, cy - reach); y <= Math.min(height - 1, cy + reach); y++)
    for (let x = Math.max(0, cx - reach); x <= Math.min(width - 1, cx + reach); x++) {
      const [u, v] = [x - at[0], y - at[1]];
      if (Math.abs(u * way[0] + v * way[1]) > HALF) continue;
      const d = v * way[0] - u * way[1];
      if (Math.abs(d) > 3 * sigma) continue;
      const i = y * width + x;
      // Rise a millimetre of a ridge of one millimetre, across the way.
      const unit = (-d / sigma ** 2) * Math.exp((-d * d) / (2 * sigma * sigma)) * perMm;
      seen += unit * ((down[i] as number) * way[0] - (right[i] as number) * way[1]);
      power += unit * unit * (weight[i] as number);
    }
  return power > 0 ? { at, height: seen / power, weight: power } : null;
}

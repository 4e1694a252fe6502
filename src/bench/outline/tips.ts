import { type Edges, supportAt } from './edges.ts';
import type { Reduced } from './reduced.ts';
import { addColour } from './sampler.ts';

/** Radii of a card's round tips that are tried, in millimetres. Common practice, no source. */
const RADII = [2.2, 2.8, 3.4, 4] as const;

/** Places of the gap between a round tip and its virtual corner, in radii along the two sides. */
const GAP = [
  [0.1, 0.1],
  [0.2, 0.09],
  [0.09, 0.2],
  [0.04, 0.32],
  [0.32, 0.04],
] as const;

const ARC = 9;
/** Of the places on an arc, from one end; backwards their sines. */
const COSINES = Array.from({ length: ARC }, (_, i) =>
  Math.cos(((i + 1.5) / (ARC + 2)) * (Math.PI / 2)),
);
const NOISE = 0.006 ** 2;

/** One tip of a figure: the corner, unit vectors along its two sides, pixels a millimetre on each. */
export interface Tip {
  readonly x: number;
  readonly y: number;
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  readonly perMmA: number;
  readonly perMmB: number;
}

type Place = readonly [x: number, y: number];

/** A tip whose sides run towards two places, so many pixels a millimetre on both. */
export function tipAt([x, y]: Place, [ax, ay]: Place, [bx, by]: Place, perMm: number): Tip {
  const a = Math.hypot(ax - x, ay - y);
  const b = Math.hypot(bx - x, by - y);
  return {
    ...{ x, y, perMmA: perMm, perMmB: perMm },
    ...{ ax: (ax - x) / a, ay: (ay - y) / a, bx: (bx - x) / b, by: (by - y) / b },
  };
}

const sums = new Float64Array(15);

/**
 * How much rounder than square a tip is, −2 to 2: edge along the arc less edge along the straight
 * prolongation, and how much more the gap between arc and corner looks like the ground than like
 * the card.
 */
export function roundness(reduced: Reduced, edges: Edges, tip: Tip): number {
  const cx = (edges.width - 1) / 2;
  const cy = (edges.height - 1) / 2;
  if (Math.abs(tip.x) > cx || Math.abs(tip.y) > cy) return 0;
  let best = -1;
  for (const radius of RADII) {
    const arc = arcSupport(edges, tip, radius) - straightSupport(edges, tip, radius);
    if (arc > best) best = arc;
  }
  return best + gapLikeGround(reduced, tip);
}

function arcSupport(edges: Edges, tip: Tip, radius: number): number {
  const ra = radius * tip.perMmA;
  const rb = radius * tip.perMmB;
  const cx = (edges.width - 1) / 2;
  const cy = (edges.height - 1) / 2;
  let sum = 0;
  for (let i = 0; i < ARC; i++) {
    const cosine = COSINES[i] as number;
    const sine = COSINES[ARC - 1 - i] as number;
    const a = ra * (1 - cosine);
    const b = rb * (1 - sine);
    const ta = ra * sine;
    const tb = -rb * cosine;
    const tx = ta * tip.ax + tb * tip.bx;
    const ty = ta * tip.ay + tb * tip.by;
    const length = Math.sqrt(tx * tx + ty * ty);
    const x = cx + tip.x + a * tip.ax + b * tip.bx;
    const y = cy + tip.y + a * tip.ay + b * tip.by;
    sum += supportAt(edges, x, y, ty / length, -tx / length);
  }
  return sum / ARC;
}

function straightSupport(edges: Edges, tip: Tip, radius: number): number {
  const cx = (edges.width - 1) / 2 + tip.x;
  const cy = (edges.height - 1) / 2 + tip.y;
  let sum = 0;
  for (let i = 0; i < 4; i++) {
    const a = radius * tip.perMmA * (0.08 + 0.11 * i);
    const b = radius * tip.perMmB * (0.08 + 0.11 * i);
    sum += supportAt(edges, cx + a * tip.ax, cy + a * tip.ay, tip.ay, -tip.ax);
    sum += supportAt(edges, cx + b * tip.bx, cy + b * tip.by, tip.by, -tip.bx);
  }
  return sum / 8;
}

/** −1 where the gap looks like the card beside the tip, 1 where it looks like the ground. */
function gapLikeGround(reduced: Reduced, tip: Tip): number {
  const radius = 3;
  sums.fill(0);
  const put = (a: number, b: number, at: number) => {
    const pa = a * radius * tip.perMmA;
    const pb = b * radius * tip.perMmB;
    addColour(
      reduced,
      tip.x + pa * tip.ax + pb * tip.bx,
      tip.y + pa * tip.ay + pb * tip.by,
      sums,
      at,
    );
  };
  for (const [a, b] of GAP) put(a, b, 0);
  const out = -0.2 - 1.4 / (radius * Math.min(tip.perMmA, tip.perMmB));
  const inn = 0.12 + 1.4 / (radius * Math.min(tip.perMmA, tip.perMmB));
  for (let i = 0; i < 5; i++) {
    const t = 0.5 + 0.3 * i;
    put(t, out, 3);
    put(out, t, 6);
    put(t + 0.6, inn, 9);
    put(inn, t + 0.6, 12);
  }
  const ground = Math.min(between(0, 3), between(0, 6));
  const card = Math.min(between(0, 9), between(0, 12));
  return (card - ground) / (card + ground + 4 * NOISE);
}

/** Square of the distance between two mean colours of five samples. */
function between(i: number, j: number): number {
  let sum = 0;
  for (let k = 0; k < 3; k++) sum += ((sums[i + k] as number) - (sums[j + k] as number)) ** 2;
  return sum / 25;
}

import type { Plane } from '../picture.ts';

/** A square of a plane by the pixel at its middle. */
export interface Square {
  readonly x: number;
  readonly y: number;
  readonly half: number;
}

/** How far a square of one plane lies from its like in another. */
export interface TileShift {
  readonly dx: number;
  readonly dy: number;
  /** Normalised correlation at the best whole shift, −1 to 1. */
  readonly ncc: number;
  /** How firmly each way is held, 0 to 1: along a single line a square slides without a difference. */
  readonly held: readonly [x: number, y: number];
}

/** Fall of the correlation within a pixel at which a way is held in full. Judgement, no source. */
const FIRM = 0.04;

/**
 * The shift that carries a square of `a` to its like in `b`, in pixels, by the largest normalised
 * correlation within `reach` of `around`: every second shift, then the neighbours of the best, then
 * between pixels by a parabola (`lewis:1995`). Null where the square is without texture, or is best
 * at the rim of the search. Lines finer than two pixels could hide between the shifts tried first.
 */
export function tileShift(
  a: Plane,
  b: Plane,
  square: Square,
  around: readonly [number, number],
  reach: number,
): TileShift | null {
  const span = 2 * reach + 1;
  const known = new Float64Array(span * span).fill(Number.NaN);
  const score = (i: number, j: number) => {
    const k = j * span + i;
    if (Number.isNaN(known[k] as number))
      known[k] = correlation(a, b, square, around[0] + i - reach, around[1] + j - reach);
    return known[k] as number;
  };
  let [i, j] = best(score, span, reach % 2, reach % 2, 2, span);
  for (let moved = true; moved && i > 0 && j > 0 && i < span - 1 && j < span - 1; ) {
    const [u, v] = best(score, span, i - 1, j - 1, 1, 3);
    moved = u !== i || v !== j;
    [i, j] = [u, v];
  }
  if (!(score(i, j) > 0) || i === 0 || j === 0 || i === span - 1 || j === span - 1) return null;
  const ncc = score(i, j);
  const held = (before: number, after: number) =>
    Math.min(1, Math.max(0, (2 * ncc - before - after) / FIRM));
  return {
    held: [held(score(i - 1, j), score(i + 1, j)), held(score(i, j - 1), score(i, j + 1))],
    dx: around[0] + i - reach + between(score(i - 1, j), ncc, score(i + 1, j)),
    dy: around[1] + j - reach + between(score(i, j - 1), ncc, score(i, j + 1)),
    ncc,
  };
}

/** The best of the places from (i0, j0) on, `step` apart, over `width` places each way. */
function best(
  score: (i: number, j: number) => number,
  span: number,
  i0: number,
  j0: number,
  step: number,
  width: number,
): [number, number] {
  let found: [number, number] = [i0, j0];
  for (let j = j0; j < Math.min(span, j0 + width); j += step)
    for (let i = i0; i < Math.min(span, i0 + width); i += step)
      if (score(i, j) > score(...found)) found = [i, j];
  return found;
}

/** Normalised correlation of a square of `a` with the square of `b` that lies `dx`, `dy` further. */
export function correlation(a: Plane, b: Plane, square: Square, dx: number, dy: number): number {
  const { x, y, half } = square;
  if (!inside(a, x, y, half) || !inside(b, x + dx, y + dy, half)) return 0;
  let [sa, sb, saa, sbb, sab] = [0, 0, 0, 0, 0];
  for (let v = -half; v <= half; v++) {
    const p = (y + v) * a.width + x;
    const q = (y + v + dy) * b.width + x + dx;
    for (let u = -half; u <= half; u++) {
      const left = a.values[p + u] as number;
      const right = b.values[q + u] as number;
      sa += left;
      sb += right;
      saa += left * left;
      sbb += right * right;
      sab += left * right;
    }
  }
  const n = (2 * half + 1) ** 2;
  const spread = (saa - (sa * sa) / n) * (sbb - (sb * sb) / n);
  return spread > 0 ? (sab - (sa * sb) / n) / Math.sqrt(spread) : 0;
}

function inside({ width, height }: Plane, x: number, y: number, half: number): boolean {
  return x >= half && y >= half && x + half < width && y + half < height;
}

/** Where a parabola through three neighbours is largest, from the middle one. */
function between(before: number, middle: number, after: number): number {
  const bend = before - 2 * middle + after;
  return bend < 0 ? Math.max(-0.5, Math.min(0.5, (before - after) / (2 * bend))) : 0;
}

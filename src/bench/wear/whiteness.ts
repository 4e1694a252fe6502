import { quantileOf } from '../../maths/index.ts';
import type { BorderStrip } from './border-strip.ts';

/** How far each place of the strip has gone from the border's colour towards white. */
export interface Whiteness {
  /** By column and row as in the strip: 0 the border's colour, 1 white. */
  readonly share: Float32Array;
  /** Change of colour that no share of white explains, in the same measure. */
  readonly rest: Float32Array;
  /** Light between border and white at each column, as a share of white's light. */
  readonly contrast: Float32Array;
}

/** Whiteness of a strip whose border colour at each column and white are known, in linear light. */
export function whitenessOf(
  { rays, rows, values }: BorderStrip,
  border: readonly Float32Array[],
  white: readonly number[],
): Whiteness {
  const share = new Float32Array(rays.length * rows);
  const rest = new Float32Array(rays.length * rows);
  const contrast = new Float32Array(rays.length);
  const whole = Math.hypot(...white);
  const [red, green, blue] = values;
  for (let column = 0; column < rays.length; column++) {
    const from = border.map((light) => light[column] as number);
    const way = from.map((light, channel) => Math.max((white[channel] as number) - light, 0.02));
    const length = Math.hypot(...way);
    contrast[column] = length / whole;
    const [w0, w1, w2] = way.map((step) => step / length) as [number, number, number];
    const [f0, f1, f2] = from as [number, number, number];
    for (let i = column * rows; i < (column + 1) * rows; i++) {
      const a = (red[i] as number) - f0;
      const b = (green[i] as number) - f1;
      const c = (blue[i] as number) - f2;
      const along = a * w0 + b * w1 + c * w2;
      const off = (a - along * w0) ** 2 + (b - along * w1) ** 2 + (c - along * w2) ** 2;
      share[i] = along / length;
      rest[i] = Math.sqrt(off) / length;
    }
  }
  return { share, rest, contrast };
}

/** Columns so far apart share neither blur nor sharpening. */
const APART = 5;

/**
 * One standard deviation of the noise of a share along the border, from its changes over half a
 * millimetre: edges of a print are too few to count, a broad change of colour is too slow.
 */
export function noiseOf({ rays, rows, firstMm, stepMm }: BorderStrip, share: Float32Array): number {
  const [from, to] = [0.6, 1.4].map((mm) => Math.round((mm - firstMm) / stepMm)) as [
    number,
    number,
  ];
  const changes: number[] = [];
  for (let column = APART; column < rays.length; column += 2)
    for (let row = from; row <= to; row += 4) {
      const at = column * rows + row;
      changes.push(Math.abs((share[at] as number) - (share[at - APART * rows] as number)));
    }
  // Half of all normal differences are smaller than 0.6745 times the square root of two.
  return quantileOf(changes, 0.5) / 0.9539;
}

/** What is usual along a side: the unworn level and its scatter, by row from the cut edge. */
export interface Usual {
  readonly level: Float32Array;
  readonly sd: Float32Array;
}

/**
 * The usual whiteness of each row along each of the four sides, from the lower half of what is
 * seen there, so that a side may be worn along six tenths of its length.
 */
export function usualOf(strip: BorderStrip, share: Float32Array): readonly Usual[] {
  return [0, 2, 4, 6].map((part) => {
    const columns = strip.rays.flatMap((ray, i) => (ray.part === part && i % 2 === 0 ? [i] : []));
    const level = new Float32Array(strip.rows);
    const sd = new Float32Array(strip.rows);
    for (let row = 0; row < strip.rows; row++) {
      const seen = columns.map((column) => share[column * strip.rows + row] as number);
      const low = quantileOf(seen, 0.05);
      const quarter = quantileOf(seen, 0.25);
      // Of a normal distribution these quantiles lie 0.9704 apart, the latter 0.6745 below its mean.
      sd[row] = (quarter - low) / 0.9704;
      level[row] = quarter + 0.6745 * (sd[row] as number);
    }
    return { level, sd };
  });
}

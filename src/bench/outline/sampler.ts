import type { Reduced } from './reduced.ts';

/**
 * Adds the colour of a reduced picture at a point, between its pixels, to `into` from `at` on.
 * The point is counted from the picture's centre; outside, the nearest pixel's colour is taken.
 */
export function addColour(
  { width, height, colours }: Reduced,
  x: number,
  y: number,
  into: Float32Array | Float64Array,
  at: number,
): void {
  const px = Math.min(Math.max(x + (width - 1) / 2, 0), width - 1.001);
  const py = Math.min(Math.max(y + (height - 1) / 2, 0), height - 1.001);
  const left = px | 0;
  const top = py | 0;
  const u = px - left;
  const v = py - top;
  const i = (top * width + left) * 3;
  const j = i + width * 3;
  const a = (1 - u) * (1 - v);
  const b = u * (1 - v);
  const c = (1 - u) * v;
  const d = u * v;
  for (let k = 0; k < 3; k++)
    into[at + k] =
      (into[at + k] as number) +
      a * (colours[i + k] as number) +
      b * (colours[i + 3 + k] as number) +
      c * (colours[j + k] as number) +
      d * (colours[j + 3 + k] as number);
}

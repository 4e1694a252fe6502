import type { Picture } from '../picture.ts';
import { lightTable } from './srgb.ts';

/**
 * The linear light of the three channels at a point between the pixels, 0 to 1, bilinear; outside
 * the picture that of the nearest pixel.
 */
export function lightAt(
  { samples, width, height }: Picture,
  x: number,
  y: number,
  into: Float64Array,
): void {
  const table = lightTable({ samples });
  const px = Math.min(Math.max(x, 0), width - 1.001);
  const py = Math.min(Math.max(y, 0), height - 1.001);
  const left = px | 0;
  const top = py | 0;
  const u = px - left;
  const v = py - top;
  const i = (top * width + left) * 3;
  const j = i + width * 3;
  for (let c = 0; c < 3; c++)
    into[c] =
      (1 - u) * (1 - v) * (table[samples[i + c] as number] as number) +
      u * (1 - v) * (table[samples[i + 3 + c] as number] as number) +
      (1 - u) * v * (table[samples[j + c] as number] as number) +
      u * v * (table[samples[j + 3 + c] as number] as number);
}

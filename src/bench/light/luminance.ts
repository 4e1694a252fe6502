import type { Picture, Plane } from '../picture.ts';
import { LUMINANCE, lightTable } from './srgb.ts';

/** Relative luminance of every pixel in linear light, 0 to 1 (`iec:61966-2-1`). */
export function luminanceOf(picture: Picture): Plane {
  const table = lightTable(picture);
  const { width, height, samples } = picture;
  const [r, g, b] = LUMINANCE;
  const values = new Float32Array(width * height);
  for (let i = 0, j = 0; i < values.length; i++, j += 3)
    values[i] =
      r * at(table, samples[j]) + g * at(table, samples[j + 1]) + b * at(table, samples[j + 2]);
  return { width, height, values };
}

function at(table: Float32Array, sample: number | undefined): number {
  return table[sample as number] as number;
}

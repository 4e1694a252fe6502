import type { Plane } from '../picture.ts';

/**
 * The plane without what is lighter than its surroundings and narrower than `2 · reach + 1` pixels:
 * the least over squares, then the most over squares of that (`serra:1982`).
 */
export function openedOf({ width, height, values }: Plane, reach: number): Plane {
  const least = leastOver({ width, height, values }, reach);
  const back = leastOver({ width, height, values: least.map((value) => -value) }, reach);
  return { width, height, values: back.map((value) => -value) };
}

function leastOver({ width, height, values }: Plane, reach: number): Float32Array {
  const across = new Float32Array(values.length);
  const both = new Float32Array(values.length);
  for (let y = 0; y < height; y++)
    for (let x = 0, i = y * width; x < width; x++, i++) {
      let least = values[i] as number;
      const to = i + Math.min(reach, width - 1 - x);
      for (let k = i - Math.min(reach, x); k <= to; k++) {
        const other = values[k] as number;
        if (other < least) least = other;
      }
      across[i] = least;
    }
  for (let y = 0; y < height; y++) {
    const [from, to] = [Math.max(0, y - reach), Math.min(height - 1, y + reach)];
    both.set(across.subarray(y * width, (y + 1) * width), y * width);
    for (let row = from; row <= to; row++)
      for (let x = 0, i = y * width, k = row * width; x < width; x++, i++, k++) {
        const other = across[k] as number;
        if (other < (both[i] as number)) both[i] = other;
      }
  }
  return both;
}

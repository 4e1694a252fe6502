import type { Plane } from '../picture.ts';

/**
 * The plane without what is lighter than its surroundings and narrower than `2 · reach + 1` pixels:
 * the least over squares, then the most over squares of that (`serra:1982`).
 */
export function openedOf({ width, height, values }: Plane, reach: number): Plane {
  const least = leastOver({ width, height, values }, reach);
  const back = leastOver({ width, height, values: negative(least) }, reach);
  return { width, height, values: negative(back) };
}

function negative(values: Float32Array): Float32Array {
  const out = new Float32Array(values.length);
  for (let i = 0; i < out.length; i++) out[i] = -(values[i] as number);
  return out;
}

/** The least over squares, along the rows and then down the columns of a plane that is padded. */
function leastOver({ width, height, values }: Plane, reach: number): Float32Array {
  const wide = width + 2 * reach;
  const padded = new Float32Array(wide * (height + 2 * reach)).fill(Number.POSITIVE_INFINITY);
  for (let y = 0; y < height; y++)
    padded.set(values.subarray(y * width, (y + 1) * width), (y + reach) * wide + reach);
  for (const step of [1, wide]) takeLeast(padded, step, 2 * reach + 1);
  const out = new Float32Array(values.length);
  for (let y = 0; y < height; y++) out.set(padded.subarray(y * wide, y * wide + width), y * width);
  return out;
}

/** Puts in each place the least of `span` places that lie `step` apart from it on, by doubling. */
function takeLeast(values: Float32Array, step: number, span: number): void {
  for (let taken = 1; taken < span; ) {
    const more = Math.min(taken, span - taken);
    const off = more * step;
    for (let i = 0, j = off; j < values.length; i++, j++)
      if ((values[j] as number) < (values[i] as number)) values[i] = values[j] as number;
    taken += more;
  }
}

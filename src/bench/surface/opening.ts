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

/** The least over squares: along the rows, then along the columns as rows. */
function leastOver({ width, height, values }: Plane, reach: number): Float32Array {
  return leastAlong(leastAlong(values, width, reach), height, reach);
}

/**
 * The least within `reach` along each row, rows and columns changed over: of each block of as many
 * pixels as the reach spans, the least up to a pixel and the least from it on (`vanherk:1992`).
 */
function leastAlong(values: Float32Array, width: number, reach: number): Float32Array {
  const height = values.length / width;
  const span = 2 * reach + 1;
  const padded = Math.ceil((width + 2 * reach) / span) * span;
  const row = new Float32Array(padded).fill(Number.POSITIVE_INFINITY);
  const upTo = new Float32Array(padded);
  const fromOn = new Float32Array(padded);
  const out = new Float32Array(values.length);
  for (let y = 0; y < height; y++) {
    row.set(values.subarray(y * width, (y + 1) * width), reach);
    for (let first = 0; first < padded; first += span) {
      let least = Number.POSITIVE_INFINITY;
      for (let i = first; i < first + span; i++)
        upTo[i] = least = Math.min(least, row[i] as number);
      least = Number.POSITIVE_INFINITY;
      for (let i = first + span - 1; i >= first; i--)
        fromOn[i] = least = Math.min(least, row[i] as number);
    }
    for (let x = 0; x < width; x++)
      out[x * height + y] = Math.min(fromOn[x] as number, upTo[x + span - 1] as number);
  }
  return out;
}

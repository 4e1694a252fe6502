import type { Plane } from '../picture.ts';

/** Half the side of the widest stroke that is closed, pixels. */
const REACH = 4;

/** Depth of ink, as a share of the light beside it, from which a place has strokes. Judgement. */
const INKED = 0.04;

/**
 * Logarithm of how much wider the dark strokes of the second print are than those of the first, by
 * the ink in them: what a closing (`serra:1982`) fills, as a share of the light beside, summed over a
 * place. Blur spreads a stroke's ink and keeps its sum, so that sharpness takes no part. The median
 * over places with strokes in both; null where there are too few.
 */
export function strokeRatio(first: Plane, second: Plane, tile: number): number | null {
  const [a, b] = [first, second].map(inkOf) as [Float32Array, Float32Array];
  const { width, height } = first;
  const ratios: number[] = [];
  for (let y = tile; y + 2 * tile <= height; y += tile)
    for (let x = tile; x + 2 * tile <= width; x += tile) {
      const [one, other] = [sumOver(a, width, x, y, tile), sumOver(b, width, x, y, tile)];
      const least = INKED * tile * tile;
      if (one > least && other > 0.3 * least) ratios.push(Math.log(other / one));
    }
  if (ratios.length < 8) return null;
  ratios.sort((p, q) => p - q);
  return ratios[ratios.length >> 1] as number;
}

/** Share of the light beside it that each pixel of a stroke lacks. */
function inkOf({ width, height, values }: Plane): Float32Array {
  const closed = filtered(filtered(values, width, height, Math.max), width, height, Math.min);
  return values.map((value, i) => 1 - (value + 0.01) / ((closed[i] as number) + 0.01));
}

/** The largest or least value over a square, along rows and then along columns. */
function filtered(
  values: Float32Array,
  width: number,
  height: number,
  pick: (a: number, b: number) => number,
): Float32Array {
  const rows = new Float32Array(values.length);
  const both = new Float32Array(values.length);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      let best = values[y * width + x] as number;
      for (let u = Math.max(0, x - REACH); u <= Math.min(width - 1, x + REACH); u++)
        best = pick(best, values[y * width + u] as number);
      rows[y * width + x] = best;
    }
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      let best = rows[y * width + x] as number;
      for (let v = Math.max(0, y - REACH); v <= Math.min(height - 1, y + REACH); v++)
        best = pick(best, rows[v * width + x] as number);
      both[y * width + x] = best;
    }
  return both;
}

function sumOver(
  values: Float32Array,
  width: number,
  x0: number,
  y0: number,
  tile: number,
): number {
  let sum = 0;
  for (let y = y0; y < y0 + tile; y++)
    for (let x = x0; x < x0 + tile; x++) sum += values[y * width + x] as number;
  return sum;
}

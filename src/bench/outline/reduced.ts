import { lightTable } from '../light/srgb.ts';
import type { Picture } from '../picture.ts';

/** Longest side, in pixels, that a reduced picture is brought near to. */
const LONGEST = 640;

/** Longest side that a smaller picture is drawn to, and the least part of its pixels that is used. */
const ENLARGED = 760;
const LEAST_FACTOR = 0.5;

/** Samples along a side of the square of pixels that are averaged: more only costs time. */
const SAMPLES_A_SIDE = 5;

/**
 * A small copy of a picture, averaged in linear light and then brought to its square root, on which
 * the noise of light is about even (`anscombe:1948`).
 */
export interface Reduced {
  readonly width: number;
  readonly height: number;
  /** Pixels of the picture that one pixel of this copy covers along each axis. */
  readonly factor: number;
  /** Red, green and blue, interleaved, 0 to 1. */
  readonly colours: Float32Array;
}

/** The small copy of a picture; a picture smaller than that is drawn larger, up to twice. */
export function reducedOf(picture: Picture): Reduced {
  const longest = Math.max(picture.width, picture.height);
  if (longest < LONGEST) return enlarged(picture, Math.max(LEAST_FACTOR, longest / ENLARGED));
  const factor = Math.round(longest / LONGEST);
  const width = Math.floor(picture.width / factor);
  const height = Math.floor(picture.height / factor);
  const colours = new Float32Array(width * height * 3);
  const table = lightTable(picture);
  const step = Math.max(1, Math.floor(factor / SAMPLES_A_SIDE));
  const sums = new Float32Array(width * 3);
  for (let y = 0; y < height; y++) {
    sums.fill(0);
    let rows = 0;
    for (let dy = step >> 1; dy < factor; dy += step, rows++)
      addRow(picture, table, y * factor + dy, factor, step, sums);
    const count = rows * rows;
    const start = y * width * 3;
    for (let i = 0; i < sums.length; i++)
      colours[start + i] = Math.sqrt((sums[i] as number) / count);
  }
  return { width, height, factor, colours };
}

/** A copy with pixels of `factor` of the picture's, between which the light is drawn straight. */
function enlarged({ width: wide, height: high, samples }: Picture, factor: number): Reduced {
  const width = Math.floor(wide / factor);
  const height = Math.floor(high / factor);
  const colours = new Float32Array(width * height * 3);
  const table = lightTable({ samples });
  const columns = placesAlong(width, wide, factor);
  const rows = placesAlong(height, high, factor);
  const line = new Float32Array(wide * 3);
  for (let y = 0; y < height; y++) {
    const top = (rows[y] as number) | 0;
    const v = (rows[y] as number) - top;
    for (let k = 0, i = top * wide * 3, j = i + wide * 3; k < line.length; k++, i++, j++)
      line[k] =
        (1 - v) * (table[samples[i] as number] as number) +
        v * (table[samples[j] as number] as number);
    for (let x = 0, at = y * width * 3; x < width; x++) {
      const left = (columns[x] as number) | 0;
      const u = (columns[x] as number) - left;
      for (let i = 3 * left; i < 3 * left + 3; i++, at++)
        colours[at] = Math.sqrt((1 - u) * (line[i] as number) + u * (line[i + 3] as number));
    }
  }
  return { width, height, factor, colours };
}

/** Where the pixels of a copy lie along one axis of the picture, within its outermost centres. */
function placesAlong(count: number, size: number, factor: number): Float64Array {
  return Float64Array.from({ length: count }, (_, i) =>
    Math.min(size - 1.001, Math.max(0, (i + 0.5) * factor - 0.5)),
  );
}

function addRow(
  { samples, width }: Picture,
  table: Float32Array,
  row: number,
  factor: number,
  step: number,
  sums: Float32Array,
): void {
  for (let i = 0, x = 0; i < sums.length; i += 3, x += factor) {
    let r = 0;
    let g = 0;
    let b = 0;
    const end = (row * width + x + factor) * 3;
    for (let at = (row * width + x + (step >> 1)) * 3; at < end; at += 3 * step) {
      r += table[samples[at] as number] as number;
      g += table[samples[at + 1] as number] as number;
      b += table[samples[at + 2] as number] as number;
    }
    sums[i] = (sums[i] as number) + r;
    sums[i + 1] = (sums[i + 1] as number) + g;
    sums[i + 2] = (sums[i + 2] as number) + b;
  }
}

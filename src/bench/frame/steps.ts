import type { Strip } from './strip.ts';

/** Where a strip's colour changes on the way inwards, and how sharply. */
export interface Steps {
  readonly strip: Strip;
  /** Size of the change at each depth and column, in hundredths of the cube root of light. */
  readonly sizes: Float32Array;
  /** 1 where the change is the largest nearby and stands out from the noise, else 0. */
  readonly peaks: Uint8Array;
  /** What a change must exceed to stand out. */
  readonly threshold: number;
}

/** Cells on each side of a depth whose mean colours are compared. */
const REACH = 2;
/** A change stands out at four times the lower quartile of all, some 4.4 standard errors of the noise. */
const OVER_QUARTILE = 4;
/** Least change that an eye would see as a line. Judgement, no source. */
const LEAST = 0.8;

/** Finds where a strip's colour changes on the way inwards, on a scale as even as Lab's. */
export function stepsOf(strip: Strip): Steps {
  const even = strip.colours.map((light) => 100 * Math.cbrt(light));
  const { columns, depths } = strip;
  const sizes = new Float32Array(columns * depths);
  for (let d = REACH; d < depths - REACH; d++)
    for (let c = 0; c < columns; c++) sizes[d * columns + c] = changeAt(even, columns, d, c);
  const threshold = Math.max(LEAST, OVER_QUARTILE * quartile(sizes, columns, depths));
  return { strip, sizes, peaks: peaksOf(sizes, columns, depths, threshold), threshold };
}

function changeAt(even: Float32Array, columns: number, d: number, c: number): number {
  const row = columns * 3;
  let sum = 0;
  for (let channel = 0; channel < 3; channel++) {
    const at = d * row + c * 3 + channel;
    let change = 0;
    for (let k = 1; k <= REACH; k++)
      change += (even[at + k * row] as number) - (even[at - k * row] as number);
    sum += change * change;
  }
  return Math.sqrt(sum) / REACH;
}

function quartile(sizes: Float32Array, columns: number, depths: number): number {
  const inside = sizes.slice(REACH * columns, (depths - REACH) * columns).sort();
  return inside[inside.length >> 2] as number;
}

function peaksOf(sizes: Float32Array, columns: number, depths: number, threshold: number) {
  const peaks = new Uint8Array(sizes.length);
  for (let i = columns; i < columns * (depths - 1); i++) {
    const size = sizes[i] as number;
    if (
      size >= threshold &&
      size >= (sizes[i - columns] as number) &&
      size > (sizes[i + columns] as number)
    )
      peaks[i] = 1;
  }
  return peaks;
}

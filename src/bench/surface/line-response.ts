import type { Plane } from '../picture.ts';

/** At each pixel the strongest line that passes, a bright flank beside a dark one. */
export interface LineResponse {
  readonly width: number;
  readonly height: number;
  /** Sum of the contrast of the flanks along the line; above 0 where the brighter lies clockwise of it. */
  readonly strength: Float32Array;
  /** Which of the directions the line has: `index * 180 / DIRECTIONS` degrees from x towards y. */
  readonly direction: Uint8Array;
}

/** Directions that are tried, evenly spread over half a turn. */
export const DIRECTIONS = 16;

/**
 * Lines by the first derivative of a Gaussian across them (`freeman:1991`: any direction from two
 * convolutions), summed along straight pieces of `length` pixels.
 */
export function lineResponseOf(plane: Plane, length: number): LineResponse {
  const { width, height } = plane;
  const [gx, gy] = gradientOf(plane);
  const flat = emptyOf(width, height);
  const steep = emptyOf(height, width);
  const [across, down] = [gx, gy].map((g) => transposed(g, width, height)) as [
    Float32Array,
    Float32Array,
  ];
  for (let k = 0; k < DIRECTIONS; k++) {
    const angle = (k * Math.PI) / DIRECTIONS;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    if (Math.abs(cos) >= Math.abs(sin)) sumAlong(flat, k, gy, gx, [cos, sin], length);
    else sumAlong(steep, k, across, down, [sin, cos], -length);
  }
  return strongerOf(flat, steep);
}

function emptyOf(width: number, height: number): LineResponse {
  const strength = new Float32Array(width * height);
  return { width, height, strength, direction: new Uint8Array(width * height) };
}

/** Change across and down of the picture smoothed by [1 4 6 4 1]/16, a Gaussian of one pixel. */
function gradientOf({ width, height, values }: Plane): [Float32Array, Float32Array] {
  const smoothed = smoothedAlong(smoothedAlong(values, 1), width);
  const gx = new Float32Array(values.length);
  const gy = new Float32Array(values.length);
  for (let y = 3; y < height - 3; y++)
    for (let i = y * width + 3; i < (y + 1) * width - 3; i++) {
      gx[i] = (smoothed[i + 1] as number) - (smoothed[i - 1] as number);
      gy[i] = (smoothed[i + width] as number) - (smoothed[i - width] as number);
    }
  return [gx, gy];
}

function smoothedAlong(from: Float32Array, step: number): Float32Array {
  const out = new Float32Array(from.length);
  for (let i = 2 * step; i < from.length - 2 * step; i++) {
    const near = (from[i - step] as number) + (from[i + step] as number);
    const far = (from[i - 2 * step] as number) + (from[i + 2 * step] as number);
    out[i] = (6 * (from[i] as number) + 4 * near + far) / 16;
  }
  return out;
}

/**
 * Sums one direction along parallel digital lines, walked column by column, which together pass
 * each pixel once; keeps what is stronger than before.
 *
 * @param way share of `along` and of `across` in the direction, the first at least as large
 * @param length of a piece in pixels; below 0 for a transposed picture, whose sign turns
 */
function sumAlong(
  { width, height, strength, direction }: LineResponse,
  k: number,
  across: Float32Array,
  along: Float32Array,
  [most, least]: readonly [number, number],
  length: number,
): void {
  const half = Math.max(1, Math.round(Math.abs(length * most) / 2));
  const rows = Int32Array.from({ length: width }, (_, t) => Math.round((least / most) * t));
  const cells = rows.map((row, t) => row * width + t);
  const last = rows[width - 1] as number;
  const sums = new Float64Array(width + 1);
  const [a, b] = length > 0 ? [most, least] : [-most, -least];
  for (let lane = Math.min(0, -last); lane < height + Math.max(0, -last); lane++) {
    const start = lane * width;
    const [from, to] = insideOf(rows, lane, height);
    let sum = 0;
    sums[from] = 0;
    for (let t = from; t < to; t++) {
      const i = start + (cells[t] as number);
      sum += a * (across[i] as number) - b * (along[i] as number);
      sums[t + 1] = sum;
    }
    for (let t = from + half; t < to - half; t++) {
      const value = (sums[t + half + 1] as number) - (sums[t - half] as number);
      const i = start + (cells[t] as number);
      const before = strength[i] as number;
      if (value * value <= before * before) continue;
      strength[i] = value;
      direction[i] = k;
    }
  }
}

/** First column, and the one after the last, in which a lane lies inside the picture. */
function insideOf(rows: Int32Array, lane: number, height: number): readonly [number, number] {
  let [from, to] = [0, rows.length];
  while (from < to && outside(lane + (rows[from] as number), height)) from++;
  while (to > from && outside(lane + (rows[to - 1] as number), height)) to--;
  return [from, to];
}

function outside(row: number, height: number): boolean {
  return row < 0 || row >= height;
}

function transposed(values: Float32Array, width: number, height: number): Float32Array {
  const out = new Float32Array(values.length);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) out[x * height + y] = values[y * width + x] as number;
  return out;
}

/** The stronger of the flat directions and of the steep ones, which were found on the transposed. */
function strongerOf(flat: LineResponse, steep: LineResponse): LineResponse {
  const { width, height, strength, direction } = flat;
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const [i, j] = [y * width + x, x * height + y];
      const value = steep.strength[j] as number;
      if (Math.abs(value) <= Math.abs(strength[i] as number)) continue;
      strength[i] = value;
      direction[i] = steep.direction[j] as number;
    }
  return flat;
}

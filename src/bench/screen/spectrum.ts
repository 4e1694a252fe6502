import FFT from 'fft.js';
import type { Picture } from '../picture.ts';
import { densityTable } from './density.ts';

/** Side of a tile in pixels, a power of two. */
export const TILE = 256;

const HALF = TILE / 2;

/** Tiles along each side of the picture: more tell little and take long. */
const MOST = 6;

/** Entries of a symmetric 3 × 3 matrix, by channel: rr, gg, bb, rg, rb, gb. */
export const PAIRS = [
  [0, 0],
  [1, 1],
  [2, 2],
  [0, 1],
  [0, 2],
  [1, 2],
] as const;

/** Averaged cross-spectra of the densities in red, green and blue. */
export interface Spectrum {
  /**
   * Real parts of rr, gg, bb, rg, rb, gb. Entry `v * TILE + u` stands for u / TILE cycles a pixel
   * along x and v / TILE along y, both modulo 1; frequencies f and -f hold the same.
   */
  readonly planes: readonly Float64Array[];
  /** Frequency up to which it is filled, cycles a (reduced) pixel. */
  readonly reach: number;
}

/**
 * Cross-spectra of the three densities, averaged over tiles under a Hann window (`welch:1967`).
 * Two tiles go through one complex transform: the sum over f and -f adds up both.
 *
 * @param reduce pixels along each side of the squares that are averaged to one first
 * @param reach highest frequency wanted, cycles a reduced pixel, under 0.5
 * @throws RangeError where the picture is smaller than a tile.
 */
export function spectrumOf(picture: Picture, reduce: number, reach: number): Spectrum {
  if (Math.min(picture.width, picture.height) < TILE * reduce)
    throw new RangeError(`A tile of ${TILE * reduce} pixels does not fit the picture.`);
  const planes = PAIRS.map(() => new Float64Array(TILE * TILE));
  const most = Math.min(HALF - 1, Math.ceil(reach * TILE));
  const transform = transformOf(most);
  const read = readerOf(picture, reduce);
  const corners = tileCorners(picture, TILE * reduce);
  const three = [0, 1, 2].map(() => new Float64Array(TILE * TILE * 2));
  for (let t = 0; t < corners.length; t += 2) {
    for (const plane of three) plane.fill(0);
    for (const part of [0, 1] as const) {
      const corner = corners[t + part];
      if (corner) read(corner, three, part);
    }
    for (const plane of three) transform(plane);
    gather(three, planes, most, 0.5 / corners.length);
  }
  return { planes, reach: most / TILE };
}

/** Corners of tiles spread over the picture without overlap, at most `MOST` along each side. */
function tileCorners(
  { width, height }: Picture,
  side: number,
): readonly (readonly [number, number])[] {
  const along = (length: number) => {
    const count = Math.min(MOST, Math.max(1, Math.round(length / side)));
    const gap = (length - side) / Math.max(1, count - 1);
    return Array.from({ length: count }, (_, i) => Math.floor(i * gap));
  };
  return along(height).flatMap((y) => along(width).map((x) => [x, y] as const));
}

const hann = Float64Array.from(
  { length: TILE },
  (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / TILE),
);

type Read = (corner: readonly [number, number], into: readonly Float64Array[], part: 0 | 1) => void;

/** Reads a tile's densities under the window into the real (0) or imaginary (1) parts. */
function readerOf(picture: Picture, reduce: number): Read {
  const table = densityTable(picture);
  return ([x0, y0], into, part) => {
    for (let c = 0; c < 3; c++) {
      const plane = into[c] as Float64Array;
      let sum = 0;
      for (let y = 0; y < TILE; y++) {
        const row = ((y0 + y * reduce) * picture.width + x0) * 3 + c;
        sum += reduceRow(picture, table, row, reduce, plane, y * TILE * 2 + part);
      }
      const mean = sum / (TILE * TILE);
      for (let y = 0, i = part as number; y < TILE; y++)
        for (let x = 0; x < TILE; x++, i += 2)
          plane[i] = ((plane[i] as number) - mean) * (hann[x] as number) * (hann[y] as number);
    }
  };
}

/** Averages one row of squares and answers its sum. */
function reduceRow(
  { samples, width }: Picture,
  table: Float32Array,
  row: number,
  reduce: number,
  plane: Float64Array,
  to: number,
): number {
  let sum = 0;
  for (let x = 0, i = to; x < TILE; x++, i += 2) {
    let value = 0;
    for (let dy = 0; dy < reduce; dy++)
      for (let dx = 0, at = row + (dy * width + x * reduce) * 3; dx < reduce; dx++, at += 3)
        value += table[samples[at] as number] as number;
    value /= reduce * reduce;
    plane[i] = value;
    sum += value;
  }
  return sum;
}

/** The two-dimensional transform in place, of the columns up to a frequency alone. */
function transformOf(most: number): (plane: Float64Array) => void {
  const fft = new FFT(TILE);
  const line = new Float64Array(TILE * 2);
  const out = new Float64Array(TILE * 2);
  return (plane) => {
    for (let y = 0; y < TILE; y++) {
      const row = plane.subarray(y * TILE * 2, (y + 1) * TILE * 2);
      line.set(row);
      fft.transform(out, line);
      row.set(out);
    }
    for (let u = 0; u < TILE; u++) {
      if (u > most && u < TILE - most) continue;
      for (let y = 0, i = u * 2; y < TILE; y++, i += TILE * 2) {
        line[y * 2] = plane[i] as number;
        line[y * 2 + 1] = plane[i + 1] as number;
      }
      fft.transform(out, line);
      for (let y = 0, i = u * 2; y < TILE; y++, i += TILE * 2) {
        plane[i] = out[y * 2] as number;
        plane[i + 1] = out[y * 2 + 1] as number;
      }
    }
  };
}

function gather(
  three: readonly Float64Array[],
  planes: readonly Float64Array[],
  most: number,
  share: number,
): void {
  PAIRS.forEach(([c, d], pair) => {
    const [a, b, sum] = [three[c]!, three[d]!, planes[pair]!];
    for (let v = 0; v <= most; v++)
      for (let u = -most; u <= most; u++) {
        const at = v * TILE + (u & (TILE - 1));
        const opposite = (-v & (TILE - 1)) * TILE + (-u & (TILE - 1));
        const [i, j] = [at * 2, opposite * 2];
        const power =
          (a[i] as number) * (b[i] as number) +
          (a[i + 1] as number) * (b[i + 1] as number) +
          (a[j] as number) * (b[j] as number) +
          (a[j + 1] as number) * (b[j + 1] as number);
        sum[at] = (sum[at] as number) + power * share;
        if (v > 0) sum[opposite] = (sum[opposite] as number) + power * share;
      }
  });
}

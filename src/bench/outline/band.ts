import type { Edges } from './edges.ts';
import type { Reduced } from './reduced.ts';
import { addColour } from './sampler.ts';

/** From where to where a stretch runs, in pixels from the middle of the reduced picture. */
export type Stretch = readonly [ax: number, ay: number, bx: number, by: number];

/** Places along a stretch, pixels across it at most, and the share of it at each end left to tips. */
const ALONG = 96;
export const MOST_ACROSS = 160;
export const ENDS = 0.07;

/** Odds against chance: the best of a thousand lines in noise reaches 3.5. */
const Z_NOTHING = 3.5;
const Z_SURE = 24;
const FAINTEST = 0.0015 ** 2;

/**
 * Grain is the logarithm of how steeply the colour changes; what it is on both sides of a place is
 * its mean over these pixels, clear of the edge itself. Judgement, no source.
 */
export const GRAIN_FROM = 2;
export const GRAIN_TO = 6;
const LEAST_GRAIN = 0.001;

/** Neighbours share their grain, so that more is asked of it than of colours. Judgement, no source. */
const GRAIN_Z_NOTHING = 10;
const GRAIN_Z_SURE = 40;

/** Change of three colours, its energy, the most support within a pixel across, change of grain, its energy. */
const SEEN = 7;

const colours = new Float32Array(ALONG * MOST_ACROSS * 3);
const support = new Float32Array(ALONG * MOST_ACROSS);
const grain = new Float32Array(ALONG * MOST_ACROSS);
/** What is seen at each offset, summed over the places along the stretch before each. */
const before = new Float64Array((ALONG + 1) * MOST_ACROSS * SEEN);
const summed = new Float64Array(MOST_ACROSS * SEEN);

/** Reads the band of so many pixels across a stretch, at most `MOST_ACROSS`, that the rest looks at. */
export function fillBand(
  reduced: Reduced,
  edges: Edges,
  [ax, ay, bx, by]: Stretch,
  across: number,
): void {
  const length = Math.hypot(bx - ax, by - ay);
  const nx = (by - ay) / length;
  const ny = -(bx - ax) / length;
  const cx = (edges.width - 1) / 2;
  const cy = (edges.height - 1) / 2;
  colours.fill(0, 0, ALONG * across * 3);
  for (let k = 0; k < ALONG; k++) {
    const t = ENDS + ((1 - 2 * ENDS) * (k + 0.5)) / ALONG;
    const x0 = ax + t * (bx - ax);
    const y0 = ay + t * (by - ay);
    for (let m = 0; m < across; m++) {
      const u = m - (across - 1) / 2;
      const x = x0 + u * nx;
      const y = y0 + u * ny;
      addColour(reduced, x, y, colours, (k * across + m) * 3);
      const px = Math.round(x + cx) | 0;
      const py = Math.round(y + cy) | 0;
      support[k * across + m] = ownSupport(edges, px, py, nx, ny);
      grain[k * across + m] = grainAt(edges, px, py);
    }
  }
  sumBefore(across);
}

/** Sums what is seen along the stretch, so that a piece of it is the difference of two sums. */
function sumBefore(across: number): void {
  before.fill(0, 0, across * SEEN);
  for (let k = 0; k < ALONG; k++)
    for (let m = 1; m < across - 1; m++) {
      const at = k * across + m;
      const from = at * SEEN;
      const to = from + across * SEEN;
      let energy = 0;
      for (let c = 0; c < 3; c++) {
        const change =
          (colours[(at + 1) * 3 + c] as number) - (colours[(at - 1) * 3 + c] as number);
        before[to + c] = (before[from + c] as number) + change;
        energy += change * change;
      }
      const widest = Math.max(
        support[at] as number,
        support[at - 1] as number,
        support[at + 1] as number,
      );
      before[to + 3] = (before[from + 3] as number) + energy;
      before[to + 4] = (before[from + 4] as number) + widest;
      const coarser = grainChange(k * across, m, across);
      before[to + 5] = (before[from + 5] as number) + coarser;
      before[to + 6] = (before[from + 6] as number) + coarser * coarser;
    }
}

function grainAt({ width, height, steepness }: Edges, x: number, y: number): number {
  const inside = x >= 0 && y >= 0 && x < width && y < height;
  return Math.log((inside ? (steepness[y * width + x] as number) : 0) + LEAST_GRAIN);
}

/** How much coarser the grain is outward of a place than inward of it. */
function grainChange(row: number, m: number, across: number): number {
  if (m < GRAIN_TO || m + GRAIN_TO >= across) return 0;
  let change = 0;
  for (let off = GRAIN_FROM; off <= GRAIN_TO; off++)
    change += (grain[row + m + off] as number) - (grain[row + m - off] as number);
  return change / (GRAIN_TO - GRAIN_FROM + 1);
}

function ownSupport(edges: Edges, x: number, y: number, nx: number, ny: number): number {
  if (x < 0 || y < 0 || x >= edges.width || y >= edges.height) return 0;
  const i = y * edges.width + x;
  const along = (edges.nx[i] as number) * nx + (edges.ny[i] as number) * ny;
  const square = along * along;
  return (edges.weight[i] as number) * square * square;
}

/** Sums what is seen over the length, for every offset at one slope, one even piece at a time. */
export function sumAlong(across: number, slope: number): void {
  summed.fill(0);
  const shiftAt = (k: number) => Math.round(slope * ((k + 0.5) / ALONG - 0.5));
  for (let k = 0, end = 0; k < ALONG; k = end) {
    const shift = shiftAt(k);
    while (end < ALONG && shiftAt(end) === shift) end++;
    const first = Math.max(1, 1 - shift) * SEEN;
    const last = Math.min(across - 1, across - 1 - shift) * SEEN;
    const from = (k * across + shift) * SEEN;
    const to = (end * across + shift) * SEEN;
    for (let i = first; i < last; i++)
      summed[i] =
        (summed[i] as number) + ((before[to + i] as number) - (before[from + i] as number));
  }
}

/**
 * At an offset and the slope summed last: the mean of the share of the length that is an edge and
 * the odds of a faint, steady change.
 */
export function evidenceAt(m: number): number {
  const at = m * SEEN;
  const square =
    ((summed[at] as number) ** 2 +
      (summed[at + 1] as number) ** 2 +
      (summed[at + 2] as number) ** 2) /
    ALONG ** 2;
  const total = (summed[at + 3] as number) / ALONG + FAINTEST;
  const share = Math.min(0.98, square / total);
  const z = Math.sqrt((share * ALONG) / (1 - share));
  const steady = (z - Z_NOTHING) / (Z_SURE - Z_NOTHING);
  return ((summed[at + 4] as number) / ALONG + Math.min(1, Math.max(0, steady))) / 2;
}

/**
 * At an offset and the slope summed last: the odds, one half where sure and more beyond, that the
 * grain changes along the whole length, and not by chance.
 */
export function grainEvidenceAt(m: number): number {
  const at = m * SEEN + 5;
  const mean = (summed[at] as number) / ALONG;
  const spread = (summed[at + 1] as number) / ALONG - mean * mean;
  const z = Math.abs(mean) * Math.sqrt(ALONG / Math.max(spread, 1e-4));
  return Math.max(0, (z - GRAIN_Z_NOTHING) / (GRAIN_Z_SURE - GRAIN_Z_NOTHING)) / 2;
}

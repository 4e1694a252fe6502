import { lightTable } from '../light/srgb.ts';
import type { Picture } from '../picture.ts';
import { type Figure, seenPoint } from './figure.ts';

/** Strips across each side, candidates kept in each, and lines of samples averaged in each. */
export const STRIPS = 72;
export const KEPT = 4;
const SUB = 5;
const STEP = 0.5;
const MOST = 1024;

/** Edges found in strips across the four sides: strip s of side i is entry i · STRIPS + s. */
export interface Strips {
  /** Middle of each strip and its normal outward, in pixels of the picture. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly nx: Float64Array;
  readonly ny: Float64Array;
  /** Pixels outward from the middle to each edge, KEPT a strip, the steepest first; NaN for none. */
  readonly off: Float64Array;
  /** Steepness of each, in light per pixel. */
  readonly steep: Float64Array;
}

const profile = new Float64Array(MOST * 3);
const square = new Float64Array(MOST);
const kernel = new Float64Array(64);

/**
 * Cuts strips across the sides of a figure and finds the edges in each, in linear light: maxima of
 * the change of the three colours together under a derivative of a Gaussian (`canny:1986`).
 * `reach` and `sigma` in pixels, `margin` the share of each side left out at both ends.
 */
export function cutStrips(
  picture: Picture,
  figure: Figure,
  reach: number,
  sigma: number,
  margin: readonly [number, number, number, number],
): Strips {
  const n = 4 * STRIPS;
  const strips: Strips = {
    x: new Float64Array(n),
    y: new Float64Array(n),
    nx: new Float64Array(n),
    ny: new Float64Array(n),
    off: new Float64Array(n * KEPT).fill(Number.NaN),
    steep: new Float64Array(n * KEPT),
  };
  const table = lightTable(picture);
  const half = Math.min(MOST / 2 - 1, Math.ceil(reach / STEP));
  const taps = fillKernel(sigma);
  for (let side = 0; side < 4; side++) {
    const m = margin[side] as number;
    for (let s = 0; s < STRIPS; s++) {
      const at = side * STRIPS + s;
      profile.fill(0, 0, (2 * half + 1) * 3);
      const width = (1 - 2 * m) / STRIPS;
      const t = m + width * (s + 0.5);
      place(strips, figure, at, side, t, width / 2);
      for (let k = 0; k < SUB; k++) {
        const [x, y] = seenPoint(figure, side, t + width * ((k + 0.5) / SUB - 0.5));
        addProfile(picture, table, x, y, strips.nx[at] as number, strips.ny[at] as number, half);
      }
      findEdges(strips, at, half, taps);
    }
  }
  return strips;
}

function place(
  strips: Strips,
  figure: Figure,
  at: number,
  side: number,
  t: number,
  dt: number,
): void {
  const [x, y] = seenPoint(figure, side, t);
  const [ax, ay] = seenPoint(figure, side, t - dt);
  const [bx, by] = seenPoint(figure, side, t + dt);
  const length = Math.hypot(bx - ax, by - ay);
  strips.x[at] = x;
  strips.y[at] = y;
  strips.nx[at] = (by - ay) / length;
  strips.ny[at] = -(bx - ax) / length;
}

function addProfile(
  { samples, width, height }: Picture,
  table: Float32Array,
  x: number,
  y: number,
  nx: number,
  ny: number,
  half: number,
): void {
  for (let i = -half; i <= half; i++) {
    const px = Math.min(Math.max(x + i * STEP * nx, 0), width - 1.001);
    const py = Math.min(Math.max(y + i * STEP * ny, 0), height - 1.001);
    const left = px | 0;
    const top = py | 0;
    const u = px - left;
    const v = py - top;
    const a = (top * width + left) * 3;
    const b = a + width * 3;
    const wa = (1 - u) * (1 - v);
    const wb = u * (1 - v);
    const wc = (1 - u) * v;
    const wd = u * v;
    const at = (i + half) * 3;
    for (let c = 0; c < 3; c++)
      profile[at + c] =
        (profile[at + c] as number) +
        wa * (table[samples[a + c] as number] as number) +
        wb * (table[samples[a + 3 + c] as number] as number) +
        wc * (table[samples[b + c] as number] as number) +
        wd * (table[samples[b + 3 + c] as number] as number);
  }
}

/** Derivative of a Gaussian, one side of it, so scaled that a ramp of 1 a pixel answers 1. */
function fillKernel(sigma: number): number {
  const taps = Math.min(kernel.length - 1, Math.ceil((3 * sigma) / STEP));
  let sum = 0;
  for (let i = 1; i <= taps; i++) {
    const t = (i * STEP) / sigma;
    kernel[i] = t * Math.exp((-t * t) / 2);
    sum += 2 * (kernel[i] as number) * i * STEP;
  }
  for (let i = 1; i <= taps; i++) kernel[i] = (kernel[i] as number) / (sum * SUB);
  return taps;
}

function findEdges(strips: Strips, at: number, half: number, taps: number): void {
  const last = 2 * half - taps;
  for (let i = taps; i <= last; i++) {
    let sum = 0;
    for (let c = 0; c < 3; c++) {
      let change = 0;
      for (let k = 1; k <= taps; k++)
        change +=
          (kernel[k] as number) *
          ((profile[(i + k) * 3 + c] as number) - (profile[(i - k) * 3 + c] as number));
      sum += change * change;
    }
    square[i] = sum;
  }
  for (let i = taps + 1; i < last; i++) {
    const before = square[i - 1] as number;
    const here = square[i] as number;
    const after = square[i + 1] as number;
    if (here < before || here <= after) continue;
    const bend = before - 2 * here + after;
    const shift = bend < 0 ? (before - after) / (2 * bend) : 0;
    keep(strips, at * KEPT, (i - half + shift) * STEP, Math.sqrt(here));
  }
}

/** Puts an edge among those kept of a strip, by falling steepness. */
function keep({ off, steep }: Strips, first: number, place: number, strength: number): void {
  let at = first + KEPT - 1;
  if (strength <= (steep[at] as number)) return;
  while (at > first && strength > (steep[at - 1] as number)) {
    steep[at] = steep[at - 1] as number;
    off[at] = off[at - 1] as number;
    at--;
  }
  steep[at] = strength;
  off[at] = place;
}

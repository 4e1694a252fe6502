import { type CardMap, pixelOf, turnOf } from '../geometry/card-map.ts';
import { boxMeanOf } from '../surface/box-mean.ts';
import { type CardSlopes, flattened } from './flattened.ts';
import { integrated } from './integrate.ts';
import type { Slopes } from './slopes.ts';

/** Depth of a card's surface below its undisturbed self, node by node. */
export interface DepthMap {
  readonly width: number;
  readonly height: number;
  /** From node to node, mm; the first node lies half a step right of and below the card's top-left corner. */
  readonly stepMm: number;
  /** Millimetres below the undisturbed surface, by rows; below 0 for a ridge. */
  readonly depthMm: Float32Array;
  /** One standard error of each; infinite where the pictures tell nothing. */
  readonly sdMm: Float32Array;
}

const STEP_MM = 0.25;
/** Least weight of a slope as a share of the median, so that what is not known joins smoothly. */
const LEAST = 0.02;
/** Share of the depth by which normals of single blocks err; on dark, glossy print more. */
const MODEL_SHARE = 0.1;
/** Steps to each side over which the weights of slopes are averaged: heights hang on them all. */
const AROUND = 6;
/** Steps to each side of the squares whose mean is the undisturbed surface: what is wider is a bend. */
const BROAD = 20;

/**
 * Depth over a card from its slopes, by weighted least squares on a grid of a quarter of a
 * millimetre. What is wider than some five millimetres is taken off, since bent cards and
 * the light of lamps make as much. A dent's own
 * `depthMm` is the better number: here gloss and blocks as wide as a small dent blur it.
 */
export function depthMapOf(slopes: Slopes, map: CardMap): DepthMap {
  const [widthMm, heightMm] = map.sizeMm;
  const width = Math.floor(widthMm / STEP_MM);
  const height = Math.floor(heightMm / STEP_MM);
  const field = flattened(inCardAxes(slopes, map, width, height), width);
  const [wide, high] = [powerOfTwo(width), powerOfTwo(height)];
  const known = field.weight.filter((value) => value > 0).sort();
  const usual = known[known.length >> 1] ?? 1;
  const laid = (values: Float64Array, of: (value: number) => number) => {
    const out = new Float64Array(wide * high).fill(of(0));
    for (let y = 0, i = 0; y < height; y++)
      for (let x = 0; x < width; x++, i++) out[y * wide + x] = of(values[i] as number);
    return out;
  };
  const heights = integrated({
    width: wide,
    height: high,
    right: laid(field.right, (value) => value * STEP_MM),
    down: laid(field.down, (value) => value * STEP_MM),
    weight: laid(field.weight, (value) => Math.min(Math.max(value / usual, LEAST), 1)),
  });
  const depthMm = new Float32Array(width * height);
  for (let y = 0, i = 0; y < height; y++)
    for (let x = 0; x < width; x++, i++) depthMm[i] = -(heights[y * wide + x] as number);
  settle(depthMm, field.weight, width);
  return { width, height, stepMm: STEP_MM, depthMm, sdMm: sdOf(depthMm, field, width) };
}

function powerOfTwo(atLeast: number): number {
  return 2 ** Math.ceil(Math.log2(atLeast));
}

/** Slopes and weights, read bilinearly from the picture's blocks, along the card's own axes. */
function inCardAxes(slopes: Slopes, map: CardMap, width: number, height: number): CardSlopes {
  const { grid } = slopes;
  const n = width * height;
  const out = {
    right: new Float64Array(n),
    down: new Float64Array(n),
    weight: new Float64Array(n),
  };
  const [a, b, c, d] = turnOf(map);
  const [ra, rb] = [a / Math.hypot(a, b), b / Math.hypot(a, b)];
  const [dc, dd] = [c / Math.hypot(c, d), d / Math.hypot(c, d)];
  // The picture's axes on the card need not stand square: the slopes along both are turned back.
  const area = ra * dd - rb * dc;
  for (let y = 0, i = 0; y < height; y++)
    for (let x = 0; x < width; x++, i++) {
      const [px, py] = pixelOf(map, [(x + 0.5) * STEP_MM, (y + 0.5) * STEP_MM]);
      const u = (px + 0.5 - grid.left) / grid.block - 0.5;
      const v = (py + 0.5 - grid.top) / grid.block - 0.5;
      if (!(u >= 0 && v >= 0 && u < grid.width - 1 && v < grid.height - 1)) continue;
      const at = Math.floor(v) * grid.width + Math.floor(u);
      const [fu, fv] = [u % 1, v % 1];
      const read = (values: Float32Array) =>
        (1 - fv) * ((1 - fu) * (values[at] as number) + fu * (values[at + 1] as number)) +
        fv *
          ((1 - fu) * (values[at + grid.width] as number) +
            fu * (values[at + grid.width + 1] as number));
      const [right, down] = [read(slopes.right), read(slopes.down)];
      out.right[i] = (right * dd - down * rb) / area;
      out.down[i] = (down * ra - right * dc) / area;
      const least = Math.min(
        ...[at, at + 1, at + grid.width, at + grid.width + 1].map(
          (k) => slopes.weight[k] as number,
        ),
      );
      out.weight[i] = least > 0 ? read(slopes.weight) : 0;
    }
  return out;
}

/**
 * Takes what is broad for the undisturbed surface, and takes it off: the mean over squares of the
 * heights that stand out of it by less than three times the usual, twice.
 */
function settle(depth: Float32Array, weight: Float64Array, width: number): void {
  const height = depth.length / width;
  const mean = (values: Float32Array) => boxMeanOf({ width, height, values }, BROAD).values;
  const known = Float32Array.from(weight, (value) => (value > 0 ? 1 : 0));
  let counted = known;
  for (let round = 0; round < 3; round++) {
    const share = mean(counted);
    const level = mean(depth.map((value, i) => value * (counted[i] as number)));
    const off = depth.map((value, i) => value - (level[i] as number) / ((share[i] as number) || 1));
    if (round === 2) depth.set(off.map((value, i) => value * (known[i] as number)));
    const most = 4.4 * usualOf(off.filter((_, i) => known[i] === 1));
    counted = known.map((value, i) => (Math.abs(off[i] as number) < most ? value : 0));
  }
}

/** The median size. */
function usualOf(values: Float32Array): number {
  const sizes = values.map(Math.abs).sort();
  return sizes[sizes.length >> 1] ?? 0;
}

/**
 * Standard errors: white noise of one in the slopes makes √(ln(side) / 2π) in the heights, all waves
 * from the broad squares down to a step together; where more than a twentieth of the card's heights
 * lies beyond twice that, all are raised, for print feigns slopes. A share of the depth itself is added for the model of light.
 */
function sdOf(depth: Float32Array, { weight }: CardSlopes, width: number): Float32Array {
  const height = depth.length / width;
  const values = Float32Array.from(weight);
  const around = boxMeanOf({ width, height, values }, AROUND).values;
  const noise = STEP_MM * Math.sqrt(Math.log(2 * BROAD + 1) / (2 * Math.PI));
  const sd = around.map((value) => noise / Math.sqrt(value));
  const inErrors = depth.map((value, i) => value / (sd[i] as number));
  const sizes = inErrors
    .filter((_, i) => (weight[i] as number) > 0)
    .map(Math.abs)
    .sort();
  const excess = Math.max(1, (sizes[Math.floor(0.95 * sizes.length)] ?? 0) / 1.96);
  return depth.map((value, i) =>
    (weight[i] as number) > 0
      ? Math.hypot(excess * (sd[i] as number), MODEL_SHARE * value)
      : Number.POSITIVE_INFINITY,
  );
}

import { cosineTransform } from './cosine-transform.ts';

/** Slopes on a grid of square steps, both sides powers of two. */
export interface SlopeField {
  readonly width: number;
  readonly height: number;
  /** Rise over one step to the right and one step down, at each node. */
  readonly right: Float64Array;
  readonly down: Float64Array;
  /** Weight of both, above 0. */
  readonly weight: Float64Array;
}

/** Share of the first residual at which the solution stands, and the most rounds. */
const SETTLED = 1e-4;
const ROUNDS = 40;

/**
 * Heights whose steps fit the slopes best by weighted least squares, their mean 0: conjugate
 * gradients, each round preconditioned by the unweighted solution through a cosine transform
 * (`frankot:1988` in the form of `ghiglia:1994`). The step between two nodes is taken to rise by the
 * mean of their slopes, with the lesser of their weights.
 */
export function integrated(field: SlopeField): Float64Array {
  const { width, height } = field;
  const n = width * height;
  const solve = unweighted(width, height);
  const steps = stepsOf(field);
  const heights = new Float64Array(n);
  const residual = divergenceOf(field, steps);
  const applied = new Float64Array(n);
  let along = solve(residual);
  let energy = dot(residual, along);
  const first = energy;
  for (let round = 0; round < ROUNDS && energy > SETTLED * SETTLED * first; round++) {
    laplacian(field, steps, along, applied);
    const reach = energy / dot(along, applied);
    for (let i = 0; i < n; i++) {
      heights[i] = (heights[i] as number) + reach * (along[i] as number);
      residual[i] = (residual[i] as number) - reach * (applied[i] as number);
    }
    const next = solve(residual);
    const now = dot(residual, next);
    for (let i = 0; i < n; i++)
      next[i] = (next[i] as number) + (now / energy) * (along[i] as number);
    along = next;
    energy = now;
  }
  return heights;
}

/** Weights of the steps to the right and down from each node; 0 at the far sides. */
interface Steps {
  readonly right: Float64Array;
  readonly down: Float64Array;
}

function stepsOf({ width, height, weight }: SlopeField): Steps {
  const right = new Float64Array(width * height);
  const down = new Float64Array(width * height);
  for (let y = 0, i = 0; y < height; y++)
    for (let x = 0; x < width; x++, i++) {
      const here = weight[i] as number;
      if (x + 1 < width) right[i] = Math.min(here, weight[i + 1] as number);
      if (y + 1 < height) down[i] = Math.min(here, weight[i + width] as number);
    }
  return { right, down };
}

function divergenceOf({ width, right, down }: SlopeField, steps: Steps): Float64Array {
  const out = new Float64Array(right.length);
  for (let i = 0; i < out.length; i++) {
    const wx = steps.right[i] as number;
    const wy = steps.down[i] as number;
    if (wx > 0) push(out, i, i + 1, (wx * ((right[i] as number) + (right[i + 1] as number))) / 2);
    if (wy > 0)
      push(out, i, i + width, (wy * ((down[i] as number) + (down[i + width] as number))) / 2);
  }
  return out;
}

function laplacian(
  { width }: SlopeField,
  steps: Steps,
  heights: Float64Array,
  out: Float64Array,
): void {
  out.fill(0);
  for (let i = 0; i < out.length; i++) {
    const wx = steps.right[i] as number;
    const wy = steps.down[i] as number;
    const here = heights[i] as number;
    if (wx > 0) push(out, i, i + 1, wx * ((heights[i + 1] as number) - here));
    if (wy > 0) push(out, i, i + width, wy * ((heights[i + width] as number) - here));
  }
}

function push(out: Float64Array, from: number, to: number, flow: number): void {
  out[from] = (out[from] as number) - flow;
  out[to] = (out[to] as number) + flow;
}

/** Solves with all weights 1; cosines are the eigenvectors of the Laplacian with free sides. */
function unweighted(width: number, height: number): (right: Float64Array) => Float64Array {
  const transform = cosineTransform(width, height);
  const gain = new Float64Array(width * height);
  for (let v = 0, i = 0; v < height; v++)
    for (let u = 0; u < width; u++, i++)
      gain[i] =
        i === 0
          ? 0
          : 1 / (4 - 2 * Math.cos((Math.PI * u) / width) - 2 * Math.cos((Math.PI * v) / height));
  return (right) => {
    const out = right.slice();
    transform.forth(out);
    for (let i = 0; i < out.length; i++) out[i] = (out[i] as number) * (gain[i] as number);
    transform.back(out);
    return out;
  };
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

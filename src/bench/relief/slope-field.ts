import type { Slopes } from './slopes.ts';

/** Slopes in blocks, each times its weight. */
export interface Field {
  readonly width: number;
  readonly height: number;
  readonly right: Float32Array;
  readonly down: Float32Array;
  readonly weight: Float32Array;
}

/** The slopes of a card, less what is wider than eight millimetres. */
export function levelledField(slopes: Slopes): Field {
  return levelled(fieldOf(slopes), Math.round(4 * slopes.grid.perMm));
}

function fieldOf({ grid, right, down, weight }: Slopes): Field {
  return {
    width: grid.width,
    height: grid.height,
    right: right.map((value, i) => value * (weight[i] as number)),
    down: down.map((value, i) => value * (weight[i] as number)),
    weight,
  };
}

/** The field less its own weighted mean over a wide square, so that a bend or a lamp's error is no dent. */
function levelled(field: Field, reach: number): Field {
  const { width, height, weight } = field;
  const around = boxed(weight, width, height, reach);
  const less = (values: Float32Array) => {
    const mean = boxed(values, width, height, reach);
    return values.map((value, i) =>
      (around[i] as number) > 0
        ? value - ((weight[i] as number) * (mean[i] as number)) / (around[i] as number)
        : 0,
    );
  };
  return { ...field, right: less(field.right), down: less(field.down) };
}

/** Sums over squares, by running sums. */
function boxed(values: Float32Array, width: number, height: number, reach: number): Float32Array {
  const rows = new Float32Array(values.length);
  for (let y = 0; y < height; y++) runningSum(values, rows, y * width, 1, width, reach);
  const out = new Float32Array(values.length);
  for (let x = 0; x < width; x++) runningSum(rows, out, x, width, height, reach);
  return out;
}

function runningSum(
  from: Float32Array,
  to: Float32Array,
  first: number,
  stride: number,
  count: number,
  reach: number,
): void {
  let sum = 0;
  for (let i = 0; i < Math.min(reach, count); i++) sum += from[first + i * stride] as number;
  for (let i = 0; i < count; i++) {
    if (i + reach < count) sum += from[first + (i + reach) * stride] as number;
    if (i - reach > 0) sum -= from[first + (i - reach - 1) * stride] as number;
    to[first + i * stride] = sum;
  }
}

/** Four blocks added to one. */
export function halved(field: Field): Field {
  const width = field.width >> 1;
  const height = field.height >> 1;
  const half = (values: Float32Array) => {
    const out = new Float32Array(width * height);
    for (let y = 0; y < height; y++)
      for (let x = 0; x < width; x++) {
        const at = 2 * y * field.width + 2 * x;
        out[y * width + x] =
          (values[at] as number) +
          (values[at + 1] as number) +
          (values[at + field.width] as number) +
          (values[at + field.width + 1] as number);
      }
    return out;
  };
  return {
    width,
    height,
    right: half(field.right),
    down: half(field.down),
    weight: half(field.weight),
  };
}

/** A filter of 2 · `reach` + 1 numbers. */
export function kernel(reach: number, of: (x: number) => number): Float32Array {
  return Float32Array.from({ length: 2 * reach + 1 }, (_, i) => of(i - reach));
}

/** Values weighed with a filter along x and one along y about each block. */
export function correlated(
  values: Float32Array,
  width: number,
  height: number,
  alongX: Float32Array,
  alongY: Float32Array,
): Float32Array {
  const reach = (alongX.length - 1) / 2;
  const rows = new Float32Array(values.length);
  for (let y = 0; y < height; y++)
    for (let i = -reach; i <= reach; i++) {
      const k = alongX[i + reach] as number;
      const first = y * width;
      const to = Math.min(width, width - i);
      for (let x = Math.max(0, -i); x < to; x++)
        rows[first + x] = (rows[first + x] as number) + k * (values[first + x + i] as number);
    }
  const out = new Float32Array(values.length);
  for (let i = -reach; i <= reach; i++) {
    const k = alongY[i + reach] as number;
    for (let y = Math.max(0, -i); y < Math.min(height, height - i); y++) {
      const first = y * width;
      const from = (y + i) * width;
      for (let x = 0; x < width; x++)
        out[first + x] = (out[first + x] as number) + k * (rows[from + x] as number);
    }
  }
  return out;
}

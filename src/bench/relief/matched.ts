import type { Slopes } from './slopes.ts';

/** How a dent of one width would show at each block. */
export interface Response {
  /** Width at half the depth, mm. */
  readonly widthMm: number;
  /** Blocks of the grid on a side of one of the response's own. */
  readonly block: number;
  readonly width: number;
  readonly height: number;
  /** Depth, mm, that a dent at this block would have. */
  readonly depth: Float32Array;
  /** Its standard error from the noise of the slopes. */
  readonly sd: Float32Array;
  /** How many times wider the responses of the whole card scatter than those errors say; 1 at least. */
  readonly excess: number;
}

/** Widths that are looked for, mm at half depth: steps of less than two lose little between them. */
export const WIDTHS_MM = [0.5, 0.9, 1.6, 2.8] as const;

interface Field {
  readonly width: number;
  readonly height: number;
  readonly right: Float32Array;
  readonly down: Float32Array;
  readonly weight: Float32Array;
}

/** Answers of matched filters (`turin:1960`) to the slopes of a Gaussian dent, weighted by the slopes' own doubt. */
export function responsesOf(slopes: Slopes): readonly Response[] {
  const full = levelled(fieldOf(slopes), Math.round(4 * slopes.grid.perMm));
  const half = halved(full);
  return WIDTHS_MM.map((widthMm) => {
    const sigma = (widthMm / 2.3548) * slopes.grid.perMm;
    return sigma > 2.5 ? respond(half, sigma / 2, widthMm, 2) : respond(full, sigma, widthMm, 1);
  }).map((response) => scaled(response, slopes.grid.perMm));
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

function halved(field: Field): Field {
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

function respond(field: Field, sigma: number, widthMm: number, block: number): Response {
  const reach = Math.ceil(3 * sigma);
  const bell = kernel(reach, (x) => Math.exp((-x * x) / (2 * sigma * sigma)));
  const slope = kernel(reach, (x) => (x / sigma ** 2) * Math.exp((-x * x) / (2 * sigma * sigma)));
  const bell2 = bell.map((value) => value * value);
  const slope2 = slope.map((value) => value * value);
  const { width, height } = field;
  const across = (values: Float32Array, alongX: Float32Array, alongY: Float32Array) =>
    correlated(values, width, height, alongX, alongY);
  const seenX = across(field.right, slope, bell);
  const seenY = across(field.down, bell, slope);
  const powerX = across(field.weight, slope2, bell2);
  const powerY = across(field.weight, bell2, slope2);
  const depth = new Float32Array(width * height);
  const sd = new Float32Array(width * height);
  // A dent is judged where at least half of it is seen.
  const least = 0;
  for (let i = 0; i < depth.length; i++) {
    const power = (powerX[i] as number) + (powerY[i] as number);
    if (power <= least || (field.weight[i] as number) === 0) continue;
    depth[i] = ((seenX[i] as number) + (seenY[i] as number)) / power;
    sd[i] = 1 / Math.sqrt(power);
  }
  return { widthMm, block, width, height, depth, sd, excess: excessOf(depth, sd) };
}

/** Depth and errors from rise a millimetre summed in blocks to millimetres. */
function scaled(response: Response, perMm: number): Response {
  const scale = response.block / perMm;
  return {
    ...response,
    depth: response.depth.map((value) => value * scale),
    sd: response.sd.map((value) => value * scale),
  };
}

function kernel(reach: number, of: (x: number) => number): Float32Array {
  return Float32Array.from({ length: 2 * reach + 1 }, (_, i) => of(i - reach));
}

function correlated(
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

/** Spread of the responses over the card in their own errors, by the median of their size. */
function excessOf(depth: Float32Array, sd: Float32Array): number {
  const sizes: number[] = [];
  for (let i = 0; i < depth.length; i += 5)
    if ((sd[i] as number) > 0) sizes.push(Math.abs(depth[i] as number) / (sd[i] as number));
  const sorted = Float64Array.from(sizes).sort();
  return Math.max(1, (sorted[sorted.length >> 1] ?? 0) / 0.6745);
}

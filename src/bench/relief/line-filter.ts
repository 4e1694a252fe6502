import { correlated, type Field, kernel } from './slope-field.ts';

/** How a long ridge or groove would show at each block of a field of slopes, at its best direction. */
export interface LineAnswer {
  readonly width: number;
  readonly height: number;
  /** Height in units of what the card usually shows, above 0 for a ridge. */
  readonly z: Float32Array;
  /** The line's direction: `index · 180 / DIRECTIONS` degrees from x towards y. */
  readonly direction: Uint8Array;
}

/** Directions that are tried, evenly spread over half a turn. */
export const DIRECTIONS = 20;
/** Median of the greatest of all directions' sizes on white noise, whose own would be 0.67. */
const USUAL = 1.9;

/**
 * Answers of a matched filter to a straight ridge with a Gaussian section. The filter across any
 * direction follows from three (`freeman:1991`: x·g, y·g of the slopes along x and y), and is
 * summed along pieces of a line.
 *
 * @param sigma of the section, in blocks
 * @param half half the length of a piece, in blocks
 */
export function lineAnswerOf(field: Field, sigma: number, half: number): LineAnswer {
  const { width, height, weight } = field;
  const { xx, xy, yy, around } = filtered(field, sigma);
  const z = new Float32Array(width * height);
  const direction = new Uint8Array(width * height);
  const steered = new Float32Array(xx.length);
  const sums = [0, 1].map(() => new Float32Array(z.length)) as [Float32Array, Float32Array];
  for (let k = 0; k < DIRECTIONS; k++) {
    const angle = (k * Math.PI) / DIRECTIONS;
    const [nx, ny] = [-Math.sin(angle), Math.cos(angle)];
    const [a, b, c] = [nx * nx, nx * ny, ny * ny];
    for (let i = 0; i < steered.length; i++)
      steered[i] = a * (xx[i] as number) + b * (xy[i] as number) + c * (yy[i] as number);
    sumAlong(steered, sums[0], width, angle, half);
    sumAlong(around, sums[1], width, angle, half);
    for (let i = 0; i < z.length; i++) {
      const power = sums[1][i] as number;
      if (power <= 0 || (weight[i] as number) === 0) continue;
      const value = -(sums[0][i] as number) / Math.sqrt(power);
      if (Math.abs(value) <= Math.abs(z[i] as number)) continue;
      z[i] = value;
      direction[i] = k;
    }
  }
  const usual = usualOf(z);
  return { width, height, z: z.map((value) => value / usual), direction };
}

function filtered(field: Field, sigma: number) {
  const { width, height } = field;
  const reach = Math.ceil(3 * sigma);
  const bell = kernel(reach, (x) => Math.exp((-x * x) / (2 * sigma * sigma)));
  const pull = kernel(reach, (x) => (x / sigma ** 2) * Math.exp((-x * x) / (2 * sigma * sigma)));
  const by = (values: Float32Array, x: Float32Array, y: Float32Array) =>
    correlated(values, width, height, x, y);
  const xy = by(field.right, bell, pull);
  const yx = by(field.down, pull, bell);
  return {
    xx: by(field.right, pull, bell),
    xy: xy.map((value, i) => value + (yx[i] as number)),
    yy: by(field.down, bell, pull),
    around: by(field.weight, bell, bell),
  };
}

/**
 * Sums over pieces of parallel digital lines, walked along the axis that they lie nearer to, which
 * together pass each block once; 0 where a piece would reach beyond the field.
 */
function sumAlong(
  values: Float32Array,
  out: Float32Array,
  width: number,
  angle: number,
  half: number,
): void {
  const height = values.length / width;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const flat = Math.abs(cos) >= Math.abs(sin);
  const [count, lanes, step, over] = flat ? [width, height, 1, width] : [height, width, width, 1];
  const rise = flat ? sin / cos : cos / sin;
  const reach = Math.max(1, Math.round(half * Math.max(Math.abs(cos), Math.abs(sin))));
  const shifts = Int32Array.from({ length: count }, (_, t) => Math.round(rise * t));
  const last = shifts[count - 1] as number;
  const sums = new Float64Array(count + 1);
  out.fill(0);
  for (let lane = Math.min(0, -last); lane < lanes + Math.max(0, -last); lane++) {
    let from = 0;
    let to = count;
    const outside = (t: number) => {
      const at = lane + (shifts[t] as number);
      return at < 0 || at >= lanes;
    };
    while (from < to && outside(from)) from++;
    while (to > from && outside(to - 1)) to--;
    sums[from] = 0;
    for (let t = from; t < to; t++)
      sums[t + 1] =
        (sums[t] as number) + (values[t * step + (lane + (shifts[t] as number)) * over] as number);
    for (let t = from + reach; t < to - reach; t++)
      out[t * step + (lane + (shifts[t] as number)) * over] =
        (sums[t + reach + 1] as number) - (sums[t - reach] as number);
  }
}

function usualOf(z: Float32Array): number {
  const sizes = z
    .filter((value, i) => value !== 0 && i % 7 === 0)
    .map(Math.abs)
    .sort();
  return Math.max((sizes[sizes.length >> 1] ?? 0) / USUAL, 1e-9);
}

import { placed } from '../../maths/index.ts';
import { correlated, type Field, halved, kernel, levelledField } from './slope-field.ts';
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

/** Answers of matched filters (`turin:1960`) to the slopes of a Gaussian dent, weighted by the slopes' own doubt. */
export function responsesOf(slopes: Slopes): readonly Response[] {
  const full = levelledField(slopes);
  const half = halved(full);
  return WIDTHS_MM.map((widthMm) => {
    const sigma = (widthMm / 2.3548) * slopes.grid.perMm;
    return sigma > 2.5 ? respond(half, sigma / 2, widthMm, 2) : respond(full, sigma, widthMm, 1);
  }).map((response) => scaled(response, slopes.grid.perMm));
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

/** Spread of the responses over the card in their own errors, by the median of their size. */
function excessOf(depth: Float32Array, sd: Float32Array): number {
  const sizes: number[] = [];
  for (let i = 0; i < depth.length; i += 5)
    if ((sd[i] as number) > 0) sizes.push(Math.abs(depth[i] as number) / (sd[i] as number));
  if (sizes.length === 0) return 1;
  return Math.max(1, placed(Float64Array.from(sizes), sizes.length >> 1) / 0.6745);
}

import { type CardMap, pixelOf } from '../geometry/card-map.ts';
import { lightTable } from '../light/srgb.ts';
import type { Picture } from '../picture.ts';
import type { Ray } from './round-outline.ts';

/** The border of a card unrolled: a column for each ray, a row for each depth, in linear light. */
export interface BorderStrip {
  readonly rays: readonly Ray[];
  readonly rows: number;
  /** Depth of the first row below the ideal outline, negative outside the card, mm. */
  readonly firstMm: number;
  readonly stepMm: number;
  /** Light of each channel, 0 to 1: `values[channel][column * rows + row]`; NaN beyond the picture. */
  readonly values: readonly [Float32Array, Float32Array, Float32Array];
}

/**
 * Samples a picture along rays, from `fromMm` (negative: outside the card) to `toMm`, every
 * `stepMm`. A ray is taken as straight and evenly spaced in the picture between its ends.
 */
export function borderStripOf(
  picture: Picture,
  map: CardMap,
  rays: readonly Ray[],
  { fromMm, toMm, stepMm }: { fromMm: number; toMm: number; stepMm: number },
): BorderStrip {
  const rows = Math.round((toMm - fromMm) / stepMm) + 1;
  const values = [0, 1, 2].map(() => new Float32Array(rays.length * rows));
  const strip = { rays, rows, firstMm: fromMm, stepMm, values } as unknown as BorderStrip;
  rays.forEach((ray, column) => {
    const at = (depth: number) => pixelOf(map, [ray.x + depth * ray.inX, ray.y + depth * ray.inY]);
    const [x0, y0] = at(fromMm);
    const [x1, y1] = at(fromMm + (rows - 1) * stepMm);
    sampleLine(picture, strip, column, [x0, y0, (x1 - x0) / (rows - 1), (y1 - y0) / (rows - 1)]);
  });
  return strip;
}

function sampleLine(
  picture: Picture,
  strip: BorderStrip,
  column: number,
  [x0, y0, dx, dy]: readonly [number, number, number, number],
): void {
  const { width, height, samples } = picture;
  const table = lightTable(picture);
  const [red, green, blue] = strip.values;
  for (let row = 0, to = column * strip.rows; row < strip.rows; row++, to++) {
    const x = x0 + row * dx;
    const y = y0 + row * dy;
    const left = Math.floor(x);
    const top = Math.floor(y);
    if (left < 0 || top < 0 || left + 1 >= width || top + 1 >= height) {
      red[to] = green[to] = blue[to] = Number.NaN;
      continue;
    }
    const u = x - left;
    const v = y - top;
    const a = (1 - u) * (1 - v);
    const b = u * (1 - v);
    const c = (1 - u) * v;
    const d = u * v;
    const i = 3 * (top * width + left);
    const j = i + 3 * width;
    red[to] = a * light(i) + b * light(i + 3) + c * light(j) + d * light(j + 3);
    green[to] = a * light(i + 1) + b * light(i + 4) + c * light(j + 1) + d * light(j + 4);
    blue[to] = a * light(i + 2) + b * light(i + 5) + c * light(j + 2) + d * light(j + 5);
  }
  function light(index: number): number {
    return table[samples[index] as number] as number;
  }
}

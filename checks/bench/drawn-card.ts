import type { CardMap, Picture, PointMm } from '../../src/bench/index.ts';
import { pictureOf, pixelOf } from '../../src/bench/index.ts';
import { chance } from '../../src/maths/index.ts';
import { coverageOf } from './coverage.ts';

/** Red, green and blue in linear light, 0 to 1. */
export type Light = readonly [number, number, number];

/** One flat colour on a card, its outline in card millimetres. */
export interface Patch {
  readonly outline: readonly PointMm[];
  readonly light: Light;
}

/** An upright rectangle of one colour, from corner to corner in card millimetres. */
export function box(x0: number, y0: number, x1: number, y1: number, light: Light): Patch {
  const outline: readonly PointMm[] = [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
  return { outline, light };
}

/** A card and its picture, every edge of it known exactly. */
export interface Drawing {
  readonly map: CardMap;
  readonly ground: Light;
  /** Painted one over the other, the card itself first. */
  readonly patches: readonly Patch[];
  /** Standard deviation in pixels of a Gaussian blur, 0 for none. */
  readonly blur?: number;
  /** Share of the light that reaches each pixel, where something throws a shadow. */
  readonly shade?: (x: number, y: number) => number;
  /** Share by which edges are raised over a blur of 1.5 pixels, as telephones do. */
  readonly sharpening?: number;
  /** Standard deviation of the noise of each sample, in light. */
  readonly noise?: number;
  readonly seed?: number;
}

/** The picture of a drawing, 16 bits in the sRGB curve; edges by exact area coverage. */
export function drawn(drawing: Drawing): Picture {
  const { width, height } = drawing.map.lens;
  const channels = [0, 1, 2].map(() => new Float64Array(width * height));
  for (const [i, channel] of channels.entries()) channel.fill(drawing.ground[i] as number);
  for (const { outline, light } of drawing.patches) {
    const covered = coverageOf(inPicture(drawing.map, outline), width, height);
    for (const [i, channel] of channels.entries())
      for (let p = 0; p < covered.length; p++)
        channel[p] =
          (channel[p] as number) +
          (covered[p] as number) * ((light[i] as number) - (channel[p] as number));
  }
  const seen = channels.map((channel) => throughLens(channel, width, height, drawing));
  return coded(seen, width, height, drawing);
}

/** A polygon of the card in the picture, its edges cut short enough to follow the lens's bow. */
function inPicture(map: CardMap, outline: readonly PointMm[]) {
  return outline.flatMap(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length] as PointMm;
    const pieces = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay)));
    return Array.from({ length: pieces }, (_, k) =>
      pixelOf(map, [ax + ((bx - ax) * k) / pieces, ay + ((by - ay) * k) / pieces]),
    );
  });
}

function throughLens(
  channel: Float64Array,
  width: number,
  height: number,
  { blur = 0, sharpening = 0, shade }: Drawing,
): Float64Array {
  const lit = shade
    ? channel.map((light, p) => light * shade(p % width, Math.floor(p / width)))
    : channel;
  const soft = blur > 0 ? blurred(lit, width, height, blur) : lit;
  if (sharpening === 0) return soft;
  const softer = blurred(soft, width, height, 1.5);
  return soft.map((value, i) => value + sharpening * (value - (softer[i] as number)));
}

function blurred(values: Float64Array, width: number, height: number, sigma: number) {
  const reach = Math.ceil(4 * sigma);
  const raw = Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)),
  );
  const total = raw.reduce((sum, weight) => sum + weight, 0);
  const pass = (from: Float64Array, stride: number, size: number) =>
    from.map((_, i) => {
      const at = Math.floor(i / stride) % size;
      let sum = 0;
      for (let k = -reach; k <= reach; k++) {
        const to = Math.min(size - 1, Math.max(0, at + k));
        sum += (raw[k + reach] as number) * (from[i + (to - at) * stride] as number);
      }
      return sum / total;
    });
  return pass(pass(values, 1, width), width, height);
}

function coded(
  channels: readonly Float64Array[],
  width: number,
  height: number,
  { noise = 0, seed = 1 }: Drawing,
): Picture {
  const luck = chance(seed);
  const samples = new Uint16Array(width * height * 3);
  for (let p = 0, i = 0; p < width * height; p++)
    for (const channel of channels) {
      const light = (channel[p] as number) + (noise > 0 ? noise * luck.normal() : 0);
      samples[i++] = Math.round(65_535 * curve(Math.min(1, Math.max(0, light))));
    }
  return pictureOf(width, height, samples);
}

/** The sRGB curve, IEC 61966-2-1, written down here a second time on purpose. */
function curve(light: number): number {
  return light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;
}

import { lightTable } from '../light/srgb.ts';
import type { Picture } from '../picture.ts';
import type { Three } from './spaces.ts';

/** What the picture shows of a patch. */
export interface Reading {
  /** Mean light of red, green and blue, 0 to 1. */
  readonly light: Three;
  /** Standard error of each mean: noise of the pixels and the steps of the samples. */
  readonly sd: Three;
  /** Place in the picture: centre 0, 0, half the wider side 1, y down. */
  readonly at: readonly [x: number, y: number];
  /** Share of samples at the top of their range, the worst channel. */
  readonly blown: number;
  /** Spread of the patch's quarters, as a share of its light, beyond what noise explains. */
  readonly uneven: number;
}

/** Steps of an 8-bit sample that coding (rounding, JPEG) may move a mean by. Judgement, no source. */
const CODING = 0.3;

/** Neighbouring pixels share their noise: so many count as one. Judgement, no source. */
const SHARED = 8;

/**
 * Reads the square about a centre, pixels, nine tenths of its side.
 * @returns null where it does not lie wholly in the picture.
 */
export function readPatch(
  picture: Picture,
  [cx, cy]: readonly [number, number],
  size: number,
): Reading | null {
  const half = size * 0.45;
  const [x0, x1] = [Math.ceil(cx - half), Math.floor(cx + half)];
  const [y0, y1] = [Math.ceil(cy - half), Math.floor(cy + half)];
  const { width, height } = picture;
  if (x0 < 0 || y0 < 0 || x1 >= width || y1 >= height || x1 <= x0 || y1 <= y0) return null;
  const table = lightTable(picture);
  const channels = [0, 1, 2].map((c) => readChannel(picture, table, c, [x0, y0, x1, y1]));
  return {
    light: channels.map(({ mean }) => mean) as unknown as Three,
    sd: channels.map(({ sd }) => sd) as unknown as Three,
    at: placeIn(picture, [cx, cy]),
    blown: Math.max(...channels.map(({ blown }) => blown)),
    uneven: Math.max(...channels.map(({ uneven }) => uneven)),
  };
}

/** A mean of light that was taken about a place elsewhere, over so many pixels that coding alone leaves a doubt. */
export function readingOf(
  light: Three,
  picture: Pick<Picture, 'width' | 'height'>,
  centrePx: readonly [number, number],
): Reading {
  const sd = light.map((mean) => CODING * stepAt(mean)) as unknown as Three;
  return { light, sd, at: placeIn(picture, centrePx), blown: 0, uneven: 0 };
}

function placeIn(
  { width, height }: Pick<Picture, 'width' | 'height'>,
  [x, y]: readonly [number, number],
): Reading['at'] {
  const unit = Math.max(width, height) / 2;
  return [(x - (width - 1) / 2) / unit, (y - (height - 1) / 2) / unit];
}

function readChannel(
  { samples, width }: Picture,
  table: Float32Array,
  channel: number,
  [x0, y0, x1, y1]: readonly [number, number, number, number],
) {
  const top = table.length - 1;
  const quarters = [0, 0, 0, 0];
  const counts = [0, 0, 0, 0];
  let [sum, squares, blown] = [0, 0, 0];
  for (let y = y0; y <= y1; y++)
    for (let x = x0; x <= x1; x++) {
      const sample = samples[(y * width + x) * 3 + channel] as number;
      const light = table[sample] as number;
      const quarter = (2 * y > y0 + y1 ? 2 : 0) + (2 * x > x0 + x1 ? 1 : 0);
      quarters[quarter] = (quarters[quarter] as number) + light;
      counts[quarter] = (counts[quarter] as number) + 1;
      sum += light;
      squares += light * light;
      if (sample >= top * 0.996) blown += 1;
    }
  const count = (x1 - x0 + 1) * (y1 - y0 + 1);
  const mean = sum / count;
  const variance = Math.max(0, squares / count - mean * mean);
  const step = CODING * stepAt(mean);
  const means = quarters.map((total, i) => total / Math.max(1, counts[i] as number));
  return {
    mean,
    sd: Math.hypot(Math.sqrt((variance * SHARED) / count), step),
    blown: blown / count,
    uneven: (Math.max(...means) - Math.min(...means)) / (mean + 0.01),
  };
}

/** Light of one step of an 8-bit sample at a light: the slope of the sRGB curve (`iec:61966-2-1`). */
function stepAt(light: number): number {
  const slope = light <= 0.0031308 ? 12.92 : (1.055 / 2.4) * light ** (1 / 2.4 - 1);
  return 1 / (255 * slope);
}

import { quantileOf } from '../../maths/index.ts';
import { type CardMap, pixelOf } from '../geometry/card-map.ts';
import type { PointPx } from '../geometry/points.ts';
import type { Picture } from '../picture.ts';

/** How clearly a picture shows a face. */
export interface Clarity {
  /** Width over which the sharpest edges of the print change, mm; null where there are too few edges. */
  readonly blurMm: number | null;
  /** Share of the face whose light is beyond what the picture holds, 0 to 1. */
  readonly blownOut: number;
}

const LINES = 48;
/** Change of code over an edge, of 255, that noise does not make; fewer edges than that tell nothing. */
const [LEAST_RANGE, LEAST_EDGES] = [40, 60];
/** Share of the edges that are taken for sharp in print: the rest are soft as drawn. Judgement, no source. */
const SHARPEST = 0.2;
const BLOWN = 253;

/**
 * Blur and blown-out light of a face, along lines across it and down. An edge spread by a Gaussian of
 * σ changes over √(2π) σ at its steepest slope. Soft art without one line looks blurred.
 */
export function clarityOf(picture: Picture, map: CardMap): Clarity {
  const [w, h] = map.sizeMm;
  const widths: number[] = [];
  let [blown, all] = [0, 0];
  for (let k = 0; k < 2 * LINES; k++) {
    const at = 0.05 + (0.9 * ((k >> 1) + 0.5)) / LINES;
    const across = k % 2 === 0;
    const line = lineOf(
      picture,
      pixelOf(map, across ? [1, at * h] : [at * w, 1]),
      pixelOf(map, across ? [w - 1, at * h] : [at * w, h - 1]),
    );
    const mmPerPx = ((across ? w : h) - 2) / line.means.length;
    for (const px of edgesOf(line.means)) widths.push(px * mmPerPx);
    blown += line.blown;
    all += line.means.length;
  }
  return {
    blurMm: widths.length < LEAST_EDGES ? null : quantileOf(widths, SHARPEST),
    blownOut: all > 0 ? blown / all : 0,
  };
}

/** Mean code of each pixel between two of them, and how many are blown out. */
function lineOf({ width, height, samples }: Picture, from: PointPx, to: PointPx) {
  const count = Math.floor(Math.hypot(to[0] - from[0], to[1] - from[1]));
  const means = new Float32Array(count);
  let blown = 0;
  for (let i = 0; i < count; i++) {
    const x = Math.round(from[0] + ((to[0] - from[0]) * i) / count);
    const y = Math.round(from[1] + ((to[1] - from[1]) * i) / count);
    if (x < 0 || y < 0 || x >= width || y >= height) continue;
    const j = 3 * (y * width + x);
    const [r, g, b] = [samples[j], samples[j + 1], samples[j + 2]] as [number, number, number];
    means[i] = (r + g + b) / 3;
    if (Math.min(r, g, b) >= BLOWN) blown++;
  }
  return { means, blown };
}

/** Widths in pixels of the edges along a line: each run that rises or falls, its range over its steepest step. */
function edgesOf(line: Float32Array): readonly number[] {
  const widths: number[] = [];
  let [start, steepest] = [0, 0];
  for (let i = 1; i <= line.length; i++) {
    const step = i < line.length ? (line[i] as number) - (line[i - 1] as number) : 0;
    const goesOn = step * steepest > 0 || (steepest === 0 && step !== 0);
    if (!goesOn) {
      const range = Math.abs((line[i - 1] as number) - (line[start] as number));
      if (range >= LEAST_RANGE) widths.push(range / Math.abs(steepest));
      start = i - 1;
      steepest = 0;
    }
    if (Math.abs(step) > Math.abs(steepest)) steepest = step;
  }
  return widths;
}

/** Widths from which on a picture is said to be blurred, mm, and shares from which on blown out. Judgement, no source. */
const [MOST_BLUR_MM, MOST_BLOWN] = [0.45, 0.1];

/** The width under which a blurred picture shows no mark, mm; 0 for one that is sharp enough. */
export function leastShown({ blurMm }: Clarity): number {
  return blurMm !== null && blurMm > MOST_BLUR_MM ? blurMm : 0;
}

/** Share by which a pale place is the card's own, and not light that left no detail. Judgement, no source. */
export function notLight({ blownOut }: Clarity): number {
  return blownOut > MOST_BLOWN ? 1 - blownOut : 1;
}

/** What is wrong with a picture whose outline was found all the same, and what to photograph again. */
export function clarityWords(clarity: Clarity): readonly string[] {
  const [least, blownOut] = [leastShown(clarity), clarity.blownOut];
  return [
    ...(least > 0
      ? [
          `The picture is blurred: marks under ${least.toFixed(1)} mm cannot be seen. Photograph it again with the camera held still and focused on the card.`,
        ]
      : []),
    ...(blownOut > MOST_BLOWN
      ? [
          `${Math.round(100 * blownOut)} % of the face is blown out: no mark can be seen there. Photograph it again in less light, without flash or reflections.`,
        ]
      : []),
  ];
}

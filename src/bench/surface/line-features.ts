import { quantileOf } from '../../maths/index.ts';
import type { Plane } from '../picture.ts';
import { type LineChain, lengthOf } from './line-chains.ts';
import type { LineResponse } from './line-response.ts';

/** What tells a scratch from a trace of the print or of the picture's blocks, for one traced line. */
export interface LineFeatures {
  readonly lengthPx: number;
  /** Mean strength over the median strength of the picture. */
  readonly strength: number;
  /** Change of the print across the line, from pixel to pixel, as a share of its light; the median. */
  readonly printed: number;
  /** Mean strength beside the line, 6 to 12 pixels away, over the median of the picture. */
  readonly around: number;
  /** Sine of the angle to the nearer axis: frames, panels and the blocks of JPEG lie along axes. */
  readonly askew: number;
  /** Distance from end to end over the length. */
  readonly straight: number;
}

/**
 * Features of a traced line.
 *
 * @param expected light of the print without the line, as `relitOf` gives it
 * @param median strength of the picture
 */
export function lineFeaturesOf(
  { pixels, cells, strength }: LineChain,
  expected: Plane,
  response: LineResponse,
  median: number,
): LineFeatures {
  const lengthPx = lengthOf(pixels);
  const [first, last] = [pixels[0], pixels.at(-1)] as const;
  const [dx, dy] = [(last?.[0] ?? 0) - (first?.[0] ?? 0), (last?.[1] ?? 0) - (first?.[1] ?? 0)];
  const crow = Math.max(Math.hypot(dx, dy), 1e-6);
  const way = [dx / crow, dy / crow] as const;
  return {
    lengthPx,
    strength: strength / median,
    printed: quantileOf(
      cells.map((cell) => changeAcross(expected, cell, way)),
      0.5,
    ),
    around: besideOf(response, cells, way) / median,
    askew: Math.min(Math.abs(way[0]), Math.abs(way[1])),
    straight: crow / Math.max(lengthPx, 1e-6),
  };
}

type Way = readonly [x: number, y: number];

function changeAcross({ width, values }: Plane, cell: number, [x, y]: Way): number {
  const across = (values[cell + 1] as number) - (values[cell - 1] as number);
  const down = (values[cell + width] as number) - (values[cell - width] as number);
  return Math.abs(across * y - down * x) / 2 / (values[cell] as number);
}

function besideOf(
  { width, strength }: LineResponse,
  cells: readonly number[],
  [x, y]: Way,
): number {
  const steps = [-12, -9, -6, 6, 9, 12].map((u) => Math.round(-y * u) + width * Math.round(x * u));
  const seen = cells.flatMap((cell) => steps.map((step) => strength[cell + step] ?? 0));
  return seen.reduce((sum, value) => sum + Math.abs(value), 0) / Math.max(1, seen.length);
}

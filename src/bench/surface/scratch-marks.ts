import { quantileOf } from '../../maths/index.ts';
import type { Defect } from '../defects.ts';
import type { CardMap } from '../geometry/card-map.ts';
import type { PointMm } from '../geometry/points.ts';
import type { Picture, Plane } from '../picture.ts';
import { boxOf } from '../wear/place-extent.ts';
import type { LineResponse } from './line-response.ts';

/** A picture and where the card lies in it. */
export interface Placed {
  readonly picture: Picture;
  readonly map: CardMap;
}

/** Scratches that a low lamp showed, and what it could not show. */
export interface Scratches {
  readonly defects: readonly Defect[];
  /** Length of the shortest scratch with flanks a tenth apart in light that would be named, mm. */
  readonly detectionLimitMm: number | null;
  /**
   * Directions in which a scratch stays hidden, as it runs towards the lamp: degrees
   * counter-clockwise from x, modulo 180; null where it is not known where the lamp stood.
   */
  readonly hiddenDeg: readonly [from: number, to: number] | null;
}

/** Pixels of the grid to the millimetre, along each piece of a line, and along the shortest line. */
export const PX_PER_MM = 10;
export const PIECE_PX = 17;
export const SHORTEST_PX = 15;
/** Card beside the cut edge that is left to the wear of edges, mm. */
export const RIM_MM = 0.8;
const NEAR_LAMP_DEG = 8;
/** A groove and the burr beside it, as they are usually seen, mm. Judgement, no source. */
const SEEN_WIDTH_MM = 0.15;

/** The median strength, and the strength over which a line may be more than chance and print. */
export function levelsOf({ width, strength }: LineResponse): { median: number; high: number } {
  const sizes: number[] = [];
  for (let i = 4 * width; i < strength.length; i += 37) sizes.push(Math.abs(strength[i] as number));
  const median = Math.max(quantileOf(sizes, 0.5), 1e-6);
  return { median, high: Math.max(2.6 * median, 1.4 * quantileOf(sizes, 0.98)) };
}

/** Mean depth of points below the nearest side, mm. */
export function depthOf(points: readonly PointMm[], { sizeMm: [width, height] }: CardMap): number {
  const depths = points.map(([x, y]) => Math.min(x, y, width - x, height - y));
  return depths.reduce((sum, depth) => sum + depth, 0) / depths.length;
}

/** A traced line as a mark, with the log odds that it is a scratch. */
export function scratchOf(points: readonly PointMm[], lengthPx: number, logOdds: number): Defect {
  const lengthMm = lengthPx / PX_PER_MM;
  const [x0, y0, x1, y1] = boxOf(points);
  return {
    kind: 'scratch',
    centreMm: points[points.length >> 1] as PointMm,
    boxMm: [x0, y0, x1, y1],
    areaMm2: lengthMm * SEEN_WIDTH_MM,
    lengthMm,
    polygonMm: points,
    p: 1 / (1 + Math.exp(-logOdds)),
    sd: { centreMm: 0.1, areaMm2: 0.5 * lengthMm * SEEN_WIDTH_MM, lengthMm: 0.6 },
    seenFrom: 'raking',
  };
}

/** Response of a pixel of a scratch whose flanks are one apart in light and 0.14 mm in place. */
const FLANK_RESPONSE = 0.25;
/**
 * Strength over the median of a scratch with flanks a tenth apart in light, on plain print.
 *
 * @param share of the places that are plain: 1, or a half where the print is still in `left`
 */
export function strengthOfTenth(left: Plane, median: number, share: 1 | 0.5): number {
  const sizes = left.values.filter((_, i) => i % 37 === 0).map(Math.abs);
  // A half and a quarter of a normal distribution lie within these shares of its standard deviation.
  const sd = quantileOf(sizes, share / 2) / (share === 1 ? 0.6745 : 0.3186);
  return (PIECE_PX * FLANK_RESPONSE * 0.1) / Math.max(sd, 1e-4) / median;
}

/** Directions within a few degrees of the lamp's own, modulo 180. */
export function hiddenOf(azimuthDeg: number): readonly [number, number] {
  const middle = ((azimuthDeg % 180) + 180) % 180;
  return [middle - NEAR_LAMP_DEG, middle + NEAR_LAMP_DEG];
}

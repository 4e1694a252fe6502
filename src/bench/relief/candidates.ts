import { type CardMap, cardPointOf } from '../geometry/card-map.ts';
import type { PointMm } from '../geometry/points.ts';
import { centreOf, type Grid } from './grid.ts';
import type { Response } from './matched.ts';

/** A place that may be a dent. */
export interface Candidate {
  readonly centre: PointMm;
  readonly widthMm: number;
  readonly depthMm: number;
  /** Depth in standard errors. */
  readonly z: number;
}

/** Standard errors from which a place is looked at closely; chance alone gives less than one a card. */
const LOOK_AT = 6;
/** Relief of print itself, one standard deviation of depth, mm (Judgement, no source). */
export const PRINT_MM = 0.0012;
/** Places looked at closely, at most. */
const MOST = 16;

/** The strongest peaks of the responses, none within another's width. */
export function candidatesOf(
  map: CardMap,
  grid: Grid,
  responses: readonly Response[],
): readonly Candidate[] {
  const peaks = responses
    .flatMap((response) => peaksOf(map, grid, response))
    .sort((a, b) => b.z - a.z);
  const kept: Candidate[] = [];
  for (const peak of peaks) {
    if (kept.length === MOST) break;
    const near = kept.some(
      ({ centre, widthMm }) =>
        Math.hypot(centre[0] - peak.centre[0], centre[1] - peak.centre[1]) <
        Math.max(1.1 * widthMm, peak.widthMm),
    );
    if (!near) kept.push(peak);
  }
  return kept;
}

function peaksOf(map: CardMap, grid: Grid, response: Response): readonly Candidate[] {
  const { width, height, depth, sd, excess, block, widthMm } = response;
  const peaks: Candidate[] = [];
  const z = (at: number) =>
    (sd[at] as number) > 0
      ? (depth[at] as number) / Math.hypot(excess * (sd[at] as number), PRINT_MM)
      : 0;
  for (let y = 1; y < height - 1; y++)
    for (let x = 1; x < width - 1; x++) {
      const at = y * width + x;
      const here = z(at);
      if (here < LOOK_AT) continue;
      if (!isPeak(z, at, width, here)) continue;
      const off = (block - 1) / 2;
      const centre = cardPointOf(map, centreOf(grid, x * block + off, y * block + off));
      peaks.push({ centre, widthMm, depthMm: depth[at] as number, z: here });
    }
  return peaks;
}

function isPeak(z: (at: number) => number, at: number, width: number, here: number): boolean {
  for (const row of [-width, 0, width])
    for (const column of [-1, 0, 1]) {
      const beside = z(at + row + column);
      if (beside > here || (beside === here && row + column < 0)) return false;
    }
  return true;
}

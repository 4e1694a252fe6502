import { type CardMap, pixelsPerMm } from '../geometry/card-map.ts';
import type { Candidate } from './candidates.ts';
import { type DentFit, dentFit } from './dent-fit.ts';
import { SHAPE, SHAPE_SIZE } from './dent-shape.ts';
import type { Lighting } from './lighting.ts';
import { type Placed, windowAt } from './window.ts';

/** Blocks across a dent's half-depth width that a fit needs; more cost time and tell no more. */
const ACROSS = 10;
/** Share of the candidate's depth at which the fit begins: from too shallow a start it may stay in a false valley. */
const BEGIN = 1.4;

/** The dent fitted to the light about a candidate. */
export function fittedDent(
  { centre, widthMm, depthMm }: Candidate,
  pictures: readonly Placed[],
  map: CardMap,
  lighting: Lighting,
): DentFit {
  const [width, height] = map.sizeMm;
  const start = new Float64Array(SHAPE_SIZE);
  start[SHAPE.x] = centre[0] - width / 2;
  start[SHAPE.y] = centre[1] - height / 2;
  start[SHAPE.depth] = depthMm * BEGIN;
  start[SHAPE.logWidth] = Math.log(widthMm);
  start[SHAPE.logPower] = Math.log(2.3);
  const block = Math.max(1, Math.round((widthMm * pixelsPerMm(map)) / ACROSS));
  const window = windowAt(pictures, map, lighting, centre, 1.6 * widthMm + 0.35, block);
  return dentFit(window, lighting, start);
}

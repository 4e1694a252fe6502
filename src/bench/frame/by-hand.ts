import type { Corners } from '../geometry/points.ts';
import type { Outline } from '../outline/types.ts';
import type { Picture } from '../picture.ts';
import { linesThrough, mapOfOutline, measuredFrame } from './centering.ts';
import { fittedNear, withFloor } from './frame.ts';
import { pixelsPerMm } from './places.ts';
import { bySide } from './sides.ts';
import type { Frame } from './types.ts';

/** Standard error of a line set by hand, in pixels of the picture. Judgement, no source. */
const HAND_SD = 1;

/**
 * Borders, centering and turn of a frame whose corners a user set in the picture, as they stand.
 * The picture is not looked at, so that everything follows at once when the outline is moved.
 */
export function frameByHand(outline: Outline, corners: Corners): Frame {
  const map = mapOfOutline(outline);
  const lines = linesThrough(map, corners);
  const depthSd = bySide((side) => HAND_SD / pixelsPerMm(map, side, lines[side]));
  const mean = (depthSd.top + depthSd.right + depthSd.bottom + depthSd.left) / 4;
  const slopeSd = mean / Math.max(...map.sizeMm);
  return measuredFrame(outline, map, { lines, depthSd, slopeSd });
}

/** The same, each line moved to the printed edge that lies nearest to it, within 0.25 mm. */
export function frameNear(picture: Picture, outline: Outline, corners: Corners): Frame {
  const map = mapOfOutline(outline);
  const fit = fittedNear(picture, map, linesThrough(map, corners));
  return measuredFrame(outline, map, withFloor(map, fit));
}

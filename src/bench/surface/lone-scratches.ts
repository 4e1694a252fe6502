import { LUMINANCE } from '../light/srgb.ts';
import type { Plane } from '../picture.ts';
import { coloursView } from '../rectify/rectified.ts';
import { cardViewOf, viewPointOf } from '../rectify/view.ts';
import { boxMeanOf } from './box-mean.ts';
import { evenNoiseOf } from './even-noise.ts';
import { type ColourPlane, type Flanks, flanksOf } from './flanks.ts';
import { chainOf, lineChainsOf } from './line-chains.ts';
import { type LineFeatures, lineFeaturesOf } from './line-features.ts';
import { joinedCellsOf } from './line-joins.ts';
import { lineResponseOf } from './line-response.ts';
import {
  depthOf,
  hiddenOf,
  levelsOf,
  PIECE_PX,
  type Placed,
  PX_PER_MM,
  RIM_MM,
  type Scratches,
  SHORTEST_PX,
  scratchOf,
  strengthOfTenth,
} from './scratch-marks.ts';

/** A line must be longer than one that a twin under soft light stands beside. */
const LEAST_PX = 25;
/** Strength over the median from which lines are traced. */
const FIRM = 3.2;
const LEAST_LIGHT = 0.003;

/**
 * Scratches in a picture under a low lamp that has no twin under soft light. A groove makes one
 * flank lighter and the other darker by one share in all three channels, between print of one
 * colour on both sides, and crosses what is printed; a printed line is of another colour, or an
 * edge between two. Less sure than with a twin: grey lines beside lines of another grey remain.
 *
 * @param azimuthDeg where the lamp stands, counter-clockwise from x; null if not known
 */
export function loneScratchesOf(raking: Placed, azimuthDeg: number | null): Scratches {
  const { lines, strength } = loneLinesOf(raking);
  return {
    defects: lines
      .map(({ points, line, flanks }) => scratchOf(points, line.lengthPx, logOddsOf(line, flanks)))
      .filter(({ p }) => p > 0.01),
    detectionLimitMm: strength < FIRM ? null : LEAST_PX / PX_PER_MM,
    hiddenDeg: azimuthDeg === null ? null : hiddenOf(azimuthDeg),
  };
}

/** Lines of a single picture, with what tells print from scratches. */
export function loneLinesOf({ picture, map }: Placed) {
  const view = { ...cardViewOf(map.sizeMm, PX_PER_MM, 0), most: [1, 1] as const };
  const plane = { ...view, colours: coloursView(picture, map, view) };
  const { left, print } = unevenOf(plane);
  const even = evenNoiseOf(left, print);
  const response = lineResponseOf(even, PIECE_PX);
  const { median, high } = levelsOf(response);
  const level = Math.min(high, FIRM * median);
  const pieces = lineChainsOf(response, { low: 0.62 * level, high: level, least: SHORTEST_PX });
  const lines = joinedCellsOf(pieces).flatMap((cells) => {
    const chain = chainOf(response, cells);
    const points = chain.pixels.map((pixel) => viewPointOf(view, pixel));
    const line = lineFeaturesOf(chain, print, response, median);
    if (line.lengthPx < LEAST_PX || depthOf(points, map) < RIM_MM) return [];
    return [{ points, line, flanks: flanksOf(plane, chain.pixels) }];
  });
  return { lines, strength: strengthOfTenth(left, median, 0.5) };
}

/** Light without what is broader than a scratch, as a share of it, and the print without what is thin. */
function unevenOf({ width, height, colours }: ColourPlane): { left: Plane; print: Plane } {
  const [red, green, blue] = LUMINANCE;
  const light = new Float32Array(width * height);
  for (let i = 0, j = 0; i < light.length; i++, j += 3)
    light[i] =
      red * (colours[j] as number) +
      green * (colours[j + 1] as number) +
      blue * (colours[j + 2] as number) +
      LEAST_LIGHT;
  const logs = { width, height, values: light.map(Math.log) };
  const broad = boxMeanOf(logs, 4).values;
  const values = logs.values.map((value, i) => value - (broad[i] as number));
  return { left: { width, height, values }, print: boxMeanOf({ width, height, values: light }, 2) };
}

/** Lines within this sine of an axis are more often print. */
const ALONG_AXIS = 0.06;
/** Flanks less than this apart are as often faint print. */
const FAINT = 0.07;

/**
 * Logistic regression (`cox:1958`) on planted and rendered scratches and on the lines of prints;
 * the method page says on which pictures.
 */
function logOddsOf({ lengthPx, printed, around, askew }: LineFeatures, flanks: Flanks): number {
  const flank = flanks.flank + 0.01;
  return (
    1 +
    0.65 * Math.log(Math.min(lengthPx, 200) / 40) -
    13.7 * Math.sqrt(Math.min(printed, 0.5)) -
    1.8 * (Math.min(around, 3) - 1) -
    (askew < ALONG_AXIS ? 1.25 : 0) -
    0.34 * Math.log((flanks.step + 0.01) / flank) -
    0.12 * Math.log((flanks.tintStep + 0.02) / flank) -
    4.8 * Math.min(flanks.tint / flank, 1) +
    1.3 * flanks.opposite -
    3.1 * Math.max(0, Math.log(FAINT / flank))
  );
}

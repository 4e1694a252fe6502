import type { Plane } from '../picture.ts';
import { coloursView, lightView } from '../rectify/rectified.ts';
import { cardViewOf, type View, viewPointOf } from '../rectify/view.ts';
import { shiftOf } from './align.ts';
import { boxMeanOf } from './box-mean.ts';
import { evenNoiseOf } from './even-noise.ts';
import { greyAsLit } from './lamp-colour.ts';
import { chainOf, lineChainsOf } from './line-chains.ts';
import { type LineFeatures, lineFeaturesOf } from './line-features.ts';
import { joinedCellsOf } from './line-joins.ts';
import { lineResponseOf } from './line-response.ts';
import { relitOf } from './relit.ts';
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

/** Half the side of the square in which one light is taken as a line of the other, pixels. */
const REACH_PX = 14;

/**
 * Scratches in a picture under a low lamp, told from the print by a second picture of the same
 * card under soft light. A groove has one flank turned to the lamp and one away from it: a bright
 * line beside a dark one where soft light shows neither.
 *
 * @param azimuthDeg where the lamp stands, counter-clockwise from x; null if not known
 */
export function scratchesOf(raking: Placed, soft: Placed, azimuthDeg: number | null): Scratches {
  const { view, left, expected } = alignedOf(raking, soft);
  const response = lineResponseOf(evened(left, expected), PIECE_PX);
  const { median, high } = levelsOf(response);
  const pieces = lineChainsOf(response, { low: 0.62 * high, high, least: SHORTEST_PX });
  const defects = joinedCellsOf(pieces).flatMap((cells) => {
    const chain = chainOf(response, cells);
    const points = chain.pixels.map((pixel) => viewPointOf(view, pixel));
    if (depthOf(points, raking.map) < RIM_MM) return [];
    const features = lineFeaturesOf(chain, expected, response, median);
    return [scratchOf(points, features.lengthPx, logOddsOf(features))];
  });
  return {
    defects: defects.filter(({ p }) => p > 0.01),
    detectionLimitMm: limitOf(left, median),
    hiddenDeg: azimuthDeg === null ? null : hiddenOf(azimuthDeg),
  };
}

/** Both pictures on one grid of the card, the soft one moved until it fits, and what is left. */
function alignedOf(raking: Placed, soft: Placed): { view: View; left: Plane; expected: Plane } {
  const fine = Math.hypot(
    raking.map.corners[1][0] - raking.map.corners[0][0],
    raking.map.corners[1][1] - raking.map.corners[0][1],
  );
  const samples = Math.max(1, Math.floor(fine / raking.map.sizeMm[0] / (2 * PX_PER_MM)));
  const most = [samples, samples] as const;
  const view = { ...cardViewOf(raking.map.sizeMm, PX_PER_MM, 0), most };
  const low = lightView(raking.picture, raking.map, view);
  let originMm = view.originMm;
  for (let round = 0; ; round++) {
    const twin = greyAsLit(coloursView(soft.picture, soft.map, { ...view, originMm }), low);
    const relit = relitOf(low, twin, REACH_PX);
    const [x, y] = shiftOf(relit.left, relit.expected);
    if (round === 3 || Math.hypot(x, y) < 0.04) return { view, ...relit };
    originMm = [originMm[0] - x / PX_PER_MM, originMm[1] - y / PX_PER_MM];
  }
}

/** What is left, of one noise everywhere, without what is broader than a scratch. */
function evened(left: Plane, expected: Plane): Plane {
  const even = evenNoiseOf(left, expected);
  const broad = boxMeanOf(even, 4).values;
  return { ...even, values: even.values.map((value, i) => value - (broad[i] as number)) };
}

/** Lines that lie along an axis within this sine, as frames, panels and the blocks of JPEG do. */
const ALONG_AXIS = 0.06;

/**
 * Logistic regression (`cox:1958`) on planted scratches and on traces of the print in unscratched
 * pairs; the method page says on which pictures.
 */
function logOddsOf(features: LineFeatures): number {
  const { lengthPx, strength, printed, around, askew, straight } = features;
  const along = askew < ALONG_AXIS;
  return (
    scoreOf(strength, Math.min(lengthPx / PX_PER_MM, along ? 8 : 20)) -
    6.5 * Math.min(Math.sqrt(printed), 1.3) -
    4 * (around - 1) -
    (along ? 2.4 + 1.1 * Math.max(0, 5.5 - strength) : 0) -
    2.8 * Math.min(1, 10 * (1 - straight))
  );
}

/** Log odds of a line on plain print, from its strength over the median and its length in mm. */
function scoreOf(strength: number, lengthMm: number): number {
  return -1.6 + 6.75 * Math.log(Math.min(strength, 6) / 2.5) + 1.7 * Math.log(lengthMm / 4);
}

/** What print and surroundings usually take from the log odds on plain print. */
const USUAL_PRINT = 0.9;

/** Length at which a scratch with flanks a tenth apart in light has even odds; null over 40 mm. */
function limitOf(left: Plane, median: number): number | null {
  const strength = strengthOfTenth(left, median, 1);
  const lengthMm = 4 * Math.exp((USUAL_PRINT - scoreOf(strength, 4)) / 1.7);
  return lengthMm > 40 ? null : Math.max(lengthMm, SHORTEST_PX / PX_PER_MM);
}

import { type CardMap, cardMapOf, cardPointOf, pixelOf } from '../geometry/card-map.ts';
import type { Corners, PointMm, SizeMm } from '../geometry/points.ts';
import type { Outline } from '../outline/types.ts';
import { carriedCovariance, lineThrough, movesOf } from './doubt.ts';
import {
  type BySide,
  besideOf,
  bySide,
  type CardSide,
  lengthOf,
  SIDES,
  type SideLine,
  sidePoint,
} from './sides.ts';
import type { Centering, Frame } from './types.ts';

/** A frame's lines on its card and their own doubt, the outline's apart. */
export interface Lines {
  readonly lines: BySide<SideLine>;
  /** One standard error of each depth, in millimetres. */
  readonly depthSd: BySide<number>;
  readonly slopeSd: number;
}

/** Width in millimetres that a card of unknown size is given, so that lengths have a scale. */
const NOMINAL_WIDTH = 63;

/** The map of an outline; where its size is not known, of a card 63 mm wide of its aspect. */
export function mapOfOutline(outline: Outline): CardMap {
  const size: SizeMm = outline.sizeMm ?? [NOMINAL_WIDTH, NOMINAL_WIDTH / outline.aspect];
  return cardMapOf(outline.corners, size, outline.lens);
}

/** Borders, centering and turn of a frame whose lines are known, with the doubt of both. */
export function measuredFrame(outline: Outline, map: CardMap, known: Lines): Frame {
  const { lines, depthSd, slopeSd } = known;
  const covariance = carriedCovariance(movesOf(map, lines), outline.covariance);
  SIDES.forEach((side, i) => {
    covariance[i * 6] = (covariance[i * 6] as number) + depthSd[side] ** 2;
  });
  const depths = bySide((side) => lines[side].depth);
  const slope = SIDES.reduce((sum, side) => sum + lines[side].slope / 4, 0);
  const slopeVariance = (covariance[24] as number) + slopeSd ** 2;
  const sized = outline.sizeMm !== null;
  return {
    corners: cornersOf(map, lines),
    bordersMm: sized ? depths : null,
    bordersSdMm: sized ? bySide((side) => Math.sqrt(at(covariance, side, side))) : null,
    centering: centeringOf(depths, covariance),
    rotationDeg: (Math.atan(slope) * 180) / Math.PI,
    rotationSdDeg: (Math.sqrt(slopeVariance) * 180) / Math.PI,
  };
}

/** Shares of opposite borders and their standard errors, from the covariance of the four depths. */
function centeringOf(depths: BySide<number>, covariance: Float64Array): Centering {
  const share = (first: CardSide, second: CardSide) => {
    const [a, b] = [depths[first], depths[second]];
    const sum = a + b;
    const variance =
      b * b * at(covariance, first, first) -
      2 * a * b * at(covariance, first, second) +
      a * a * at(covariance, second, second);
    return {
      pair: [(100 * a) / sum, (100 * b) / sum] as const,
      sd: (100 * Math.sqrt(variance)) / sum ** 2,
    };
  };
  const [across, down] = [share('left', 'right'), share('top', 'bottom')];
  return { leftRight: across.pair, topBottom: down.pair, sd: [across.sd, down.sd] };
}

function at(covariance: Float64Array, a: CardSide, b: CardSide): number {
  return covariance[SIDES.indexOf(a) * 5 + SIDES.indexOf(b)] as number;
}

/** Where the lines beside neighbouring sides cross, in the picture. */
function cornersOf(map: CardMap, lines: BySide<SideLine>): Corners {
  const [top, right, bottom, left] = SIDES.map((side) => endsOf(side, map.sizeMm, lines[side]));
  return [
    crossing(left as Ends, top as Ends),
    crossing(top as Ends, right as Ends),
    crossing(right as Ends, bottom as Ends),
    crossing(bottom as Ends, left as Ends),
  ].map((point) => pixelOf(map, point)) as unknown as Corners;
}

type Ends = readonly [PointMm, PointMm];

function endsOf(side: CardSide, size: SizeMm, { depth, slope }: SideLine): Ends {
  const half = lengthOf(side, size) / 2;
  return [
    sidePoint(side, size, 0, depth - slope * half),
    sidePoint(side, size, 2 * half, depth + slope * half),
  ];
}

function crossing([[ax, ay], [bx, by]]: Ends, [[cx, cy], [dx, dy]]: Ends): PointMm {
  const [ux, uy, vx, vy] = [bx - ax, by - ay, dx - cx, dy - cy];
  const share = ((cx - ax) * vy - (cy - ay) * vx) / (ux * vy - uy * vx);
  return [ax + share * ux, ay + share * uy];
}

/** The lines of a frame whose corners were set in the picture, however the lens bows them between. */
export function linesThrough(map: CardMap, corners: Corners): BySide<SideLine> {
  const onCard = corners.map((corner) => cardPointOf(map, corner));
  return bySide((side) => {
    const i = SIDES.indexOf(side);
    const length = lengthOf(side, map.sizeMm);
    return lineThrough(
      [onCard[i] as PointMm, onCard[(i + 1) % 4] as PointMm].map((point) => {
        const [along, depth] = besideOf(side, map.sizeMm, point);
        return [along - length / 2, depth] as const;
      }),
    );
  });
}

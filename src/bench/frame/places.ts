import { type CardMap, pixelOf } from '../geometry/card-map.ts';
import type { Picture } from '../picture.ts';
import { CUT, derivativeOf } from './derivative.ts';
import { type CardSide, lengthOf, type SideLine, sidePoint } from './sides.ts';
import { type Part, type Strip, stripOf } from './strip.ts';

/** Where along a side its frame line was seen, one place for each column that shows it. */
export interface Places {
  readonly side: CardSide;
  readonly line: SideLine;
  /** Millimetres clockwise from the middle of the side. */
  readonly along: Float64Array;
  /** Millimetres inwards from `line`. */
  readonly off: Float64Array;
  /** How sharply the colour changes there, along the direction of change. */
  readonly size: Float64Array;
}

/** How far from the quick look's line its edge is looked for: in millimetres, and in pixels at least. */
const SLACK = 0.25;
const SLACK_PX = 1.5;
/** Standard deviation of the smoothing before the derivative, in pixels of the picture. */
const SIGMA = 0.8;
/** Of changes at least so strong as this share of the strongest, the nearest to the line is taken. */
const AS_STRONG = 0.4;
/** Columns that agree so far on the direction of change share one. */
const COHERENT = 0.8;

/** Samples across a column, at most: as many as a scan of 300 dots an inch has pixels there. */
const MOST = [12, 1] as const;

/** Finds a line to a fraction of a pixel in each column of its side, in linear light. */
export function placesOf(
  picture: Picture,
  map: CardMap,
  side: CardSide,
  line: SideLine,
  part: Part,
): Places {
  const perMm = pixelsPerMm(map, side, line);
  const slack = Math.max(SLACK, SLACK_PX / perMm);
  const half = slack + (CUT * SIGMA + 1) / perMm;
  const step = 0.5 / perMm;
  const shape = { ...part, column: 1, from: -half, to: half, step, most: MOST };
  const strip = stripOf(picture, map, side, line, shape);
  return read(strip, line, lengthOf(side, map.sizeMm), slack);
}

/** Pixels to a millimetre across a line, at the middle of its side. */
export function pixelsPerMm(map: CardMap, side: CardSide, { depth }: SideLine): number {
  const middle = lengthOf(side, map.sizeMm) / 2;
  const [x0, y0] = pixelOf(map, sidePoint(side, map.sizeMm, middle, depth - 0.5));
  const [x1, y1] = pixelOf(map, sidePoint(side, map.sizeMm, middle, depth + 0.5));
  return Math.hypot(x1 - x0, y1 - y0);
}

function read(strip: Strip, line: SideLine, length: number, slack: number): Places {
  const slopes = derivativeOf(strip, 2 * SIGMA);
  const common = directionOf(strip, slopes, slack);
  const [along, off, size]: [number[], number[], number[]] = [[], [], []];
  for (let c = 0; c < strip.columns; c++) {
    const found = peakOf(
      strip,
      slopes,
      slack,
      c,
      common ?? columnDirection(strip, slopes, slack, c),
    );
    if (!found) continue;
    along.push((strip.along[c] as number) - length / 2);
    off.push(found.off);
    size.push(found.size);
  }
  return {
    side: strip.side,
    line,
    along: Float64Array.from(along),
    off: Float64Array.from(off),
    size: Float64Array.from(size),
  };
}

type Direction = readonly [number, number, number];

/** The direction in which most columns change at the line; null where they do not agree. */
function directionOf(strip: Strip, slopes: Float32Array, slack: number): Direction | null {
  const sum: [number, number, number] = [0, 0, 0];
  let total = 0;
  for (let c = 0; c < strip.columns; c++) {
    const [r, g, b] = columnDirection(strip, slopes, slack, c);
    total += Math.hypot(r, g, b);
    sum[0] += r;
    sum[1] += g;
    sum[2] += b;
  }
  const length = Math.hypot(...sum);
  return length < COHERENT * total ? null : [sum[0] / length, sum[1] / length, sum[2] / length];
}

/** The strongest change of a column near the line. */
function columnDirection(
  { columns, depths, from, step }: Strip,
  slopes: Float32Array,
  slack: number,
  c: number,
) {
  let best: Direction = [0, 0, 0];
  let most = 0;
  for (let d = 0; d < depths; d++) {
    if (Math.abs(from + d * step) > slack / 2) continue;
    const at = (d * columns + c) * 3;
    const change: Direction = [
      slopes[at] as number,
      slopes[at + 1] as number,
      slopes[at + 2] as number,
    ];
    const size = Math.hypot(...change);
    if (size > most) [best, most] = [change, size];
  }
  return best;
}

/** Where a column changes most along a direction, between the samples by a parabola. */
function peakOf(
  strip: Strip,
  slopes: Float32Array,
  slack: number,
  c: number,
  direction: Direction,
) {
  const { columns, depths, from, step } = strip;
  const length = Math.hypot(...direction) || 1;
  const at = (d: number) => {
    const i = (d * columns + c) * 3;
    return (
      ((slopes[i] as number) * direction[0] +
        (slopes[i + 1] as number) * direction[1] +
        (slopes[i + 2] as number) * direction[2]) /
      length
    );
  };
  let most = 0;
  const peaks: number[] = [];
  for (let d = 1; d < depths - 1; d++) {
    if (Math.abs(from + d * step) > slack) continue;
    const value = at(d);
    if (value <= 0 || value < at(d - 1) || value <= at(d + 1)) continue;
    most = Math.max(most, value);
    peaks.push(d);
  }
  const best = peaks
    .filter((d) => at(d) >= AS_STRONG * most)
    .sort((a, b) => Math.abs(from + a * step) - Math.abs(from + b * step))[0];
  if (best === undefined) return null;
  const [before, after] = [at(best - 1), at(best + 1)];
  const shift = (before - after) / (2 * (before - 2 * at(best) + after));
  return { off: from + (best + shift) * step, size: at(best) };
}

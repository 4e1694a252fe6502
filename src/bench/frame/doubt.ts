import { type CardMap, cardMapOf, cardPointOf, pixelOf } from '../geometry/card-map.ts';
import type { Corners, PointPx } from '../geometry/points.ts';
import {
  type BySide,
  besideOf,
  bySide,
  lengthOf,
  SIDES,
  type SideLine,
  sidePoint,
} from './sides.ts';

/** How four depths and the mean slope of a frame move with the nine numbers of an outline. */
export type Moves = readonly Float64Array[];

/** Points of a line by which it is followed. */
const POINTS = 7;
/** Steps of a corner, in pixels, and of the lens term, small against what bends the map. */
const STEP_PX = 0.25;
const STEP_K1 = 1e-4;

/**
 * Moves of top, right, bottom and left depth in millimetres and of the mean slope, one row each, for
 * a step of one in each corner coordinate and in k1, while the frame stays where it was seen.
 */
export function movesOf(map: CardMap, lines: BySide<SideLine>): Moves {
  const seen = bySide((side) =>
    Array.from({ length: POINTS }, (_, i) => {
      const along = ((i + 0.5) / POINTS) * lengthOf(side, map.sizeMm);
      const { depth, slope } = lines[side];
      const offset = along - lengthOf(side, map.sizeMm) / 2;
      return pixelOf(map, sidePoint(side, map.sizeMm, along, depth + slope * offset));
    }),
  );
  const rows = Array.from({ length: 5 }, () => new Float64Array(9));
  for (let k = 0; k < 9; k++) {
    const step = k < 8 ? STEP_PX : STEP_K1;
    const [more, less] = [step, -step].map((by) => readOff(moved(map, k, by), seen));
    rows.forEach((row, i) => {
      row[k] = (((more as number[])[i] as number) - ((less as number[])[i] as number)) / (2 * step);
    });
  }
  return rows;
}

function moved(map: CardMap, parameter: number, by: number): CardMap {
  const corners = map.corners.map(([x, y], i) => [
    x + (parameter === 2 * i ? by : 0),
    y + (parameter === 2 * i + 1 ? by : 0),
  ]) as unknown as Corners;
  const k1 = map.lens.k1 + (parameter === 8 ? by : 0);
  return cardMapOf(corners, map.sizeMm, { ...map.lens, k1 });
}

function readOff(map: CardMap, seen: BySide<readonly PointPx[]>): number[] {
  const lines = SIDES.map((side) => {
    const length = lengthOf(side, map.sizeMm);
    return lineThrough(
      seen[side].map((pixel) => {
        const [along, depth] = besideOf(side, map.sizeMm, cardPointOf(map, pixel));
        return [along - length / 2, depth];
      }),
    );
  });
  return [...lines.map(({ depth }) => depth), lines.reduce((sum, { slope }) => sum + slope / 4, 0)];
}

/** The least-squares line through points given as offset along a side and depth. */
export function lineThrough(points: readonly (readonly [number, number])[]): SideLine {
  const n = points.length;
  const meanX = points.reduce((sum, [x]) => sum + x / n, 0);
  const meanY = points.reduce((sum, [, y]) => sum + y / n, 0);
  let [xx, xy] = [0, 0];
  for (const [x, y] of points) {
    xx += (x - meanX) ** 2;
    xy += (x - meanX) * (y - meanY);
  }
  const slope = xy / xx;
  return { depth: meanY - slope * meanX, slope };
}

/** The covariance, 5 × 5 by rows, that an outline's own (9 × 9) gives the depths and the slope. */
export function carriedCovariance(moves: Moves, covariance: Float64Array): Float64Array {
  const out = new Float64Array(25);
  moves.forEach((a, i) => {
    moves.forEach((b, j) => {
      let sum = 0;
      for (let k = 0; k < 9; k++)
        for (let l = 0; l < 9; l++)
          sum += (a[k] as number) * (covariance[k * 9 + l] as number) * (b[l] as number);
      out[i * 5 + j] = sum;
    });
  });
  return out;
}

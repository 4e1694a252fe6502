import { carried, type Homography, homographyOf, inverseOf } from './homography.ts';
import { bowed, type Lens, straightened } from './lens.ts';
import type { Corners, PointMm, PointPx, SizeMm } from './points.ts';

/** The way from a plane of the card into the picture. */
export type Projection = Pick<CardMap, 'lens' | 'toStraight'>;

/** The two ways between a picture and the card that lies in it. */
export interface CardMap {
  readonly sizeMm: SizeMm;
  readonly corners: Corners;
  readonly lens: Lens;
  /** From card millimetres to pixels without the lens's bow. */
  readonly toStraight: Homography;
  /** From pixels without the lens's bow to card millimetres. */
  readonly fromStraight: Homography;
}

/**
 * The map of a card whose virtual corners were seen at `corners`, in pixels with the lens's bow.
 * @throws RangeError where three corners lie on a line.
 */
export function cardMapOf(corners: Corners, sizeMm: SizeMm, lens: Lens): CardMap {
  const [width, height] = sizeMm;
  const card: readonly PointMm[] = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  const toStraight = homographyOf(
    card,
    corners.map((corner) => straightened(lens, corner)),
  );
  return { sizeMm, corners, lens, toStraight, fromStraight: inverseOf(toStraight) };
}

/** The pixel at which a point of the card is seen. */
export function pixelOf(map: Projection, point: PointMm): PointPx {
  return bowed(map.lens, carried(map.toStraight, point));
}

/** The point of the card that a pixel shows; beyond the outline, of the card's plane. */
export function cardPointOf(map: CardMap, pixel: PointPx): PointMm {
  return carried(map.fromStraight, straightened(map.lens, pixel));
}

/** Pixels on a millimetre in the middle of the card. */
export function pixelsPerMm(map: CardMap): number {
  const [a, b, c, d] = turnOf(map);
  return 1 / Math.sqrt(Math.abs(a * d - b * c));
}

/** How a step of one pixel right and one pixel down moves on the card's middle: mm in x, y, x, y. */
export function turnOf(map: CardMap): readonly [number, number, number, number] {
  const [x, y] = pixelOf(map, [map.sizeMm[0] / 2, map.sizeMm[1] / 2]);
  const from = cardPointOf(map, [x, y]);
  const right = cardPointOf(map, [x + 1, y]);
  const down = cardPointOf(map, [x, y + 1]);
  return [right[0] - from[0], right[1] - from[1], down[0] - from[0], down[1] - from[1]];
}

import type { CardMap, Projection } from '../geometry/card-map.ts';
import { composed, type Homography } from '../geometry/homography.ts';
import type { PointMm, SizeMm } from '../geometry/points.ts';

/** The four sides of a card, clockwise as it is read. */
export const SIDES = ['top', 'right', 'bottom', 'left'] as const;

/** One side of a card. */
export type CardSide = (typeof SIDES)[number];

/** One value for each side of a card. */
export type BySide<T> = Readonly<Record<CardSide, T>>;

/** A value made for each side of a card. */
export function bySide<T>(make: (side: CardSide) => T): BySide<T> {
  return { top: make('top'), right: make('right'), bottom: make('bottom'), left: make('left') };
}

/**
 * A straight line beside a side: `depth` millimetres inside the cut edge where the side's middle is,
 * `slope` millimetres deeper for each millimetre clockwise. A print that is turned clockwise by the
 * angle a has the slope tan a on all four sides.
 */
export interface SideLine {
  readonly depth: number;
  readonly slope: number;
}

/** Length of a side in millimetres. */
export function lengthOf(side: CardSide, [width, height]: SizeMm): number {
  return side === 'top' || side === 'bottom' ? width : height;
}

/** The point of the card `along` millimetres clockwise on a side and `depth` inside its cut edge. */
export function sidePoint(
  side: CardSide,
  [width, height]: SizeMm,
  along: number,
  depth: number,
): PointMm {
  if (side === 'top') return [along, depth];
  if (side === 'right') return [width - depth, along];
  if (side === 'bottom') return [width - along, height - depth];
  return [depth, height - along];
}

/** How far clockwise along a side, and how deep inside its cut edge, a point of the card lies. */
export function besideOf(
  side: CardSide,
  [width, height]: SizeMm,
  [x, y]: PointMm,
): readonly [along: number, depth: number] {
  if (side === 'top') return [x, y];
  if (side === 'right') return [y, width - x];
  if (side === 'bottom') return [width - x, height - y];
  return [height - y, x];
}

/**
 * The picture of a side laid flat: the points (along, d), where d counts from `line` inwards, into
 * the picture.
 */
export function alongSide(map: CardMap, side: CardSide, line: SideLine): Projection {
  const at = (along: number, d: number) =>
    sidePoint(
      side,
      map.sizeMm,
      along,
      d + line.depth + line.slope * (along - lengthOf(side, map.sizeMm) / 2),
    );
  const [ox, oy] = at(0, 0);
  const [ax, ay] = at(1, 0);
  const [dx, dy] = at(0, 1);
  const flat: Homography = [ax - ox, dx - ox, ox, ay - oy, dy - oy, oy, 0, 0, 1];
  return { lens: map.lens, toStraight: composed(map.toStraight, flat) };
}

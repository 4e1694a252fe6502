import type { Lens } from '../geometry/lens.ts';
import { type Corners, distanceBetween, type PointPx } from '../geometry/points.ts';
import type { Picture } from '../picture.ts';
import type { Outline, OutlineKnown } from './types.ts';

/** Standard error of a corner set by hand, in pixels of the picture. Judgement, no source. */
const HAND_SD = 1;

/**
 * The outline that a user set, taken as it stands: corners from the card's top-left on round.
 * @throws RangeError where the corners do not go round a card clockwise.
 */
export function outlineByHand(
  picture: Pick<Picture, 'width' | 'height'>,
  corners: Corners,
  known: OutlineKnown,
): Outline {
  if (!goRound(corners))
    throw new RangeError(
      'The four corners of a card are wanted clockwise: top-left, top-right, bottom-right, bottom-left.',
    );
  const lens: Lens = { k1: 0, width: picture.width, height: picture.height };
  const [width, height] = meanSides(corners);
  const perMm = known.dpi === null ? null : known.dpi / 25.4;
  const sizeMm =
    known.sizeMm ?? (perMm === null ? null : ([width / perMm, height / perMm] as const));
  const covariance = new Float64Array(81);
  for (let i = 0; i < 8; i++) covariance[i * 9 + i] = HAND_SD ** 2;
  const aspect = sizeMm ? sizeMm[0] / sizeMm[1] : width / height;
  return { corners, lens, sizeMm, aspect, p: 1, covariance };
}

/** Whether four corners go round a convex figure clockwise, as a card's do in a picture. */
export function goRound(corners: Corners): boolean {
  return corners.every(
    (corner, i) =>
      turnAt(corner, corners[(i + 1) % 4] as PointPx, corners[(i + 2) % 4] as PointPx) > 0,
  );
}

function turnAt([ax, ay]: PointPx, [bx, by]: PointPx, [cx, cy]: PointPx): number {
  return (bx - ax) * (cy - by) - (by - ay) * (cx - bx);
}

function meanSides([a, b, c, d]: Corners): readonly [number, number] {
  return [
    (distanceBetween(a, b) + distanceBetween(d, c)) / 2,
    (distanceBetween(a, d) + distanceBetween(b, c)) / 2,
  ];
}

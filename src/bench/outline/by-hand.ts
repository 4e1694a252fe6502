import type { Lens } from '../geometry/lens.ts';
import type { Corners, PointPx } from '../geometry/points.ts';
import type { Picture } from '../picture.ts';
import type { Outline, OutlineKnown } from './types.ts';

/** Standard error of a corner set by hand, in pixels of the picture. Judgement, no source. */
const HAND_SD = 1;

/**
 * The outline that a user set, taken as it stands: corners from the card's top-left on round.
 * @throws RangeError where the corners are not those of a convex figure.
 */
export function outlineByHand(
  picture: Pick<Picture, 'width' | 'height'>,
  corners: Corners,
  known: OutlineKnown,
): Outline {
  if (!isConvex(corners))
    throw new RangeError('The four corners of a card are wanted one after the other, all round.');
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

/** Whether four corners turn the same way all round, whichever way that is. */
export function isConvex(corners: Corners): boolean {
  const turns = corners.map((corner, i) =>
    turnAt(corner, corners[(i + 1) % 4] as PointPx, corners[(i + 2) % 4] as PointPx),
  );
  return turns.every((turn) => turn > 0) || turns.every((turn) => turn < 0);
}

function turnAt([ax, ay]: PointPx, [bx, by]: PointPx, [cx, cy]: PointPx): number {
  return (bx - ax) * (cy - by) - (by - ay) * (cx - bx);
}

function meanSides([a, b, c, d]: Corners): readonly [number, number] {
  return [(distance(a, b) + distance(d, c)) / 2, (distance(a, d) + distance(b, c)) / 2];
}

function distance([ax, ay]: PointPx, [bx, by]: PointPx): number {
  return Math.hypot(bx - ax, by - ay);
}

import type { PointMm, SizeMm } from '../geometry/points.ts';

/** A grid of points of the card, seen straight down: what a rectified picture shows. */
export interface View {
  /** The point of the card at the centre of the first pixel. */
  readonly originMm: PointMm;
  /** Millimetres from one pixel to the next, across and down. */
  readonly stepMm: readonly [x: number, y: number];
  readonly width: number;
  readonly height: number;
  /**
   * At most so many samples across and down in each pixel, for a quick look; without it as many as
   * the picture has there.
   */
  readonly most?: readonly [across: number, down: number];
}

/**
 * The whole card and a margin around it. The rim of the first pixel, half a pixel outside its
 * centre, lies exactly on the outer edge of the margin.
 * @throws RangeError where no pixel would be left.
 */
export function cardViewOf(sizeMm: SizeMm, pxPerMm: number, marginMm: number): View {
  return viewOf(
    [-marginMm, -marginMm],
    [sizeMm[0] + marginMm, sizeMm[1] + marginMm],
    [1 / pxPerMm, 1 / pxPerMm],
  );
}

/**
 * The rectangle between two points of the card, its far sides moved to the nearest whole pixel.
 * @throws RangeError where no pixel would be left.
 */
export function viewOf(from: PointMm, to: PointMm, stepMm: readonly [number, number]): View {
  const width = Math.round((to[0] - from[0]) / stepMm[0]);
  const height = Math.round((to[1] - from[1]) / stepMm[1]);
  if (!(width >= 1 && height >= 1 && stepMm[0] > 0 && stepMm[1] > 0))
    throw new RangeError(`A view has at least one pixel, found ${width} × ${height}.`);
  return {
    originMm: [from[0] + stepMm[0] / 2, from[1] + stepMm[1] / 2],
    stepMm,
    width,
    height,
  };
}

/** The point of the card that a pixel of a view shows. */
export function viewPointOf(
  { originMm, stepMm }: View,
  [x, y]: readonly [number, number],
): PointMm {
  return [originMm[0] + x * stepMm[0], originMm[1] + y * stepMm[1]];
}

/** The pixel of a view that shows a point of the card, the inverse of `viewPointOf`. */
export function viewPixelOf(
  { originMm, stepMm }: View,
  [x, y]: PointMm,
): readonly [x: number, y: number] {
  return [(x - originMm[0]) / stepMm[0], (y - originMm[1]) / stepMm[1]];
}

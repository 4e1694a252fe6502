import type { Lens } from '../geometry/lens.ts';
import { type Corners, distanceBetween, type PointPx, type SizeMm } from '../geometry/points.ts';
import type { Picture } from '../picture.ts';
import { centreOf, seenCorners } from './figure.ts';
import { type Fine, fineOf } from './fine.ts';
import { poseOf } from './pose.ts';
import type { Outline, OutlineKnown } from './types.ts';

const USUAL_LONG_MM = 88;

/** A first guess of corners, clockwise and in pixels, made fine. */
export function fineOutline(
  picture: Picture,
  corners: readonly PointPx[],
  known: OutlineKnown,
  error: number,
): Fine | null {
  const lens: Lens = { k1: 0, width: picture.width, height: picture.height };
  const scan = known.dpi !== null;
  const long = Math.max(
    ...corners.map((corner, i) => distanceBetween(corner, corners[(i + 1) % 4] as PointPx)),
  );
  const perMm = known.dpi
    ? known.dpi / 25.4
    : long / (known.sizeMm ? Math.max(...known.sizeMm) : USUAL_LONG_MM);
  const aspect = known.sizeMm ? known.sizeMm[0] / known.sizeMm[1] : null;
  return fineOf(picture, corners, lens, { perMm, error, scan, aspect, sizeMm: known.sizeMm });
}

/** An outline from a fitted figure; `first` is the corner that is read as top-left. */
export function outlineOf(fine: Fine, known: OutlineKnown, p: number, first: number): Outline {
  const { lens } = fine.figure;
  const seen = seenCorners(fine.figure);
  const order = [0, 1, 2, 3].map((i) => (i + first) % 4);
  const corners = order.map((i) => seen[i]) as unknown as Corners;
  const { cx, cy, unit } = centreOf(lens);
  const ideal = order.flatMap((i) => {
    const [x, y] = fine.figure.ideal[i] as PointPx;
    return [(x - cx) / unit, (y - cy) / unit];
  });
  const pose = poseOf(Float64Array.from(ideal), known.sizeMm && narrowOf(known.sizeMm), 0.01);
  const scan = known.dpi !== null;
  const measured = scan ? meanSides(corners, (known.dpi as number) / 25.4) : null;
  const sizeMm = known.sizeMm ?? measured;
  const aspect = sizeMm ? sizeMm[0] / sizeMm[1] : pose.aspect;
  return { corners, lens, sizeMm, aspect, p, covariance: turnedCovariance(fine.covariance, first) };
}

function narrowOf([width, height]: SizeMm): number {
  return Math.min(width / height, height / width);
}

/**
 * The corner that is read as top-left: the long side upright (lying, for a card told to be wider
 * than high), and of the two ways then left the one whose top lies nearer to the picture's top.
 */
export function firstCorner(seen: Corners, sizeMm: SizeMm | null): number {
  const lengths = seen.map((corner, i) => distanceBetween(corner, seen[(i + 1) % 4] as PointPx));
  const [a, b, c, d] = lengths as [number, number, number, number];
  const wide = sizeMm !== null && sizeMm[0] > sizeMm[1];
  const first = a + c < b + d !== wide ? 0 : 1;
  const height = (i: number) => (seen[i % 4] as PointPx)[1] + (seen[(i + 1) % 4] as PointPx)[1];
  return height(first) <= height(first + 2) ? first : first + 2;
}

function turnedCovariance(covariance: Float64Array, first: number): Float64Array {
  const from = (i: number) => (i < 8 ? (i + 2 * first) % 8 : 8);
  return covariance.map(
    (_, at) => covariance[from(Math.floor(at / 9)) * 9 + from(at % 9)] as number,
  );
}

function meanSides([a, b, c, d]: Corners, perMm: number): SizeMm {
  return [
    (distanceBetween(a, b) + distanceBetween(d, c)) / 2 / perMm,
    (distanceBetween(b, c) + distanceBetween(a, d)) / 2 / perMm,
  ];
}

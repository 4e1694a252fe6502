import type { PointPx } from './points.ts';

/**
 * The bow of a lens in one term: about the picture's centre, with half its diagonal as unit,
 * ideal = seen · (1 + k1 · |seen|²) (`brown:1971`, its first radial term). 0 for a scanner.
 */
export interface Lens {
  readonly k1: number;
  readonly width: number;
  readonly height: number;
}

/** Where a point would lie without the bow. */
export function straightened(lens: Lens, [x, y]: PointPx): PointPx {
  const cx = (lens.width - 1) / 2;
  const cy = (lens.height - 1) / 2;
  const unit = halfDiagonalOf(lens);
  const u = (x - cx) / unit;
  const v = (y - cy) / unit;
  const stretch = 1 + lens.k1 * (u * u + v * v);
  return [cx + u * stretch * unit, cy + v * stretch * unit];
}

/**
 * Where a point without the bow is seen, the inverse of `straightened`, by Newton's steps on the
 * radius. Misleads for |k1| over 0.3, where the map may fold over inside the picture.
 */
export function bowed(lens: Lens, [x, y]: PointPx): PointPx {
  if (lens.k1 === 0) return [x, y];
  const cx = (lens.width - 1) / 2;
  const cy = (lens.height - 1) / 2;
  const unit = halfDiagonalOf(lens);
  const u = (x - cx) / unit;
  const v = (y - cy) / unit;
  const ideal = Math.sqrt(u * u + v * v);
  if (ideal === 0) return [x, y];
  let seen = ideal;
  for (let step = 0; step < 6; step++) {
    const bend = lens.k1 * seen * seen;
    seen -= (seen + bend * seen - ideal) / (1 + 3 * bend);
  }
  const shrink = (seen / ideal) * unit;
  return [cx + u * shrink, cy + v * shrink];
}

/** Half a picture's diagonal, in pixels. */
export function halfDiagonalOf({ width, height }: Lens): number {
  return Math.sqrt(width * width + height * height) / 2;
}

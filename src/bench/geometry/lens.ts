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
  const [cx, cy, unit] = frameOf(lens);
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
  const [cx, cy, unit] = frameOf(lens);
  const u = (x - cx) / unit;
  const v = (y - cy) / unit;
  const ideal = Math.hypot(u, v);
  if (ideal === 0 || lens.k1 === 0) return [x, y];
  let seen = ideal;
  for (let step = 0; step < 6; step++) {
    const off = seen + lens.k1 * seen ** 3 - ideal;
    seen -= off / (1 + 3 * lens.k1 * seen * seen);
  }
  const shrink = (seen / ideal) * unit;
  return [cx + u * shrink, cy + v * shrink];
}

function frameOf({ width, height }: Lens): readonly [number, number, number] {
  return [(width - 1) / 2, (height - 1) / 2, Math.hypot(width, height) / 2];
}

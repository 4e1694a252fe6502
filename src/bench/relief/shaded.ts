import { type Picture, pictureOf } from '../picture.ts';
import type { DepthMap } from './depth-map.ts';
import type { PlaceMm } from './lighting.ts';

/** Grey of the flat surface and of nodes of which nothing is known. */
const FLAT = 150;
const UNKNOWN = 205;

/**
 * A depth map as a matt grey surface would look under a lamp far away in a direction, one pixel a
 * node: the flat surface in the same grey wherever the lamp stands. `steeper` times the true slopes
 * are shaded, so that shallow relief is seen.
 */
export function shadedRelief(
  { width, height, stepMm, depthMm, sdMm }: DepthMap,
  [lx, ly, lz]: PlaceMm,
  steeper = 1,
): Picture {
  const samples = new Uint8Array(width * height * 3);
  const rise = steeper / (2 * stepMm);
  for (let y = 0, i = 0; y < height; y++)
    for (let x = 0; x < width; x++, i++) {
      const [left, right] = [x > 0 ? i - 1 : i, x + 1 < width ? i + 1 : i];
      const [up, down] = [y > 0 ? i - width : i, y + 1 < height ? i + width : i];
      // Heights are depths turned round, and a normal leans away from the rise.
      const p = ((depthMm[right] as number) - (depthMm[left] as number)) * rise;
      const q = ((depthMm[down] as number) - (depthMm[up] as number)) * rise;
      const light = Math.max(0, (p * lx + q * ly + lz) / Math.hypot(p, q, 1) / lz);
      const grey = Number.isFinite(sdMm[i] as number) ? Math.min(FLAT * light, 255) : UNKNOWN;
      samples.fill(Math.round(grey), 3 * i, 3 * i + 3);
    }
  return pictureOf(width, height, samples);
}

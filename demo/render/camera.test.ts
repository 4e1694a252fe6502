import { describe, expect, it } from 'vitest';
import type { Camera } from './camera.ts';
import { sightOf } from './camera.ts';

const CAMERA: Camera = {
  width: 1500,
  height: 2000,
  focalPx: 1900,
  pxPerMm: 15,
  tiltDeg: 25,
  tiltTowardsDeg: 70,
  rollDeg: 8,
  centrePx: [800, 950],
  k1: 0,
};

/**
 * A pinhole in other words: the point is turned about the tilt axis by cross products (Rodrigues'
 * formula), then about the line of sight, then seen by similar triangles.
 */
function projected(camera: Camera, [x, y, z]: readonly [number, number, number]) {
  const [a, t, r] = [camera.tiltTowardsDeg, camera.tiltDeg, camera.rollDeg].map(
    (degrees) => (degrees * Math.PI) / 180,
  ) as [number, number, number];
  const p = [x - 63 / 2, y - 88 / 2, -z] as const;
  const k = [Math.cos(a), Math.sin(a), 0] as const;
  const cross = [k[1] * p[2], -k[0] * p[2], k[0] * p[1] - k[1] * p[0]] as const;
  const dot = k[0] * p[0] + k[1] * p[1];
  const q = p.map(
    (v, i) => v * Math.cos(t) + cross[i]! * Math.sin(t) + k[i]! * dot * (1 - Math.cos(t)),
  ) as [number, number, number];
  const far = camera.focalPx / camera.pxPerMm;
  const [cx, cy] = [(camera.width - 1) / 2, (camera.height - 1) / 2];
  const X = Math.cos(r) * q[0] - Math.sin(r) * q[1] + (camera.centrePx[0] - cx) / camera.pxPerMm;
  const Y = Math.sin(r) * q[0] + Math.cos(r) * q[1] + (camera.centrePx[1] - cy) / camera.pxPerMm;
  const Z = far + q[2];
  return [cx + (camera.focalPx * X) / Z, cy + (camera.focalPx * Y) / Z] as const;
}

describe('the camera', () => {
  it.each([
    [0, 0, 0],
    [63, 0, 0],
    [63, 88, 0],
    [0, 88, 0],
    [10, 70, -0.32],
    [50, 20, 6],
  ] as const)('sees (%d, %d, %d) where a pinhole does', (x, y, z) => {
    const seen = sightOf(CAMERA, [63, 88]).pixelOf([x, y], z);
    const wanted = projected(CAMERA, [x, y, z]);
    // The same numbers in another order: rounding alone, measured below 1e-12.
    expect(seen[0]).toBeCloseTo(wanted[0], 9);
    expect(seen[1]).toBeCloseTo(wanted[1], 9);
  });

  it('bows what it sees such that the lens’s own formula straightens it again', () => {
    const straight = sightOf(CAMERA, [63, 88]).pixelOf([63, 0]);
    const [x, y] = sightOf({ ...CAMERA, k1: 0.03 }, [63, 88]).pixelOf([63, 0]);
    const [u, v] = [(x - 749.5) / 1250, (y - 999.5) / 1250];
    const bow = 1 + 0.03 * (u * u + v * v);
    expect(749.5 + u * bow * 1250).toBeCloseTo(straight[0], 7);
    expect(999.5 + v * bow * 1250).toBeCloseTo(straight[1], 7);
  });

  it('has its eye on the line through every point and its pixel', () => {
    const sight = sightOf(CAMERA, [63, 88]);
    const [ex, ey, ez] = sight.eye;
    for (const [x, y] of [
      [5, 9],
      [60, 80],
    ] as const) {
      const low = sight.pixelOf([x - 0.3 * (ex - x), y - 0.3 * (ey - y)], -0.3 * ez);
      const top = sight.pixelOf([x, y]);
      expect(low[0]).toBeCloseTo(top[0], 7);
      expect(low[1]).toBeCloseTo(top[1], 7);
    }
  });
});

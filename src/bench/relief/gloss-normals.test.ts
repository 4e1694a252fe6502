import fc from 'fast-check';
import { expect, it } from 'vitest';
import { PICTURE_STRIDE, withGloss } from './gloss-normals.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const lighting = {
  lamps: [],
  gloss: { strength: 0.2, sd: 0.05, exponent: 12 },
  ambient: { value: 0.06, sd: 0.02 },
  noise: { floor: 0, relative: 0, edge: 0, block: 1 },
};
const places = [
  [0.8, 0, 0.6],
  [0, 0.8, 0.6],
  [-0.64, -0.48, 0.6],
  [0.5, -0.6, 0.62],
] as const;

/** Light by the model as the method page writes it, camera straight above. */
function lightOf([x, y, z]: (typeof places)[number], a: number, p: number, q: number): number {
  const up = 1 / Math.hypot(p, q, 1);
  const half = Math.hypot(x, y, z + 1);
  const facing = (z - p * x - q * y) * up;
  const along = ((z + 1 - p * x - q * y) / half) * up;
  const sky = (0.06 * z * (1 + up)) / 2;
  return a * (facing + sky) + 0.2 * along ** 12;
}

it('finds albedo and slopes from lights of leaning, glossy, dark print', () => {
  const lamps = new Float64Array(places.length * PICTURE_STRIDE);
  places.forEach(([x, y, z], k) => {
    const half = Math.hypot(x, y, z + 1);
    lamps.set([x, y, z, x / half, y / half, (z + 1) / half, 1], k * PICTURE_STRIDE);
  });
  fc.assert(
    fc.property(between(0.02, 0.7), between(-0.15, 0.15), between(-0.15, 0.15), (a, p, q) => {
      const lights = Float64Array.from(places, (place) => lightOf(place, a, p, q));
      const found = { albedo: 1.2 * a, right: 1.5 * p, down: 1.5 * q, spread: 0 };
      withGloss(lights, lamps, lighting, found);
      // Four steps from the flat: measured 2e-4 at worst, allowed 2e-3.
      expect(Math.abs(found.right - p)).toBeLessThan(2e-3);
      expect(Math.abs(found.down - q)).toBeLessThan(2e-3);
      expect(Math.abs(found.albedo - a)).toBeLessThan(2e-3);
      expect(found.spread).toBeGreaterThan(0);
    }),
  );
});

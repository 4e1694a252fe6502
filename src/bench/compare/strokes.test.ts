import { expect, it } from 'vitest';
import type { Plane } from '../picture.ts';
import { boxMeans } from './planes.ts';
import { strokeRatio } from './strokes.ts';

const [WIDTH, HEIGHT] = [320, 256];

/** Upright strokes of a width, 16 pixels apart, a pixel that one cuts shaded by its share. */
function strokes(wide: number, gain = 1): Plane {
  const values = Float32Array.from({ length: WIDTH * HEIGHT }, (_, i) => {
    const from = (i % WIDTH) % 16;
    const covered = Math.max(0, Math.min(from + 1, 5 + wide) - Math.max(from, 5));
    return gain * (0.8 - 0.7 * covered);
  });
  return { width: WIDTH, height: HEIGHT, values };
}

const blurred = (plane: Plane): Plane => ({ ...plane, values: boxMeans(plane, 1) });

it('tells how much wider strokes are, whatever the light', () => {
  const found = strokeRatio(strokes(2), strokes(2.6, 0.6), 32);
  // Measured 0.262 (0.01 is added to light before it is divided), allowed 0.01 about log 1.3.
  expect(Math.abs((found ?? 9) - Math.log(1.3))).toBeLessThan(0.01);
});

it('takes a blurred print for as wide', () => {
  // Measured −0.003, allowed 0.03: a tenth of what it would be for strokes a third wider.
  expect(Math.abs(strokeRatio(strokes(2), blurred(strokes(2)), 32) ?? 9)).toBeLessThan(0.03);
});

it('says nothing of a print without strokes', () => {
  const even = strokes(0);
  expect(strokeRatio(even, even, 32)).toBeNull();
});

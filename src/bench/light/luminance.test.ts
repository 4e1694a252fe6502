import { expect, it } from 'vitest';
import { pictureOf } from '../picture.ts';
import { luminanceOf } from './luminance.ts';

it('weighs light as the standard does, whatever the depth of the samples', () => {
  // Green and mid-grey of checks/fixtures/bench/srgb_lab.csv (IEC 61966-2-1): Y 0.71516 and
  // 0.21586; the standard's own rounded weights differ from that matrix by 4e-5, allowed 1e-4.
  const eight = luminanceOf(pictureOf(2, 1, Uint8Array.of(0, 255, 0, 128, 128, 128)));
  expect(Math.abs((eight.values[0] as number) - 0.71516)).toBeLessThan(1e-4);
  expect(Math.abs((eight.values[1] as number) - 0.2158605)).toBeLessThan(1e-4);
  const deep = luminanceOf(pictureOf(1, 1, Uint16Array.of(32896, 32896, 32896)));
  expect(deep.values[0]).toBeCloseTo(eight.values[1] as number, 6);
});

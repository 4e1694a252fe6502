import { expect, it } from 'vitest';
import { cumulative } from './cumulative.ts';

it.each([
  // Abramowitz and Stegun (1964), table 26.1.
  [0, 0.5],
  [0.5, 0.6914624613],
  [1, 0.8413447461],
  [1.96, 0.9750021049],
  [3, 0.998650102],
])('is the published share below %s', (z, share) => {
  // The formula's own bound is 7.5e-8.
  expect(Math.abs(cumulative(z) - share)).toBeLessThan(1e-7);
  expect(Math.abs(cumulative(-z) - (1 - share))).toBeLessThan(1e-7);
});

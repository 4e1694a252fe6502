import { expect, it } from 'vitest';
import { fixed, withDoubt } from './numbers.ts';

it('gives nothing no sign, and keeps the sign of what is left', () => {
  expect(fixed(-0.0004, 3)).toBe('0.000');
  expect(fixed(-0.0006, 3)).toBe('-0.001');
  expect(withDoubt(-0.004, 0.01)).toBe('0.00 ± 0.02');
});

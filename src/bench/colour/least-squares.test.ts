import { expect, it } from 'vitest';
import { leastSquares } from './least-squares.ts';

// NIST Statistical Reference Datasets, nonlinear regression, Misra1a (14 observations, start 1 and
// 2), with its certified values.
const X = [
  77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760,
];
const Y = [
  10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78,
];
const CERTIFIED = { values: [238.94212918, 5.5015643181e-4], sd: [2.7070075241, 7.2668688436e-6] };

const misra = ([b1 = 0, b2 = 0]: ArrayLike<number> & Iterable<number>) =>
  Float64Array.from(X, (x, i) => b1 * (1 - Math.exp(-b2 * x)) - (Y[i] as number));

it.each([[[500, 1e-4]], [[250, 5e-4]]])('reaches the certified values from %j', (start) => {
  const { values, covariance } = leastSquares(misra, start, 200);
  const rest = misra(values).reduce((sum, one) => sum + one * one, 0) / (X.length - 2);
  // Slopes are differences of a part in a thousand: measured 2e-6 and 3e-3, allowed 1e-4 and 1e-2.
  CERTIFIED.values.forEach((value, i) => {
    expect(Math.abs((values[i] as number) / value - 1)).toBeLessThan(1e-4);
    const sd = Math.sqrt(rest * (covariance[i]?.[i] as number));
    expect(Math.abs(sd / (CERTIFIED.sd[i] as number) - 1)).toBeLessThan(1e-2);
  });
});

it('refuses what the residuals leave undetermined', () => {
  const sum = ([a = 0, b = 0]: ArrayLike<number> & Iterable<number>) => Float64Array.of(a + b - 1);
  expect(() => leastSquares(sum, [0, 0, 0])).toThrow(RangeError);
});

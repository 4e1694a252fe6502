import { describe, expect, it } from 'vitest';
import {
  choleskyOf,
  inverseOfSymmetric,
  isDefinite,
  logRootOf,
  solveSymmetric,
} from './symmetric.ts';

/** Hilbert's matrix of four rows; its inverse is whole numbers (Choi 1983, Amer. Math. Monthly 90; values from memory). */
const HILBERT = Float64Array.from({ length: 16 }, (_, k) => 1 / ((k >> 2) + (k % 4) + 1));
const INVERSE = [
  [16, -120, 240, -140],
  [-120, 1200, -2700, 1680],
  [240, -2700, 6480, -4200],
  [-140, 1680, -4200, 2800],
].flat();

describe('a symmetric matrix', () => {
  it('has the inverse and the determinant that are known of Hilbert’s', () => {
    inverseOfSymmetric(HILBERT, 4).forEach((value, k) => {
      // The condition is 1.6e4: measured 1e-12 of the value, allowed 1e-10.
      expect(Math.abs(value / (INVERSE[k] as number) - 1)).toBeLessThan(1e-10);
    });
    // Its determinant is 1/6,048,000.
    expect(logRootOf(choleskyOf(HILBERT, 4), 4)).toBeCloseTo(-Math.log(6_048_000) / 2, 10);
  });

  it('leaves an unknown where it is of which nothing is known, and says so', () => {
    const flat = Float64Array.of(4, 0, 0, 0);
    const right = Float64Array.of(8, 3);
    solveSymmetric(flat, right, 2);
    expect([...right]).toEqual([2, 0]);
    expect(
      [flat, HILBERT].map((one) =>
        isDefinite(choleskyOf(one, one.length ** 0.5), one.length ** 0.5),
      ),
    ).toEqual([false, true]);
  });
});

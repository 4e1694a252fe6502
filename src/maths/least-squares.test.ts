import { describe, expect, it } from 'vitest';
import { leastSquares } from './least-squares.ts';

describe('least squares', () => {
  it('fits a line as the certified values of Norris say', () => {
    // NIST Statistical Reference Datasets, Norris (https://www.itl.nist.gov/div898/strd/lls/data/Norris.shtml),
    // certified intercept −0.262323073774029 and slope 1.00211681802045. Data and values from memory
    // of that page, checked by the certified residual sum of squares 26.6173985294224.
    const fit = leastSquares(
      NORRIS.map(([x]) => [1, x]),
      NORRIS.map(([, y]) => y),
      NORRIS.map(() => 1),
    );
    const squares = NORRIS.reduce(
      (sum, [x, y]) => sum + (y - (fit[0] as number) - (fit[1] as number) * x) ** 2,
      0,
    );
    // The trace of a ridge, 1e-12, on a condition of 1e6: measured 1.0e-9, allowed 5e-9.
    expect(fit[0]).toBeCloseTo(-0.262323073774029, 8);
    expect(fit[1]).toBeCloseTo(1.00211681802045, 10);
    expect(squares).toBeCloseTo(26.6173985294224, 8);
  });

  it('gives a row with double weight the say of two', () => {
    const rows = [
      [1, 0],
      [1, 1],
      [1, 3],
    ];
    const doubled = leastSquares([...rows, [1, 3]], [1, 0, 4, 4], [1, 1, 1, 1]);
    leastSquares(rows, [1, 0, 4], [1, 1, 2]).forEach((value, i) => {
      expect(value).toBeCloseTo(doubled[i] as number, 12);
    });
  });

  it('refuses more columns than rows', () => {
    expect(() => leastSquares([[1, 2]], [1], [1])).toThrow(RangeError);
  });
});

const NORRIS: readonly (readonly [x: number, y: number])[] = [
  [0.2, 0.1],
  [337.4, 338.8],
  [118.2, 118.1],
  [884.6, 888.0],
  [10.1, 9.2],
  [226.5, 228.1],
  [666.3, 668.5],
  [996.3, 998.5],
  [448.6, 449.1],
  [777.0, 778.9],
  [558.2, 559.2],
  [0.4, 0.3],
  [0.6, 0.1],
  [775.5, 778.1],
  [666.9, 668.8],
  [338.0, 339.3],
  [447.5, 448.9],
  [11.6, 10.8],
  [556.0, 557.7],
  [228.1, 228.3],
  [995.8, 998.0],
  [887.6, 888.8],
  [120.2, 119.6],
  [0.3, 0.3],
  [0.3, 0.6],
  [556.8, 557.6],
  [339.1, 339.3],
  [887.2, 888.0],
  [999.0, 998.5],
  [779.0, 778.9],
  [11.1, 10.2],
  [118.3, 117.6],
  [229.2, 228.9],
  [669.1, 668.4],
  [448.9, 449.2],
  [0.5, 0.2],
];

import { solveSymmetric } from './symmetric.ts';

/**
 * Weighted least squares of `targets` on `rows`, by the normal equations and Cholesky's factor; a
 * trace of a ridge keeps columns apart that say the same. For a handful of columns only: the normal
 * equations square the condition (`golub:2013`).
 * @throws RangeError where there are fewer rows than columns
 */
export function leastSquares(
  rows: readonly (readonly number[])[],
  targets: readonly number[],
  weights: readonly number[],
): readonly number[] {
  const n = rows[0]?.length ?? 0;
  if (rows.length < n || n === 0)
    throw new RangeError(`${n} columns want as many rows, found ${rows.length}.`);
  const normal = new Float64Array(n * n);
  const right = new Float64Array(n);
  rows.forEach((row, k) => {
    const weight = weights[k] as number;
    row.forEach((a, i) => {
      right[i] = (right[i] as number) + weight * a * (targets[k] as number);
      for (let j = 0; j <= i; j++)
        normal[i * n + j] = (normal[i * n + j] as number) + weight * a * (row[j] as number);
    });
  });
  for (let i = 0; i < n * n; i += n + 1) normal[i] = (normal[i] as number) * (1 + 1e-12) + 1e-300;
  solveSymmetric(normal, right, n);
  return [...right];
}

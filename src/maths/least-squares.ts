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
  const normal = Array.from({ length: n }, () => new Array<number>(n).fill(0));
  const right = new Array<number>(n).fill(0);
  rows.forEach((row, k) => {
    const weight = weights[k] as number;
    row.forEach((a, i) => {
      right[i] = (right[i] as number) + weight * a * (targets[k] as number);
      const line = normal[i] as number[];
      for (let j = 0; j <= i; j++) line[j] = (line[j] as number) + weight * a * (row[j] as number);
    });
  });
  normal.forEach((line, i) => {
    line[i] = (line[i] as number) * (1 + 1e-12) + 1e-300;
  });
  return substituted(factored(normal), right);
}

/** Cholesky's factor of the lower half, in place. */
function factored(a: number[][]): readonly (readonly number[])[] {
  a.forEach((line, i) => {
    for (let j = 0; j <= i; j++) {
      let sum = line[j] as number;
      for (let k = 0; k < j; k++) sum -= (line[k] as number) * (a[j]?.[k] as number);
      line[j] = i === j ? Math.sqrt(Math.max(sum, 1e-300)) : sum / (a[j]?.[j] as number);
    }
  });
  return a;
}

function substituted(factor: readonly (readonly number[])[], right: readonly number[]): number[] {
  const x = [...right];
  const at = (i: number, j: number) => factor[i]?.[j] as number;
  for (let i = 0; i < x.length; i++) {
    for (let k = 0; k < i; k++) x[i] = (x[i] as number) - at(i, k) * (x[k] as number);
    x[i] = (x[i] as number) / at(i, i);
  }
  for (let i = x.length - 1; i >= 0; i--) {
    for (let k = i + 1; k < x.length; k++) x[i] = (x[i] as number) - at(k, i) * (x[k] as number);
    x[i] = (x[i] as number) / at(i, i);
  }
  return x;
}

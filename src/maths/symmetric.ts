/**
 * The lower factor of a symmetric positive definite matrix of `n` rows, by Cholesky (`golub:2013`,
 * 4.2), row by row in one array. A pivot that is not above 0 is taken as infinitely stiff: its unknown
 * stays put, and `isDefinite` says so.
 */
export function choleskyOf(matrix: ArrayLike<number>, n: number): Float64Array {
  const lower = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * n + j] as number;
      for (let k = 0; k < j; k++)
        sum -= (lower[i * n + k] as number) * (lower[j * n + k] as number);
      if (i === j) lower[i * n + i] = sum > 1e-300 ? Math.sqrt(sum) : Number.POSITIVE_INFINITY;
      else lower[i * n + j] = sum / (lower[j * n + j] as number);
    }
  return lower;
}

/** Whether a factor of `n` rows is that of a positive definite matrix. */
export function isDefinite(lower: Float64Array, n: number): boolean {
  for (let i = 0; i < n; i++) if (lower[i * n + i] === Number.POSITIVE_INFINITY) return false;
  return true;
}

/** The logarithm of the root of a positive definite matrix's determinant, by its factor. */
export function logRootOf(lower: Float64Array, n: number): number {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += Math.log(lower[i * n + i] as number);
  return sum;
}

/** Solves for a right side by the lower factor of its matrix, in place. */
export function solveByFactor(lower: Float64Array, right: Float64Array, n: number): void {
  for (let i = 0; i < n; i++) {
    let sum = right[i] as number;
    for (let k = 0; k < i; k++) sum -= (lower[i * n + k] as number) * (right[k] as number);
    right[i] = sum / (lower[i * n + i] as number);
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = right[i] as number;
    for (let k = i + 1; k < n; k++) sum -= (lower[k * n + i] as number) * (right[k] as number);
    right[i] = sum / (lower[i * n + i] as number);
  }
}

/** Solves a symmetric positive definite system of `n` rows in place of its right side. */
export function solveSymmetric(matrix: Float64Array, right: Float64Array, n: number): void {
  solveByFactor(choleskyOf(matrix, n), right, n);
}

/** The inverse of a symmetric positive definite matrix of `n` rows, written into a new array. */
export function inverseOfSymmetric(matrix: Float64Array, n: number): Float64Array {
  return inverseByFactor(choleskyOf(matrix, n), n);
}

/** The inverse of a matrix of `n` rows by its lower factor. */
export function inverseByFactor(lower: Float64Array, n: number): Float64Array {
  const inverse = new Float64Array(n * n);
  const column = new Float64Array(n);
  for (let j = 0; j < n; j++) {
    column.fill(0);
    column[j] = 1;
    solveByFactor(lower, column, n);
    for (let i = 0; i < n; i++) inverse[i * n + j] = column[i] as number;
  }
  return inverse;
}

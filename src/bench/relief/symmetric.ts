/**
 * The inverse of a symmetric positive definite matrix of `n` rows, by Cholesky's factors, written
 * into a new array. A pivot that is not above 0 is taken as infinitely stiff: its unknown stays put.
 */
export function inverseOfSymmetric(matrix: Float64Array, n: number): Float64Array {
  const lower = choleskyOf(matrix, n);
  const inverse = new Float64Array(n * n);
  const column = new Float64Array(n);
  for (let j = 0; j < n; j++) {
    column.fill(0);
    column[j] = 1;
    backAndForth(lower, column, n);
    for (let i = 0; i < n; i++) inverse[i * n + j] = column[i] as number;
  }
  return inverse;
}

/** Solves a symmetric positive definite system of `n` rows in place of its right side. */
export function solveSymmetric(matrix: Float64Array, right: Float64Array, n: number): void {
  backAndForth(choleskyOf(matrix, n), right, n);
}

function choleskyOf(matrix: Float64Array, n: number): Float64Array {
  const lower = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * n + j] as number;
      for (let k = 0; k < j; k++)
        sum -= (lower[i * n + k] as number) * (lower[j * n + k] as number);
      if (i === j) lower[i * n + i] = sum > 1e-300 ? Math.sqrt(sum) : 1e150;
      else lower[i * n + j] = sum / (lower[j * n + j] as number);
    }
  return lower;
}

function backAndForth(lower: Float64Array, right: Float64Array, n: number): void {
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

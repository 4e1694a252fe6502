/** Inverse of a symmetric positive matrix of n × n by rows (`press:2007`, Gauss and Jordan). */
export function inverseOfSymmetric(matrix: Float64Array, n: number): Float64Array {
  const a = matrix.slice();
  const inverse = new Float64Array(n * n);
  for (let i = 0; i < n; i++) inverse[i * n + i] = 1;
  for (let k = 0; k < n; k++) {
    const pivot = a[k * n + k] as number;
    for (let j = 0; j < n; j++) {
      a[k * n + j] = (a[k * n + j] as number) / pivot;
      inverse[k * n + j] = (inverse[k * n + j] as number) / pivot;
    }
    for (let i = 0; i < n; i++) {
      const factor = a[i * n + k] as number;
      if (i === k || factor === 0) continue;
      for (let j = 0; j < n; j++) {
        a[i * n + j] = (a[i * n + j] as number) - factor * (a[k * n + j] as number);
        inverse[i * n + j] =
          (inverse[i * n + j] as number) - factor * (inverse[k * n + j] as number);
      }
    }
  }
  return inverse;
}

/** Product of a matrix of n × n by rows with a vector. */
export function timesVector(matrix: Float64Array, vector: Float64Array): Float64Array {
  const n = vector.length;
  return vector.map((_, i) => {
    let sum = 0;
    for (let j = 0; j < n; j++) sum += (matrix[i * n + j] as number) * (vector[j] as number);
    return sum;
  });
}

/** J · C · Jᵀ, with J of m × n and C of n × n, both by rows. */
export function carriedCovariance(
  j: Float64Array,
  c: Float64Array,
  m: number,
  n: number,
): Float64Array {
  const half = new Float64Array(m * n);
  for (let r = 0; r < m; r++)
    for (let k = 0; k < n; k++) {
      let sum = 0;
      for (let l = 0; l < n; l++) sum += (j[r * n + l] as number) * (c[l * n + k] as number);
      half[r * n + k] = sum;
    }
  const out = new Float64Array(m * m);
  for (let r = 0; r < m; r++)
    for (let s = 0; s < m; s++) {
      let sum = 0;
      for (let k = 0; k < n; k++) sum += (half[r * n + k] as number) * (j[s * n + k] as number);
      out[r * m + s] = sum;
    }
  return out;
}

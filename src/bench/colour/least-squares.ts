/** Where the sum of squares is least, and how surely. */
export interface Least {
  readonly values: Float64Array;
  /** Covariance of the values for residuals of variance 1, by rows. */
  readonly covariance: readonly Float64Array[];
}

/**
 * Values that make the sum of squared residuals least, by Levenberg and Marquardt's damped steps
 * (`marquardt:1963`) with differences for derivatives. Ends in the nearest valley.
 *
 * @param residuals of the values, as many each time; tell what is known beforehand as residuals too
 * @throws RangeError where the residuals leave some value undetermined.
 */
export function leastSquares(
  residuals: (values: Float64Array) => Float64Array,
  start: ArrayLike<number>,
  rounds = 20,
): Least {
  let values = Float64Array.from(start);
  let now = residuals(values);
  let damping = 1e-3;
  for (let round = 0; round < rounds; round++) {
    const { square, slope } = normalEquations(residuals, values, now);
    const damped = square.map((row, i) => {
      const copy = row.slice();
      copy[i] = (copy[i] as number) * (1 + damping);
      return copy;
    });
    const step = solved(cholesky(damped), slope);
    const next = values.map((value, i) => value - (step[i] as number));
    const then = residuals(next);
    const gain = 1 - sumOfSquares(then) / sumOfSquares(now);
    if (gain >= 0) [values, now, damping] = [next, then, damping / 5];
    else damping *= 10;
    if (gain >= 0 && gain < 1e-8) break;
  }
  return { values, covariance: inverse(normalEquations(residuals, values, now).square) };
}

function normalEquations(
  residuals: (values: Float64Array) => Float64Array,
  values: Float64Array,
  now: Float64Array,
) {
  const columns = Array.from(values, (value, i) => {
    const step = 1e-5 * Math.max(0.1, Math.abs(value));
    const moved = values.slice();
    moved[i] = value + step;
    return residuals(moved).map((after, k) => (after - (now[k] as number)) / step);
  });
  const square = columns.map((one) => Float64Array.from(columns, (other) => dot(one, other)));
  return { square, slope: Float64Array.from(columns, (column) => dot(column, now)) };
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

function sumOfSquares(a: Float64Array): number {
  return dot(a, a);
}

/**
 * The lower factor of a symmetric matrix, by rows (`golub:2013`, 4.2).
 * @throws RangeError where it is not positive definite
 */
export function cholesky(square: readonly ArrayLike<number>[]): readonly Float64Array[] {
  const lower = square.map((row) => new Float64Array(row.length));
  square.forEach((row, i) => {
    for (let j = 0; j <= i; j++) {
      const [a, b] = [lower[i] as Float64Array, lower[j] as Float64Array];
      let sum = row[j] as number;
      for (let k = 0; k < j; k++) sum -= (a[k] as number) * (b[k] as number);
      if (i !== j) a[j] = sum / (b[j] as number);
      else if (sum > 0) a[i] = Math.sqrt(sum);
      else throw new RangeError('The residuals leave a value undetermined.');
    }
  });
  return lower;
}

/** Solves for a right side by the lower factor of its matrix. */
export function solved(lower: readonly Float64Array[], right: ArrayLike<number>): Float64Array {
  const n = right.length;
  const x = Float64Array.from(right);
  for (let i = 0; i < n; i++) {
    const row = lower[i] as Float64Array;
    for (let k = 0; k < i; k++) x[i] = (x[i] as number) - (row[k] as number) * (x[k] as number);
    x[i] = (x[i] as number) / (row[i] as number);
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++)
      x[i] = (x[i] as number) - ((lower[k] as Float64Array)[i] as number) * (x[k] as number);
    x[i] = (x[i] as number) / ((lower[i] as Float64Array)[i] as number);
  }
  return x;
}

function inverse(square: readonly Float64Array[]): readonly Float64Array[] {
  const lower = cholesky(square);
  return square.map((row, i) => {
    const one = new Float64Array(row.length);
    one[i] = 1;
    return solved(lower, one);
  });
}

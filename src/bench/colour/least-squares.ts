import { choleskyOf, inverseByFactor, isDefinite, solveByFactor } from '../../maths/index.ts';

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
  const n = values.length;
  let now = residuals(values);
  let damping = 1e-3;
  for (let round = 0; round < rounds; round++) {
    const { square, slope: step } = normalEquations(residuals, values, now);
    for (let i = 0; i < square.length; i += n + 1)
      square[i] = (square[i] as number) * (1 + damping);
    solveByFactor(factorOf(square, n), step, n);
    const next = values.map((value, i) => value - (step[i] as number));
    const then = residuals(next);
    const gain = 1 - sumOfSquares(then) / sumOfSquares(now);
    if (gain >= 0) [values, now, damping] = [next, then, damping / 5];
    else damping *= 10;
    if (gain >= 0 && gain < 1e-8) break;
  }
  const inverse = inverseByFactor(factorOf(normalEquations(residuals, values, now).square, n), n);
  return {
    values,
    covariance: Array.from(values, (_, i) => inverse.subarray(i * n, (i + 1) * n)),
  };
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
  const square = Float64Array.from(
    columns.flatMap((one) => columns.map((other) => dot(one, other))),
  );
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

function factorOf(square: Float64Array, n: number): Float64Array {
  const lower = choleskyOf(square, n);
  if (isDefinite(lower, n)) return lower;
  throw new RangeError('The residuals leave a value undetermined.');
}

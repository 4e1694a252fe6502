import gammaln from '@stdlib/math-base-special-gammaln';

/**
 * Chance that a chi-square variable with so many degrees of freedom exceeds a value, by the series
 * for the lower incomplete gamma function below its turning point and the continued fraction above
 * it (`press:2007`, section 6.2).
 */
export function chiSquareTail(value: number, freedom: number): number {
  const [a, x] = [freedom / 2, value / 2];
  if (x <= 0) return 1;
  const front = Math.exp(-x + a * Math.log(x) - gammaln(a));
  return x < a + 1 ? 1 - front * series(a, x) : front * fraction(a, x);
}

function series(a: number, x: number): number {
  let term = 1 / a;
  let sum = term;
  for (let n = 1; Math.abs(term) > 1e-15 * Math.abs(sum); n++) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

/** Lentz's way of evaluating the continued fraction. */
function fraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = 1e300;
  let d = 1 / b;
  let h = d;
  for (let n = 1; n < 10_000; n++) {
    const step = -n * (n - a);
    b += 2;
    d = 1 / (step * d + b);
    c = b + step / c;
    const change = d * c;
    h *= change;
    if (Math.abs(change - 1) < 1e-15) break;
  }
  return h;
}

/**
 * Chance that the largest distance between a sample of n and its distribution exceeds a value, by
 * Kolmogorov's limit with the correction of Stephens for finite n (`stephens:1970`).
 */
export function kolmogorovTail(distance: number, n: number): number {
  const t = distance * (Math.sqrt(n) + 0.12 + 0.11 / Math.sqrt(n));
  if (t < 0.2) return 1;
  let sum = 0;
  for (let k = 1; k <= 100; k++) sum += (k % 2 === 1 ? 2 : -2) * Math.exp(-2 * k * k * t * t);
  return Math.min(1, Math.max(0, sum));
}

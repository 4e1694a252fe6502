import gammaln from '@stdlib/math-base-special-gammaln';

/** Normal–inverse-gamma belief about a quantity over copies of one printing (`murphy:2007`). */
export interface Belief {
  readonly mean: number;
  /** Copies that the mean is worth; 0: nothing is known of it. */
  readonly kappa: number;
  /** Degrees of freedom of the spread, and its size. */
  readonly nu: number;
  readonly sd: number;
}

/** The belief after values of some copies were seen. */
export function learned(before: Belief, values: readonly number[]): Belief {
  const n = values.length;
  if (n === 0) return before;
  const sample = values.reduce((a, b) => a + b, 0) / n;
  const squares = values.reduce((sum, value) => sum + (value - sample) ** 2, 0);
  const kappa = before.kappa + n;
  // With nothing known of the mean, one copy is spent on it and says nothing of the spread.
  const nu = before.nu + (before.kappa > 0 ? n : n - 1);
  const apart = ((before.kappa * n) / kappa) * (sample - before.mean) ** 2;
  return {
    mean: (before.kappa * before.mean + n * sample) / kappa,
    kappa,
    nu,
    sd: Math.sqrt((before.nu * before.sd ** 2 + squares + apart) / nu),
  };
}

/**
 * Logarithm of the density of the next copy's value, measured with standard error `se`: Student's t.
 * @throws RangeError where nothing at all is known of the mean
 */
export function logNext({ mean, kappa, nu, sd }: Belief, value: number, se: number): number {
  if (kappa === 0) throw new RangeError('Nothing is known of the mean: no copy was seen.');
  return logT(value - mean, nu, Math.hypot(sd * Math.sqrt(1 + 1 / kappa), se));
}

/** Logarithm of Student's density at `x` with `nu` degrees of freedom and a scale. */
export function logT(x: number, nu: number, scale: number): number {
  const u = x / scale;
  return (
    gammaln((nu + 1) / 2) -
    gammaln(nu / 2) -
    0.5 * Math.log(nu * Math.PI) -
    Math.log(scale) -
    ((nu + 1) / 2) * Math.log1p((u * u) / nu)
  );
}

/**
 * No single family of differences says more than a hundred to one: the shape of its distribution
 * beyond the references seen is a guess. Judgement, no source.
 */
export const MOST = 2;

/** The logarithm to base 10 of a ratio of densities, held within `MOST`. */
export function log10Ratio(logOne: number, logOther: number): number {
  const ratio = (logOne - logOther) / Math.LN10;
  return Math.max(-MOST, Math.min(MOST, ratio));
}

/** The logarithm of a sum of two numbers that are given by theirs. */
export function logSum(a: number, b: number): number {
  const most = Math.max(a, b);
  return most + Math.log(Math.exp(a - most) + Math.exp(b - most));
}

/**
 * Pairs on which comparisons were tried with a known truth (`checks/compare/pairs.ts`). So many
 * pairs cannot show that a ratio beyond their number is right, so that none is stated.
 */
const PAIRS_TRIED = 12;

/** All families together, to base 10, held within what the pairs tried can show. */
export function together(findings: readonly { readonly log10Lr: number }[]): number {
  const most = Math.log10(PAIRS_TRIED);
  const sum = findings.reduce((total, { log10Lr }) => total + log10Lr, 0);
  return Math.max(-most, Math.min(most, sum));
}

/** The same in a sentence. */
export const TRIED = `Tried on ${PAIRS_TRIED} pairs of rendered pictures: it never says more than ${PAIRS_TRIED} to one, however much its parts add up to.`;

import normalQuantile from '@stdlib/stats-base-dists-normal-quantile';
import type { Interval } from '../../maths/index.ts';

/** An estimate with its 95 %. */
export interface Estimate {
  readonly estimate: number;
  readonly interval95: Interval;
}

const Z = normalQuantile(0.975, 0, 1);

/**
 * Chapman's estimate from two occasions (`chapman:1951`; variance of Seber 1970 in `seber:1982`): `m`
 * seen on the first, `c` on the second, `r` of these on both. The interval is normal on the log of the
 * copies not seen, so that it never falls under those that were.
 */
export function chapman(m: number, c: number, r: number): Estimate & { readonly variance: number } {
  if (!(r >= 0 && r <= Math.min(m, c)))
    throw new RangeError(`chapman requires 0 ≤ r ≤ m and c, got ${m}, ${c}, ${r}`);
  const estimate = ((m + 1) * (c + 1)) / (r + 1) - 1;
  const variance = ((m + 1) * (c + 1) * (m - r) * (c - r)) / ((r + 1) ** 2 * (r + 2));
  return { estimate, variance, interval95: logInterval(estimate, variance, m + c - r) };
}

/** One occasion: how many were seen, how many of these before, and how many were known until then. */
export interface Occasion {
  readonly caught: number;
  readonly again: number;
  readonly known: number;
}

/** Schnabel's estimate from several occasions (`schnabel:1938`), its interval by the Poisson law of the copies seen again. */
export function schnabel(occasions: readonly Occasion[]): Estimate {
  const { products, again } = sums(occasions);
  if (again === 0)
    return {
      estimate: Number.POSITIVE_INFINITY,
      interval95: [products / 3.689, Number.POSITIVE_INFINITY],
    };
  return {
    estimate: products / again,
    interval95: [products / poissonEnd(again, 0.975), products / poissonEnd(again, 0.025)],
  };
}

function sums(occasions: readonly Occasion[]): { products: number; again: number } {
  let products = 0;
  let again = 0;
  for (const one of occasions) {
    products += one.caught * one.known;
    again += one.again;
  }
  return { products, again };
}

/** End of the exact interval of a Poisson mean of which `n` were seen: the mean that leaves a tail. */
function poissonEnd(n: number, p: number): number {
  // The tail beyond falls as the mean grows, so that halving finds it.
  let [low, high] = [0, 2 * n + 30];
  const upper = p > 0.5;
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2;
    const below = poissonBelow(upper ? n : n - 1, middle);
    if (upper ? below > 1 - p : below > 1 - p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The chance of at most `n` where `mean` are expected. */
function poissonBelow(n: number, mean: number): number {
  let term = Math.exp(-mean);
  let sum = term;
  for (let k = 1; k <= n; k++) {
    term *= mean / k;
    sum += term;
  }
  return sum;
}

/** Schumacher and Eschmeyer's estimate from the same occasions, by regression (`schumacher:1943`). */
export function schumacherEschmeyer(occasions: readonly Occasion[]): number {
  let squares = 0;
  let products = 0;
  for (const { caught, again, known } of occasions) {
    squares += caught * known * known;
    products += again * known;
  }
  return squares / products;
}

/**
 * Chao's lower bound (`chao:1987`) from how many were seen once and twice in so many looks, with its
 * interval on the log scale; the form corrected for few counts where none was seen twice. Copies
 * that are never offered stay unseen whatever the effort.
 */
export function chao(
  seen: number,
  once: number,
  twice: number,
  looks: number,
): Estimate & { readonly variance: number } {
  const factor = (looks - 1) / looks;
  const rest = twice > 0 ? (once * once) / (2 * twice) : (once * (once - 1)) / 2;
  const estimate = seen + factor * rest;
  const variance = chaoVariance(once, twice, factor, estimate);
  return { estimate, variance, interval95: logInterval(estimate, variance, seen) };
}

function chaoVariance(once: number, twice: number, factor: number, estimate: number): number {
  if (twice === 0) {
    const all = (factor ** 2 * once * (2 * once - 1) ** 2) / 4;
    return (factor * once * (once - 1)) / 2 + all - (factor ** 2 * once ** 4) / (4 * estimate);
  }
  const ratio = once / twice;
  const squared = factor ** 2 * (ratio ** 4 / 4 + ratio ** 3);
  return twice * (squared + (factor * ratio ** 2) / 2);
}

/** Seen this often or less, a copy counts as rare (`chao:1992`). */
const RARE = 10;

/**
 * The abundance-based coverage estimate (`chao:1992`): what was seen often, and what was seen rarely
 * over the coverage of the rare, raised by how unevenly these turn up. A lower bound too where they do
 * so very unevenly.
 *
 * @param often `often[i]` copies were seen i + 1 times
 */
export function ace(often: readonly number[]): number {
  const once = often[0] ?? 0;
  const rare = often.slice(0, RARE).map((copies, i) => ({ copies, times: i + 1 }));
  const sum = (value: (one: (typeof rare)[number]) => number) =>
    rare.reduce((all, one) => all + value(one), 0);
  const copies = sum((one) => one.copies);
  const looks = sum((one) => one.copies * one.times);
  const common = often.reduce((all, one) => all + one, 0) - copies;
  const covered = looks > 0 ? 1 - once / looks : 1;
  // All were seen once: nothing tells how many were not.
  if (covered === 0) return Number.POSITIVE_INFINITY;
  const pairs = sum((one) => one.copies * one.times * (one.times - 1));
  const spread = looks > 1 ? (copies / covered) * (pairs / (looks * (looks - 1))) - 1 : 0;
  return common + copies / covered + (once / covered) * Math.max(0, spread);
}

/**
 * The chance that the next look is at a copy which was seen before, after Turing as `chao:2012` mend
 * it by what was seen twice.
 */
export function coverage(once: number, twice: number, looks: number): number {
  if (looks === 0) return 0;
  const unseen = (looks - 1) * once;
  const share = twice > 0 ? unseen / (unseen + 2 * twice) : onceAlone(once, looks);
  return 1 - (once / looks) * share;
}

function onceAlone(once: number, looks: number): number {
  const unseen = (looks - 1) * (once - 1);
  return once > 0 ? unseen / (unseen + 2) : 0;
}

/** The interval of a count of which some are certain: the log of the rest is taken for normal. */
function logInterval(estimate: number, variance: number, certain: number): Interval {
  const rest = estimate - certain;
  if (rest <= 0 || variance <= 0) return [certain, Math.max(certain, estimate)];
  const factor = Math.exp(Z * Math.sqrt(Math.log(1 + variance / rest ** 2)));
  return [certain + rest / factor, certain + rest * factor];
}

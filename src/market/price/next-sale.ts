import cdf from '@stdlib/stats-base-dists-normal-cdf';
import type { Price, Scatter } from './types.ts';

/**
 * Half the width, as a logarithm, of the middle interval of the next sale: a normal level and a
 * sale's scatter about it, found by halving.
 *
 * @param variance of the level, what moves until the sale included
 * @param inside the probability that it holds
 */
export function halfWidth(variance: number, scatter: Scatter, inside: number): number {
  const kinds = scatter.map(({ share, sd }) => ({
    share,
    sd: Math.hypot(Math.sqrt(variance), sd),
  }));
  const held = (half: number) =>
    kinds.reduce((sum, { share, sd }) => sum + share * (2 * cdf(half / sd, 0, 1) - 1), 0);
  let low = 0;
  let high = 10 * Math.max(...kinds.map(({ sd }) => sd));
  while (high - low > 1e-4 * high) {
    const middle = (low + high) / 2;
    if (held(middle) < inside) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The probability that the next sale fetches less than an amount above 0. */
export function chanceBelow({ level, ahead }: Price, scatter: Scatter, amount: number): number {
  const off = Math.log(amount) - level.log;
  return scatter.reduce(
    (sum, { share, sd }) => sum + share * cdf(off / Math.hypot(level.sd, ahead, sd), 0, 1),
    0,
  );
}

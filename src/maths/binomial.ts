import betaQuantile from '@stdlib/stats-base-dists-beta-quantile';
import normalQuantile from '@stdlib/stats-base-dists-normal-quantile';

/** Two ends, the lower one first. */
export type Interval = readonly [number, number];

/**
 * Wilson's score interval of a share, `x` of `n` (`wilson:1927`, `brown:2001`). It says how far
 * chance alone can carry the share of a sample; of a stream that people chose it says too little.
 *
 * @param level chance that the interval holds the share, above 0 and below 1
 * @throws RangeError unless 0 ≤ x ≤ n and n > 0; `x` need not be whole
 */
export function wilson(x: number, n: number, level = 0.95): Interval {
  check(x, n, level);
  const z = normalQuantile((1 + level) / 2, 0, 1);
  const p = x / n;
  const middle = p + (z * z) / (2 * n);
  const half = z * Math.sqrt((p * (1 - p)) / n + (z * z) / (4 * n * n));
  const scale = 1 + (z * z) / n;
  return [
    x === 0 ? 0 : Math.max(0, (middle - half) / scale),
    x === n ? 1 : Math.min(1, (middle + half) / scale),
  ];
}

/**
 * The equal-tailed interval of a share under Jeffreys' prior Beta(½, ½), with the rule of
 * `brown:2001`: from 0 where `x` is 0, up to 1 where `x` is `n`.
 *
 * @param level chance that the interval holds the share, above 0 and below 1
 * @throws RangeError unless 0 ≤ x ≤ n and n > 0; `x` need not be whole
 */
export function jeffreys(x: number, n: number, level = 0.95): Interval {
  check(x, n, level);
  const tail = (1 - level) / 2;
  const at = (p: number) => betaQuantile(p, x + 0.5, n - x + 0.5);
  return [x === 0 ? 0 : at(tail), x === n ? 1 : at(1 - tail)];
}

function check(x: number, n: number, level: number): void {
  if (!(n > 0 && x >= 0 && x <= n))
    throw new RangeError(`a share requires 0 ≤ x ≤ n and n > 0, got ${x} of ${n}`);
  if (!(level > 0 && level < 1))
    throw new RangeError(`a level lies between 0 and 1, not at ${level}`);
}

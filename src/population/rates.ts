import { type Counted, type Interval, jeffreys, type Shrinkage, wilson } from '../maths/index.ts';

/** A top rate, raw and in the light of the service's other printings. */
export interface Rate {
  /** Top over total; null where nothing is graded. */
  readonly rate: number | null;
  readonly interval95: Interval;
  readonly wilson95: Interval;
  readonly shrunk: number;
  readonly shrunk95: Interval;
}

/**
 * The rate of a printing that has a label of its own.
 *
 * @param sure share of the label's copies that are surely this printing's; the shrunk interval is
 *   taken at so many copies
 */
export function rateOf({ x, n }: Counted, learned: Shrinkage, sure: number): Rate {
  const { mean } = learned.of(x, n);
  const { interval95 } = learned.of(x * sure, n * sure);
  const raw = n > 0 ? { rate: x / n, interval95: jeffreys(x, n), wilson95: wilson(x, n) } : NOTHING;
  return { ...raw, shrunk: mean, shrunk95: interval95 };
}

const NOTHING = { rate: null, interval95: [0, 1], wilson95: [0, 1] } as const;

/**
 * The rate of a printing that has only a share s of a label. The label's rate is s times its own and
 * 1 − s times that of the others, of which only what printings of the service differ is known: so it
 * tells the printing's own rate, moved away from the service's mean by 1/s, as well as the number of
 * copies would whose rate had the same variance (moments, `gelman:2013`, section 2.5). Rates are then
 * taken at so many copies.
 *
 * @param sd standard deviation of the share
 */
export function lumpedRateOf(
  { x, n }: Counted,
  share: number,
  sd: number,
  learned: Shrinkage,
): Rate {
  if (n <= 0) return rateOf({ x: 0, n: 0 }, learned, 1);
  const { mean } = learned;
  const binomial = mean * (1 - mean);
  const between = binomial / (learned.alpha + learned.beta + 1);
  const others = (1 - share) ** 2 + 2 * sd ** 2;
  const noise = (others * between + binomial / n) / share ** 2;
  const worth = Math.min(n * share, binomial / noise);
  const own = Math.min(1, Math.max(0, (x / n - (1 - share) * mean) / share));
  const { mean: shrunk, interval95 } = learned.of(own * worth, worth);
  return {
    rate: x / n,
    interval95: jeffreys(own * worth, worth),
    wilson95: wilson(own * worth, worth),
    shrunk,
    shrunk95: interval95,
  };
}

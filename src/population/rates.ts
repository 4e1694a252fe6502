import betaQuantile from '@stdlib/stats-base-dists-beta-quantile';
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

/** The shares themselves are in doubt: the variance is this much larger. Judgement, no source. */
const LOOSE = 1.5;

const NOTHING = { rate: null, interval95: [0, 1], wilson95: [0, 1] } as const;

/**
 * The rate of a printing that has only a share of a label. The label's rate is the mean of the rates
 * of its printings, weighted by their shares; each differs from it by what printings of the service
 * differ. The best linear estimate (`gelman:2013`, section 2.5), put as a beta of its mean and
 * variance; the raw interval is taken at the copies' worth that this variance has.
 */
export function lumpedRateOf({ x, n }: Counted, share: number, learned: Shrinkage): Rate {
  if (n <= 0) return rateOf({ x: 0, n: 0 }, learned, 1);
  const { mean } = learned;
  const between = (mean * (1 - mean)) / (learned.alpha + learned.beta + 1);
  const rate = x / n;
  const within = Math.max(rate * (1 - rate), mean * (1 - mean) * 0.2) / n;
  const others = 1 - share;
  const spread = between * (share * share + others * others) + within;
  const gain = (between * share) / spread;
  const shrunk = Math.min(1 - 1e-6, Math.max(1e-6, mean + gain * (rate - mean)));
  const variance = LOOSE * (between - gain * between * share);
  const size = Math.max(2, (shrunk * (1 - shrunk)) / variance - 1);
  const at = (p: number) => betaQuantile(p, shrunk * size, (1 - shrunk) * size);
  const loose = others * others * 2 * between + within;
  const worth = Math.max(1, (rate * (1 - rate) || mean * (1 - mean)) / loose - 1);
  const worthOf = Math.min(n * share, worth);
  return {
    rate,
    interval95: jeffreys(rate * worthOf, worthOf),
    wilson95: wilson(rate * worthOf, worthOf),
    shrunk,
    shrunk95: [at(0.025), at(0.975)],
  };
}

import normalCdf from '@stdlib/stats-base-dists-normal-cdf';
import type { Low } from './types.ts';

/** What is known of a printing that tells few copies from few submissions. */
export interface Known {
  readonly graded: number;
  /** On offer or sold: raw, and graded. */
  readonly offeredRaw: number;
  readonly offeredGraded: number;
  /** Chance in one sealed product, the highest; undefined where not known. */
  readonly odds: number | undefined;
}

/** A population under this share of the dossier's middle one is called low. Judgement, no source. */
const LOW = 0.6;
/** Spread of the log of copies that exist, and of the share sent in, before anything is seen. Judgement, no source. */
const EXIST = 0.9;
const SENT = 0.7;

/**
 * For each printing with a low population, the probability that fewness is the greater part of it. The
 * log of the graded count is the log of the copies that exist and of the share sent in; raw beside
 * graded copies on offer tell of the second, the chance in a product of the first.
 */
export function whyLow(all: readonly Known[]): (Low | null)[] {
  const graded = all.filter((one) => one.graded > 0).map((one) => one.graded);
  if (graded.length < 3) return all.map(() => null);
  const middle = median(graded);
  const shares = all.filter((one) => one.offeredRaw + one.offeredGraded > 0).map(logOdds);
  const usual = shares.length > 0 ? median(shares) : 0;
  const odds = all.flatMap((one) => one.odds ?? []);
  const usualOdds = odds.length > 0 ? median(odds) : 1;
  return all.map((one) => {
    if (!(one.graded > 0 && one.graded < LOW * middle)) return null;
    return explained(one, Math.log(one.graded / middle), usual, usualOdds);
  });
}

function explained(one: Known, shortfall: number, usual: number, usualOdds: number): Low {
  const offers = one.offeredRaw + one.offeredGraded;
  const prior =
    one.odds === undefined ? 0 : Math.max(-2, Math.min(0, Math.log(one.odds / usualOdds)));
  const exists = {
    mean: prior,
    variance: one.odds === undefined ? EXIST ** 2 : (EXIST * 0.75) ** 2,
  };
  const measured = logOdds(one) - usual;
  const noise = 1 / (one.offeredRaw + 0.5) + 1 / (one.offeredGraded + 0.5);
  const gain = offers === 0 ? 0 : SENT ** 2 / (SENT ** 2 + noise);
  const sent = { mean: gain * measured, variance: SENT ** 2 * (1 - gain) };
  // Both add up to the shortfall: what each is believed to be once that is known.
  const spread = exists.variance + sent.variance;
  const rest = shortfall - exists.mean - sent.mean;
  const few = exists.mean + (exists.variance / spread) * rest;
  const variance = (exists.variance * sent.variance) / spread;
  const p = 1 - normalCdf(0, shortfall / 2 - few, Math.sqrt(variance));
  const settled = p < 0.1 || p > 0.9;
  return {
    p_few_exist: p,
    raw: one.offeredRaw,
    graded: one.offeredGraded,
    settle: settled ? null : settling(one, offers),
  };
}

/** Graded against raw copies on offer, as log odds. */
function logOdds({ offeredRaw, offeredGraded }: Known): number {
  return Math.log((offeredGraded + 0.5) / (offeredRaw + 0.5));
}

function settling(one: Known, offers: number): string {
  if (offers < 25)
    return `how many raw copies are on offer for each graded one (${offers} offers counted so far; some 25 would do)`;
  return one.odds === undefined
    ? 'in how many products it lies, and at what odds'
    : 'how many of its product were made';
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)] as number;
}

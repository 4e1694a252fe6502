import betaQuantile from '@stdlib/stats-base-dists-beta-quantile';
import type { Interval } from '../maths/index.ts';

/** A printing's share of a label that holds several. */
export interface Share {
  readonly printing: number;
  readonly mean: number;
  /** Central 95 %. */
  readonly interval95: Interval;
}

/** One of the printings under a label. */
export interface Lumped {
  readonly printing: number;
  /** Distinct copies that the owner looked at under the label and took for this printing. */
  readonly looked: number;
  /** Copies of it by services that list it apart; undefined where none does. */
  readonly apart: number | undefined;
}

/** Worth of what other services count, in copies looked at. Judgement, no source. */
const OF_OTHERS = 2;
/** A share before anything is seen: wide, and wider than even chances for two. Judgement, no source. */
const WIDE = 0.6;

/**
 * Splits a label among its printings: the shares have a Dirichlet posterior from the copies looked at
 * under it, before which each printing counts alike, and as other services count them where all are
 * listed apart there. The copies looked at are taken for a fair draw from the label: whoever seeks
 * one of the printings sees more of it.
 */
export function sharesOf(lump: readonly Lumped[]): Share[] {
  const known = lump.every(({ apart }) => apart !== undefined && apart > 0);
  const apart = lump.reduce((sum, one) => sum + (one.apart ?? 0), 0);
  const alphas = lump.map((one) => {
    const prior = known ? WIDE / 2 + (OF_OTHERS * (one.apart ?? 0)) / apart : WIDE;
    return prior + one.looked;
  });
  const all = alphas.reduce((sum, alpha) => sum + alpha, 0);
  return lump.map(({ printing }, i) => {
    const alpha = alphas[i] as number;
    const at = (p: number) => betaQuantile(p, alpha, all - alpha);
    return { printing, mean: alpha / all, interval95: [at(0.025), at(0.975)] };
  });
}

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
  /** Copies made, by the print runs that are claimed; undefined where none is. */
  readonly made: number | undefined;
  /** What raw copies were sold for, their middle; undefined where none was. */
  readonly price: number | undefined;
}

/** A population under this share of the dossier's middle one is called low. Judgement, no source. */
const LOW = 0.6;
/** Spread of the log of copies that exist, and of the share sent in, before anything is seen. Judgement, no source. */
const EXIST = 0.9;
const SENT = 0.7;
/** How far the chance in a product, and a print run, go astray in the log of copies that exist. Judgement, no source. */
const BY_ODDS = 1;
const BY_RUN = 0.5;
/** Half the copies cost about this much more in log, and how far demand moves it. Judgement, no source. */
const DEARER = -0.5;
const DEMAND = 0.8;

/** What is believed of a log. */
interface Normal {
  readonly mean: number;
  readonly variance: number;
}

/** A normal belief after a value was seen that lies about `slope` times it (`gelman:2013`, chapter 2). */
function after({ mean, variance }: Normal, seen: number, sd: number, slope = 1): Normal {
  const gain = (variance * slope) / (slope ** 2 * variance + sd ** 2);
  return { mean: mean + gain * (seen - slope * mean), variance: variance * (1 - gain * slope) };
}

/** The middle of the printings of a dossier, which each is held against. */
interface Usual {
  readonly graded: number;
  readonly sent: number;
  readonly odds: number;
  readonly made: number;
  readonly price: number;
}

/**
 * For each printing with a low population, the probability that fewness is the greater part of it. The
 * log of the graded count is the log of the copies that exist and of the share sent in; raw beside
 * graded copies on offer tell of the second; the chance in a product, print runs and the price of raw
 * copies, which scarce ones fetch more of, of the first. Prices mislead where nobody wants the printing.
 */
export function whyLow(all: readonly Known[]): (Low | null)[] {
  const graded = all.filter((one) => one.graded > 0).map((one) => one.graded);
  if (graded.length < 3) return all.map(() => null);
  const usual: Usual = {
    graded: median(graded),
    sent: median(all.filter((one) => one.offeredRaw + one.offeredGraded > 0).map(logOdds), 0),
    odds: median(all.flatMap((one) => one.odds ?? [])),
    made: median(all.flatMap((one) => one.made ?? [])),
    price: median(all.flatMap((one) => one.price ?? [])),
  };
  return all.map((one) =>
    one.graded > 0 && one.graded < LOW * usual.graded ? explained(one, usual) : null,
  );
}

function explained(one: Known, usual: Usual): Low {
  const exists = existing(one, usual);
  const offers = one.offeredRaw + one.offeredGraded;
  const noise = Math.sqrt(1 / (one.offeredRaw + 0.5) + 1 / (one.offeredGraded + 0.5));
  const before: Normal = { mean: 0, variance: SENT ** 2 };
  const sent = offers === 0 ? before : after(before, logOdds(one) - usual.sent, noise);
  // Both add up to the shortfall: what each is believed to be once that is known.
  const shortfall = Math.log(one.graded / usual.graded);
  const few = after(exists, shortfall - sent.mean, Math.sqrt(sent.variance));
  const p = 1 - normalCdf(0, shortfall / 2 - few.mean, Math.sqrt(few.variance));
  return {
    p_few_exist: p,
    raw: one.offeredRaw,
    graded: one.offeredGraded,
    settle: p < 0.1 || p > 0.9 ? null : settling(one, offers),
  };
}

/** The log of the copies that exist, against the middle printing, but for what is graded. */
function existing(one: Known, usual: Usual): Normal {
  let belief: Normal = { mean: 0, variance: EXIST ** 2 };
  if (one.odds !== undefined)
    belief = after(belief, Math.max(-3, Math.log(one.odds / usual.odds)), BY_ODDS);
  if (one.made !== undefined) belief = after(belief, Math.log(one.made / usual.made), BY_RUN);
  if (one.price !== undefined)
    belief = after(belief, Math.log(one.price / usual.price), DEMAND, DEARER);
  return belief;
}

/** Graded against raw copies on offer, as log odds. */
function logOdds({ offeredRaw, offeredGraded }: Known): number {
  return Math.log((offeredGraded + 0.5) / (offeredRaw + 0.5));
}

function settling(one: Known, offers: number): string {
  if (offers < 25)
    return `how many raw copies are on offer for each graded one (${offers} ${offers === 1 ? 'offer' : 'offers'} counted so far; some 25 would do)`;
  if (one.odds === undefined) return 'in how many products it lies, and at what odds';
  return one.made === undefined
    ? 'how many of its product were made'
    : 'what raw copies of it are sold for';
}

function median(values: readonly number[], without = 1): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)] ?? without;
}

import { civilOf, dayOf } from '../../src/evidence/index.ts';
import type { Chance } from '../simulator/chance.ts';

/**
 * The model of docs/methods/dating.md for a few exact days, written from that page alone. What the
 * page leaves to tables is copied here: prior odds of the readings, prior counts of the histograms,
 * and the spreads of the effects, which the page does not give.
 */
export const READINGS = 14;
const [BEFORE, AFTER, FEW, SWAPPED, FIRST, YEAR] = [1, 2, 3, 4, 5, 6];
export const ROW_SHIFT = 8;
export const SIBLING = 10;
export const NOISE = 11;
const [OTHER_MOMENT, NEAR_MOMENT] = [7, 12];
/** A source of a kind without habits of its own (`book`). */
const ODDS = [1, 0.03, 0.03, 0.08, 0.012, 0.03, 0.02, 0.03, 0.02, 0.02, 0.05, 0.08, 0.03, 0.02];

const swap = (day: number) => {
  const { year, month, dayOfMonth } = civilOf(day);
  return dayOfMonth > 12 ? day : dayOf(year, dayOfMonth, month);
};
const firstOf = (day: number) => day - civilOf(day).dayOfMonth + 1;
const yearOn = (day: number, by: number) => {
  const { year, month, dayOfMonth } = civilOf(day);
  return dayOf(year + by, month, month === 2 ? Math.min(28, dayOfMonth) : dayOfMonth);
};

/** 2 to 21 days, falling by 0.78 a day, 0.62 of it late. */
function fewDays(late: number): number {
  const size = Math.abs(late);
  if (size < 2 || size > 21) return 0;
  let all = 0;
  for (let n = 2; n <= 21; n++) all += 0.78 ** n;
  return ((late > 0 ? 0.62 : 0.38) * 0.78 ** size) / all;
}

function yearSlip(day: number, by: number): number {
  const { month } = civilOf(day);
  if (![11, 12, 1, 2].includes(month)) return 0.06;
  if (by < 0 !== month <= 2) return 0.1;
  return month === 12 || month === 1 ? 0.8 : 0.4;
}

/** Probability of the value `v` by each reading if the day is `d`, links and noise apart. */
export function byReading(v: number, d: number): number[] {
  const p = new Array<number>(READINGS).fill(0);
  const same = v === d;
  p[0] = same ? 1 : 0;
  p[BEFORE!] = v === d - 1 ? 1 : 0;
  p[AFTER!] = v === d + 1 ? 1 : 0;
  p[FEW!] = fewDays(v - d);
  p[SWAPPED!] = v === swap(d) ? 1 : 0;
  p[FIRST!] = v === firstOf(d) ? 1 : 0;
  const [back, on] = [yearSlip(d, -1), yearSlip(d, 1)];
  if (v === yearOn(d, -1)) p[YEAR!] = back;
  else if (v === yearOn(d, 1)) p[YEAR!] = on;
  else if (same) p[YEAR!] = 1 - back - on;
  return p;
}

/** Signed log2 bins: 0, then 1, 2–3, 4–7 … days on, then the same back. */
export function bin(delta: number): number {
  if (delta === 0) return 0;
  const octave = Math.min(14, Math.floor(Math.log2(Math.abs(delta))) + 1);
  return delta > 0 ? octave : 14 + octave;
}

const SMALL = [0.5, 0.5, 0.5, 0.5, 0.5, 0.4, 0.3, 0.3, 0.3, 0.2, 0.2, 0.1, 0.1, 0.1];
const NOISE_SIDE = [1, 2, 5, 9, 13, 14, 12, 10, 8, 6, 4, 3, 2, 1];
const NOISE_PRIOR = scaled(40, [0, ...NOISE_SIDE, ...NOISE_SIDE]);
const SEEN_PRIOR = scaled(8, [
  ...[4, 3, 4, 5, 6, 8, 9, 11, 12, 13, 13, 11, 7, 4, 2],
  ...SMALL.map((m) => 0.7 * m),
]);

function scaled(weight: number, mass: readonly number[]): number[] {
  const all = mass.reduce((a, b) => a + b, 0);
  return mass.map((m) => (weight * m) / all);
}

/** Probability of each single day of each bin. */
function histogram(chance: Chance, prior: readonly number[]): number[] {
  const mass = prior.map((a) => (a > 0 ? chance.gamma(a) : 0));
  const all = mass.reduce((a, b) => a + b, 0);
  return mass.map((m, b) => m / all / (b === 0 ? 1 : 2 ** ((b - 1) % 14)));
}

/** Prior standard deviations of the effects of a level, and how firmly they are held. */
const LEVELS = {
  dossier: [1, 1000, 0.8, 1000],
  kind: [0.4, 4, 0.4, 6],
  era: [0.4, 4, 0, 0],
  source: [0.9, 3, 0.8, 6],
  market: [0.5, 4, 0.5, 8],
} as const;

export interface Drawn {
  /** Shares of the readings, a row a source. */
  readonly shares: number[][];
  readonly noise: number[];
  readonly seen: number[];
  /** Chance that a statement of a copied run is copied, and that a run is. */
  readonly copying: number;
  readonly runs: number;
}

/** Everything but days and parents, from the prior: sources of one kind, in one market and era. */
export function drawPrior(chance: Chance, sources: number): Drawn {
  const spread = (sd: number, firm: number) =>
    sd === 0 ? 0 : Math.sqrt((firm * sd * sd) / 2 / chance.gamma(firm / 2));
  const level = ([sd, firm, sdEach, firmEach]: readonly [number, number, number, number]) => {
    const [all, each] = [spread(sd, firm), spread(sdEach, firmEach)];
    return () => {
      const common = chance.normal() * all;
      return Array.from({ length: READINGS }, () => common + chance.normal() * each);
    };
  };
  const shared = [LEVELS.dossier, LEVELS.kind, LEVELS.era].map((l) => level(l)());
  const own = [LEVELS.source, LEVELS.market].map((l) => level(l));
  const shares = Array.from({ length: sources }, () => {
    const effects = [...shared, ...own.map((draw) => draw())];
    const odds = ODDS.map((odd, r) => {
      if (r === 0) return 1;
      // No source has a lag, so these readings do not count.
      if (r === OTHER_MOMENT || r === NEAR_MOMENT) return 0;
      return odd * Math.exp(effects.reduce((sum, e) => sum + e[r]!, 0));
    });
    const all = odds.reduce((a, b) => a + b, 0);
    return odds.map((odd) => odd / all);
  });
  return {
    shares,
    noise: histogram(chance, NOISE_PRIOR),
    seen: histogram(chance, SEEN_PRIOR),
    copying: chance.beta(8, 1.5),
    runs: Math.max(0.5, chance.beta(3, 1.5)),
  };
}

/** Chance of a copied value: the parent's with 0.97, else written down wrong, mostly by days. */
export function copied(value: number, parent: number): number {
  if (value === parent) return 0.97;
  return 0.03 / (Math.abs(value - parent) <= 10 ? 12 : 600);
}

/** Probability of the weekdays of two releases of one market and channel, 0 for Monday. */
export function weekdays(a: number, b: number): number {
  const same = a === b ? 1 : 0;
  const dossier = (same + 5 / 7) / (1 + 5);
  const market = (same + 4 * dossier) / (1 + 4);
  return (1 / 7) * ((same + 4 * market) / (1 + 4));
}

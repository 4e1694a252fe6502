import type { DateProperty, SourceKind } from '../../../src/evidence/index.ts';

/**
 * The numbers of the prior that `docs/methods/dating.md` describes, copied from that page and from
 * the tables that it names, so that the two are written down apart: where the one changes and the
 * other does not, ranks cease to be uniform.
 */
export const READINGS = [
  'right',
  'day-before',
  'day-after',
  'few-days',
  'swapped',
  'first-of-month',
  'year-off',
  'other-moment',
  'near-moment',
  'cover-date',
  'row-shift',
  'filled-in',
  'sibling',
  'noise',
] as const;
export type Reading = (typeof READINGS)[number];

/** Odds against `right`; of the other moment and the days beside it, for a source that has a lag. */
const ODDS: Readonly<Record<Reading, number>> = {
  right: 1,
  'day-before': 0.03,
  'day-after': 0.03,
  'few-days': 0.08,
  swapped: 0.012,
  'first-of-month': 0.03,
  'year-off': 0.02,
  'other-moment': 2.5,
  'near-moment': 2.5 * 0.14,
  'cover-date': 0.02,
  'row-shift': 0.02,
  'filled-in': 0.02,
  sibling: 0.05,
  noise: 0.08,
};

/** What is particular to a kind of source. */
interface Manner {
  /** Factors on the odds of readings. */
  readonly odds: Partial<Record<Reading, number>>;
  /** Chance that it dates another moment. */
  readonly lag: number;
  /** How readily it takes from others. */
  readonly borrows: number;
}

export const MANNERS: Partial<Record<SourceKind, Manner>> = {
  'publisher-database': {
    odds: { sibling: 1.5, 'filled-in': 1.5, noise: 0.6 },
    lag: 0.06,
    borrows: 0.3,
  },
  magazine: { odds: {}, lag: 0.12, borrows: 1 },
  'press-release': {
    odds: { 'few-days': 1.5, noise: 0.6, 'row-shift': 0.3 },
    lag: 0.12,
    borrows: 0.2,
  },
  'store-listing': { odds: { 'few-days': 2, 'day-after': 1.5 }, lag: 0.2, borrows: 1 },
  newspaper: { odds: { 'row-shift': 0.3, 'filled-in': 0.3 }, lag: 0.12, borrows: 0.4 },
  advertisement: { odds: { 'few-days': 1.5, 'row-shift': 0.3 }, lag: 0.12, borrows: 0.3 },
  checklist: {
    odds: { 'first-of-month': 1.5, sibling: 1.5, 'row-shift': 1.5, 'filled-in': 1.5 },
    lag: 0.12,
    borrows: 1,
  },
  forum: { odds: { noise: 1.7, 'few-days': 1.5 }, lag: 0.12, borrows: 1 },
};

/** Odds of each reading for a kind of source, before any effect. */
export function oddsOf(kind: SourceKind): number[] {
  const factors = MANNERS[kind]!.odds;
  return READINGS.map((reading) => ODDS[reading] * (factors[reading] ?? 1));
}

/** Standard deviation of effects, and how firmly it is held; `Infinity` where it is not learned. */
export interface Level {
  readonly sd: number;
  readonly firm: number;
}

/** Of each level: effects on all errors together, and on each reading. */
export const LEVELS = {
  dossier: { all: { sd: 1, firm: Infinity }, one: { sd: 0.8, firm: Infinity } },
  kind: { all: { sd: 0.4, firm: 4 }, one: { sd: 0.4, firm: 6 } },
  era: { all: { sd: 0.4, firm: 4 } },
  source: { all: { sd: 0.9, firm: 3 }, one: { sd: 0.8, firm: 6 } },
  market: { all: { sd: 0.5, firm: 4 }, one: { sd: 0.5, firm: 8 } },
} as const;
/** A spread is at most so many times its mean. */
export const WIDEST = 2.5;

/** Few days: falls by so much a day, so much of it late, from 2 to 21 days. */
export const FEW_DAYS = { fall: 0.78, late: 0.62, from: 2, to: 21 } as const;

/** Share of those that miss another moment by days that miss it by one; the others by a few. */
export const BY_A_DAY = 0.55;

/** Weekdays: weight of the market, of the dossier, and of the even week. */
export const POOLED = { market: 4, dossier: 4, even: 5 } as const;

/** Share of neighbouring releases that share a day: prior counts of those that do, and do not. */
export const TOGETHER = [0.5, 100] as const;

/** Weight of a lag of so many days, either way. */
export const lagWeight = (days: number) => 1 / (12 * days ** 0.9 + 4);
/** Shortest and longest lag that is looked for. */
export const LAGS = [2, 400] as const;
/** How often it must recur, and at what share of the releases that its source shares with others. */
export const RECURS = { times: 2, share: 0.06 } as const;

/**
 * Odds of deriving from a source that it cites, and from the others together, of whom there are
 * at least so many; factor where the other cites it; chance that none takes from one it does not cite.
 */
export const KIN = { cited: 4, others: 0.25, few: 20, against: 0.1, guarded: 0.5 } as const;
/**
 * A copied value is written down wrong with this chance, then mostly within so many days; chance of
 * the first day of a month or year that is copied as a day.
 */
export const MISCOPY = { chance: 0.03, within: 10, first: 0.05 } as const;
export const COPYING = { rate: [8, 1.5], runs: [3, 1.5], leastRuns: 0.5, most: 0.995 } as const;

/** A row's slip of the pen, and how many other values it may give. */
export const PEN = { chance: 0.03, values: 200 } as const;
/** Share of the weight of an uncertain value that goes to noise. */
export const DOUBT = 0.25;

/** Prior counts of a histogram: their sum, and their shape in bins on signed log2 days. */
export interface Signed {
  readonly weight: number;
  readonly zero: number;
  readonly up: readonly number[];
  readonly down: readonly number[];
}

const NOISE = [1, 2, 5, 9, 13, 14, 12, 10, 8, 6, 4, 3, 2, 1];
const SMALL = [0.5, 0.5, 0.5, 0.5, 0.5, 0.4, 0.3, 0.3, 0.3, 0.2, 0.2, 0.1, 0.1, 0.1];
const small = (factor: number) => SMALL.map((m) => m * factor);

export const NOISE_HISTOGRAM: Signed = { weight: 40, zero: 0, up: NOISE, down: NOISE };

/** Days from the value to the release (`announced`, `printed-on`, `not-before`), or from the release to the value. */
export const DELAYS: Partial<
  Record<DateProperty, Signed & { readonly counted: 'to-release' | 'from-release' }>
> = {
  announced: {
    weight: 8,
    zero: 40,
    up: [2, 3, 6, 8, 9, 8, 7, 4, 2, 1, 0.5, 0.2, 0.1, 0.1],
    down: small(2),
    counted: 'to-release',
  },
  'printed-on': {
    weight: 8,
    zero: 12,
    up: [3, 4, 7, 12, 16, 16, 12, 6, 3, 2, 1, 0.5, 0.2, 0.1],
    down: SMALL,
    counted: 'to-release',
  },
  'seen-by': {
    weight: 8,
    zero: 4,
    up: [3, 4, 5, 6, 8, 9, 11, 12, 13, 13, 11, 7, 4, 2],
    down: small(0.7),
    counted: 'from-release',
  },
  'not-before': {
    weight: 8,
    zero: 4,
    up: [3, 4, 5, 6, 8, 9, 11, 12, 12, 10, 7, 4, 2, 1],
    down: small(0.7),
    counted: 'to-release',
  },
  'distributed-until': {
    weight: 8,
    zero: 3,
    up: [1, 2, 3, 4, 6, 8, 10, 13, 15, 14, 10, 5, 3, 1],
    down: SMALL,
    counted: 'from-release',
  },
};

/** Whole years from −3 to 3 between release and value, and the rest. */
export const YEARS: Partial<
  Record<DateProperty, { weight: number; mass: readonly number[]; counted: 1 | -1 }>
> = {
  'label-year': { weight: 8, mass: [0.7, 1.5, 8, 68, 17, 2, 0.8, 2], counted: 1 },
  'copyright-year': { weight: 8, mass: [0.3, 0.3, 2, 64, 17, 6, 3, 7], counted: -1 },
};

/** Leads of covers: weekly bins from −70 days on, and one of 4000 days for the rest. */
export const COVERS = {
  weight: 6,
  first: -70,
  weeks: 50,
  rest: 4000,
  mass: (week: number) => 100 * Math.exp(-0.5 * (((-70 + 7 * week + 3.5) / 7 - 6) / 6) ** 2) + 2,
  restMass: 40,
  /** How firmly a periodical's own leads follow those of all. */
  pooled: 4,
} as const;

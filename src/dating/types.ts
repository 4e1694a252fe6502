/**
 * What dating answers, in the shape that `printlore date --json` prints and the page receives.
 * Days are ISO 8601; probabilities lie between 0 and 1. Names with underscores are fixed by the
 * description of the command (`docs/guide/date.md`).
 */
export interface Dating {
  readonly printings: readonly DatedPrinting[];
  /** Ids, most probably earliest first. */
  readonly order: readonly string[];
  readonly first: readonly { readonly id: string; readonly p: number }[];
  /** Neighbours in `order`: how probable it is that they came in that order, or on one day. */
  readonly sequences: readonly Sequence[];
  readonly sources: readonly DatedSource[];
  readonly weekdays: readonly WeekdayHabit[];
  readonly leads: readonly Lead[];
  /** Largest standard error of any `p_best` from sampling; 0 where the answer is exact. */
  readonly monte_carlo_error: number;
  readonly seed: number;
  /** `first` shows an answer soon, `refined` is the one to quote. */
  readonly effort: 'first' | 'refined';
}

export interface DatedPrinting {
  readonly id: string;
  /** Null only where nothing bounds the day. */
  readonly best: string | null;
  /** EDTF of what is known. */
  readonly edtf: string;
  readonly p_best: number;
  /** Shortest run of days that holds at least 0.95; null where nothing bounds the day. */
  readonly interval95: readonly [string, string] | null;
  readonly p_interval: number;
  /** The fewest days that hold 99.9 % of the probability, in order of time. */
  readonly days: readonly (readonly [string, number])[];
  /**
   * `day`: one day holds at least half; `window`: dated, but to no day;
   * `bounded`: no dated claim, only what sequence and dossier leave; `open`: nothing bounds it.
   */
  readonly state: 'day' | 'window' | 'bounded' | 'open';
  /** Separate peaks of the distribution, the likeliest first, where there are two or more. */
  readonly modes: readonly { readonly from: string; readonly to: string; readonly p: number }[];
  /** Printings that share this release, by the evidence so far. */
  readonly together: readonly string[];
  readonly claims: readonly ExplainedClaim[];
  /** Why, in a sentence or two; words that decide stand between asterisks. */
  readonly why: string;
}

/** Ways in which a claim comes about. */
export type Reading =
  | 'right'
  | 'next-day'
  | 'few-days'
  | 'swapped'
  | 'first-of-month'
  | 'year-off'
  | 'other-moment'
  | 'row-shift'
  | 'filled-in'
  | 'cover-date'
  | 'sibling'
  | 'copied'
  | 'pen'
  | 'noise'
  | 'lead'
  | 'bound'
  | 'cover-year';

export interface ExplainedClaim {
  /** Row of `claims.csv`, the header being row 1. */
  readonly row: number;
  readonly source: string;
  readonly property: string;
  readonly value: string;
  /** That the value, read with its own precision and for its own property, holds. */
  readonly p_right: number;
  /** The most probable reading, in words. */
  readonly explanation: string;
  readonly reading: Reading;
  /** The other readings worth naming, likeliest first, with their probability. */
  readonly others: readonly {
    readonly reading: Reading;
    readonly explanation: string;
    readonly p: number;
  }[];
  /** Probability of `reading`. */
  readonly p_reading: number;
  /** The evidence makes the claim improbable (`p_right` under one half, and not a mere bound or lead). */
  readonly slip: boolean;
  /** First and last day that the value can mean, for drawing; null where open. */
  readonly span: readonly [string | null, string | null];
}

export interface Sequence {
  readonly earlier: string;
  readonly later: string;
  readonly p: number;
  readonly p_same_day: number;
  /** Set where a row of `orders.csv` says it. */
  readonly stated: boolean;
}

export interface DatedSource {
  readonly id: string;
  /** Share of its on-sale claims that hold the true day; null where it makes none. */
  readonly accuracy: number | null;
  readonly accuracy95: readonly [number, number] | null;
  readonly claims: number;
  /** The direct source only; the p of one source add up to at most 1. */
  readonly derives: readonly { readonly from: string; readonly p: number }[];
  /** What it does besides being right, commonest first. */
  readonly habits: readonly {
    readonly reading: Reading;
    readonly words: string;
    readonly share: number;
    readonly share95: readonly [number, number];
  }[];
}

export interface WeekdayHabit {
  readonly market: string;
  readonly channel: string;
  /** Share of releases on Monday, Tuesday … Sunday. */
  readonly shares: readonly number[];
  readonly releases: number;
}

/** A piece of evidence not yet seen. */
export interface Lead {
  readonly printing: string;
  /** Kind of source to look for. */
  readonly kind: string;
  /** Expected information about the release day, in bits. */
  readonly gain_bits: number;
  readonly words: string;
}

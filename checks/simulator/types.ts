import type { Evidence, SourceKind } from '../../src/evidence/index.ts';

export type Difficulty = 'medium' | 'hard';

/** `software`: few sources, each late or early in its own way; `sparse`; `copies`. */
export type Style = 'cards' | 'software' | 'sparse' | 'copies';

export interface Wish {
  readonly seed: number;
  readonly printings: number;
  readonly claims: number;
  readonly difficulty: Difficulty;
  /** `cards` when left out. */
  readonly style?: Style;
  /** Left out: 9 for a dozen printings, some 20 for sixty, 60 to 100 for thousands. */
  readonly sources?: number;
}

/** Ways in which the simulator makes a day that a source states for a release. */
export const MISTAKES = [
  'next-day',
  'few-days',
  'swapped',
  'first-of-month',
  'year-off',
  'other-moment',
  'row-shift',
  'filled-in',
  'sibling',
  'noise-near',
  'noise-far',
] as const;
export type Mistake = (typeof MISTAKES)[number];

/** Printings that truly came out together. */
export interface Release {
  readonly id: string;
  readonly product: string;
  readonly market: string;
  readonly edition: string;
  readonly wave: string;
  readonly channel: string;
  readonly day: number;
  readonly printings: readonly string[];
  /** Nobody states its exact day. */
  readonly coarse: boolean;
}

/** How one source truly behaves; rates are shares of its own statements. */
export interface Habits {
  readonly id: string;
  readonly kind: SourceKind;
  readonly home: string;
  /** Chance of being right, on the logit scale, at home and in the middle of the years. */
  readonly accuracy: number;
  readonly abroad: number;
  /** Change of the logit from the first to the last year. */
  readonly drift: number;
  /** Shares of the mistakes among its mistakes, in the order of `MISTAKES`. */
  readonly mistakes: readonly number[];
  /** Days from release to the moment that it states instead, and their spread. */
  readonly lag: number;
  readonly spread: number;
  /** Share of its statements that date that other moment, apart from mistakes. */
  readonly lagShare: number;
  /** Day that it fills in where it knows none. */
  readonly fill: number;
  readonly pen: number;
  /** Weights of day, month, month with XX, year, interval. */
  readonly precision: readonly number[];
  readonly approximate: number;
  readonly uncertain: number;
  readonly published: number;
}

/** A source took its statements about one product from another. */
export interface Derivation {
  readonly source: string;
  readonly from: string;
  readonly products: readonly string[];
  readonly rate: number;
  readonly cited: boolean;
}

export interface ClaimTruth {
  readonly row: number;
  /** Of on-sale claims: `right`, a mistake, `copied` or `coarse`; else the property. */
  readonly how: string;
  readonly pen: boolean;
  /** For on-sale claims: the value, as written, holds the true day. */
  readonly right: boolean;
}

/** Everything that the simulator knows and the evidence does not say. */
export interface Truth {
  /** Day number of each printing's release. */
  readonly days: ReadonlyMap<string, number>;
  readonly releases: readonly Release[];
  readonly claims: ReadonlyMap<number, ClaimTruth>;
  readonly habits: readonly Habits[];
  readonly derivations: readonly Derivation[];
  /** Shares of Monday … Sunday, by `market/channel`. */
  readonly weekdays: ReadonlyMap<string, readonly number[]>;
}

export interface Simulated {
  readonly evidence: Evidence;
  readonly truth: Truth;
}

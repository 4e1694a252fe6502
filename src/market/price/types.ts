import type { Day } from '../../evidence/index.ts';

/** A grading service's grades, worst first, each one a column of prices of its own. */
export interface PricedService {
  readonly id: string;
  readonly grades: readonly string[];
  /** The lowest grade that is counted as a top grade; empty where the service names none. */
  readonly top: string;
}

/** A sale that a price may be learned from. */
export interface Sale {
  readonly day: Day;
  /** Ids of the printings that it may be of; one where it is known. */
  readonly printings: readonly string[];
  /** Null where it was sold raw. */
  readonly service: string | null;
  readonly grade: string | null;
  /** In the desk's currency, above 0. */
  readonly price: number;
}

/** A printing whose price is asked for, and what may tell it before a sale does. */
export interface PricedPrinting {
  readonly id: string;
  /** Words that printings may share, by name: language, market, finish … */
  readonly shared: Readonly<Record<string, string>>;
  /** How many are graded, all services; null where no report lists it. */
  readonly graded: number | null;
}

/** What prices are learned from. */
export interface PriceGround {
  readonly printings: readonly PricedPrinting[];
  readonly services: readonly PricedService[];
  readonly sales: readonly Sale[];
  /** The day that prices hold for; no sale is later. */
  readonly on: Day;
  /** What a raw card of this kind may fetch before any sale is seen, in the desk's currency. */
  readonly before: number;
}

/** The price of one printing at one grade, or raw. */
export interface Price {
  /** Null for raw. */
  readonly service: string | null;
  readonly grade: string | null;
  /** Median of the next sale, in the desk's currency. */
  readonly price: number;
  /** Holds the next sale, odd ones included, with probability 0.8, up to 75 days on. */
  readonly interval80: readonly [number, number];
  /** Natural logarithm of `price`, and the standard deviation of it: what is not known of the level. */
  readonly level: { readonly log: number; readonly sd: number };
  /** Standard deviation of what printing and market may move until the next sale, as a logarithm. */
  readonly ahead: number;
  /** How many sales are of this very cell. */
  readonly sales: number;
}

/** How sales scatter about their level: kinds of sale with their share and standard deviation. */
export type Scatter = readonly { readonly share: number; readonly sd: number }[];

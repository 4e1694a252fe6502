/** What is known of a source from elsewhere; an entry of `Dating.sources` fits as it is. */
export interface Reliability {
  readonly id: string;
  /** Share of its on-sale claims that hold the true day, 0 to 1; null where it makes none. */
  readonly accuracy: number | null;
  /** Whom it took things from directly, with probabilities that add up to at most 1. */
  readonly derives: readonly { readonly from: string; readonly p: number }[];
}

/** A property of a printing that is no date, and how probable each claimed value is. */
export interface Fact {
  readonly printing: string;
  /** A column of `printings.csv`, `exists` or `print-run`. */
  readonly property: string;
  /** The claimed values, the most probable first; with `p_other` their `p` add up to 1. */
  readonly values: readonly FactValue[];
  /** Probability that none of the claimed values is right. */
  readonly p_other: number;
  /** More than one value is claimed, the collector's own row counted. */
  readonly disputed: boolean;
  readonly claims: readonly FactClaim[];
  /** Why, in a sentence or two; words that decide stand between asterisks. */
  readonly why: string;
}

export interface FactValue {
  /** As most of those who claim it write it. */
  readonly value: string;
  readonly p: number;
  /** Rows of `claims.csv` that state it, the header being row 1. */
  readonly claims: readonly number[];
  /** The row of `printings.csv` says so. */
  readonly own: boolean;
}

export interface FactClaim {
  /** Row of `claims.csv`, the header being row 1. */
  readonly row: number;
  readonly source: string;
  readonly value: string;
  /** That the value is right for the printing that is meant. */
  readonly p_right: number;
  /** The evidence makes the claim improbable (`p_right` under one half). */
  readonly slip: boolean;
}

/** One source's word on one item. */
export interface Voice {
  readonly item: number;
  readonly source: number;
  /** Index of the value in the vocabulary of the item's group. */
  readonly value: number;
  /** How much it counts, above 0; 1 for a claim that is certainly about this item. */
  readonly weight: number;
  /** Chance that it was taken from another source that says this very thing. */
  readonly copied: number;
  /** Chance that it was taken from a source that speaks of the item, whatever that says; below 1. */
  readonly derived: number;
}

/** Something with one true value out of a vocabulary that it shares with others of its group. */
export interface Item {
  readonly group: number;
  /** Values of the vocabulary that may be true; all others together are one further candidate. */
  readonly candidates: readonly number[];
}

/** Which rates the voices share: cells in rows of `columns`, whose rates add up to 1 in each row. */
export interface Tying {
  readonly columns: number;
  /** Pseudo-observations in each cell, before any voice is heard. */
  readonly pseudo: Float64Array;
  /** The cell of a source's word where `truth` is the true value (-1: one that nobody names). */
  cell(source: number, truth: number, value: number): number;
  /** Share of the cell's rate that falls on this very value, above 0. */
  share(group: number, truth: number, value: number): number;
}

/** Words on items, and what is assumed of those who spoke them. */
export interface Problem {
  readonly items: readonly Item[];
  readonly voices: readonly Voice[];
  readonly tying: Tying;
  /** Size of each group's vocabulary, values that nobody names counted. */
  readonly vocabulary: readonly number[];
  /** Pseudo-observations of each value of a vocabulary. */
  readonly classPseudo: number;
  /**
   * `left out`: rates are integrated, each voice judged by what its source said elsewhere;
   * `counted`: rates are plugged in, as in Dawid and Skene's own EM.
   */
  readonly own: 'left out' | 'counted';
  /** Sweeps end when no probability changes by more than this, above 0. */
  readonly enough: number;
}

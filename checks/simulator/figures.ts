/** Stated probability, what came true, and how many there were. */
export interface Bin {
  readonly stated: number;
  readonly came: number;
  readonly count: number;
}

/** Sorts stated probabilities into ten bins of equal width, each with its mean and what came true. */
export function binned(pairs: readonly (readonly [p: number, came: boolean])[]): Bin[] {
  const sums = Array.from({ length: 10 }, () => ({ stated: 0, came: 0, count: 0 }));
  for (const [p, came] of pairs) {
    const bin = sums[Math.min(9, Math.floor(p * 10))]!;
    bin.stated += p;
    bin.came += came ? 1 : 0;
    bin.count += 1;
  }
  return sums.map(({ stated, came, count }) => ({
    stated: count > 0 ? stated / count : 0,
    came: count > 0 ? came / count : 0,
    count,
  }));
}

/** Figures of one dossier, or, by `pool`, of many. Shares lie between 0 and 1. */
export interface Score {
  readonly printings: number;
  readonly exact: number;
  /** Mean natural logarithm of the probability of the true day, never below log the floor. */
  readonly log: number;
  readonly covered: number;
  readonly claimed: number;
  readonly p_best: number;
  /** Printings whose days do not add up to one, with a thousandth left for what is cut off. */
  readonly not_one: number;
  readonly bins: readonly Bin[];
  readonly right: readonly Bin[];
  readonly accuracy: { readonly stated: number; readonly held: number };
  readonly derived: {
    readonly named: number;
    readonly named_right: number;
    readonly true: number;
    readonly found: number;
    readonly bins: readonly Bin[];
  };
}

/** One fact of which two sources both speak. */
export interface Compared {
  /** They say the same. */
  readonly same: boolean;
  /** Probability that what both say is right, 0 to 1; without meaning where they differ. */
  readonly right: number;
  /** Wrong values among which one that errs chooses, above 0. */
  readonly falseValues: number;
}

/** How two sources are thought to work before they are compared; all between 0 and 1. */
export interface Assumed {
  readonly errorRate: number;
  /** Share of its words that a copier takes over. */
  readonly copyRate: number;
  /** Chance that one of the two takes from the other. */
  readonly prior: number;
}

/**
 * Chance that one of two sources takes from the other, whichever: shared wrong values tell, shared
 * right ones hardly, differences speak against it (`dong:2009`, section 3). Where it is not known
 * whether a shared value is right, both cases are weighed for that fact.
 *
 * Misleads where a habit that both have (the home market's number, an old name) makes them wrong
 * alike: that looks like copying.
 */
export function dependence(facts: readonly Compared[], assumed: Assumed): number {
  const { prior } = assumed;
  const logRatio = facts.reduce((sum, fact) => sum + Math.log(ratioOf(fact, assumed)), 0);
  return 1 / (1 + ((1 - prior) / prior) * Math.exp(-logRatio));
}

/** How much more probable the fact is if one of the two copies. */
function ratioOf({ same, right, falseValues }: Compared, assumed: Assumed): number {
  const { errorRate: e, copyRate: c } = assumed;
  if (!same) return 1 - c;
  const agree = right * (1 - e) ** 2 + ((1 - right) * e ** 2) / falseValues;
  const taken = right * (1 - e) + (1 - right) * e;
  return (c * taken + (1 - c) * agree) / agree;
}

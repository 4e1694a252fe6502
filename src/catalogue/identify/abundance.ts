/** Counts of copies by printing from one place, such as copies on offer. */
export interface Counts {
  readonly by: ReadonlyMap<string, number>;
  /**
   * How far a count goes astray from how many there are, one standard deviation of its logarithm
   * besides chance.
   */
  readonly sd: number;
}

/** How unlike printings are before anything is counted: sd of the log number. Judgement, no source. */
const UNLIKE = 1.2;

/**
 * Expected numbers of copies about, by id, on a scale of their own: each kind of count says how
 * many a printing has against the others, with its own doubt and that of chance, and few counts
 * are drawn to the middle. A printing that no kind of count has seen gets the middle.
 */
export function expectedNumbers(
  ids: readonly string[],
  counts: readonly Counts[],
): ReadonlyMap<string, number> {
  const weights = ids.map(() => 1 / UNLIKE ** 2);
  const sums = ids.map(() => 0);
  for (const { by, sd } of counts) {
    const seen = ids.map((id) => by.get(id) ?? 0);
    if (seen.every((count) => count === 0)) continue;
    // Half a copy more, so that a printing that was not met has a logarithm too.
    const logs = seen.map((count) => Math.log(count + 0.5));
    const middle = logs.reduce((sum, one) => sum + one, 0) / logs.length;
    seen.forEach((count, i) => {
      const weight = 1 / (sd ** 2 + 1 / (count + 0.5));
      weights[i] = (weights[i] as number) + weight;
      sums[i] = (sums[i] as number) + weight * ((logs[i] as number) - middle);
    });
  }
  return new Map(
    ids.map((id, i) => {
      const weight = weights[i] as number;
      return [id, Math.exp((sums[i] as number) / weight + 0.5 / weight)];
    }),
  );
}

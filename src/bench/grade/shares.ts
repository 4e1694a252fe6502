import gammaln from '@stdlib/math-base-special-gammaln';

/**
 * Shares of a service's grades for one printing, drawn towards those of all its printings as far as
 * the printings are alike: Dirichlet–multinomial, its concentration integrated over a grid from 1 to
 * 1,000 in equal steps of its logarithm (`minka:2000`).
 *
 * Counts are of copies that were sent in, resubmissions among them, and no sample of all copies.
 * @param own copies by grade, worst to best, of this printing
 * @param all the same for every printing of the service, this one among them
 * @throws RangeError where rows differ in length
 */
export function sharesOf(
  own: readonly number[],
  all: readonly (readonly number[])[],
): readonly number[] {
  return sharesAmong(all, own.length)(own);
}

/**
 * The same for many printings of one service, what they have in common worked out once.
 *
 * @param all copies by grade of every printing of the service
 * @param grades how many grades the service has
 */
export function sharesAmong(
  all: readonly (readonly number[])[],
  grades: number,
): (own: readonly number[]) => readonly number[] {
  if (all.some((row) => row.length !== grades))
    throw new RangeError(`Every printing has ${grades} grades.`);
  const mean = meanOf(grades, all);
  const grid = Array.from({ length: 31 }, (_, i) => 10 ** (i / 10));
  const logs = grid.map((c) => all.reduce((sum, row) => sum + logLikelihood(row, mean, c), 0));
  const top = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - top));
  const sum = weights.reduce((a, b) => a + b, 0);
  return (own) => {
    if (own.length !== grades) throw new RangeError(`Every printing has ${grades} grades.`);
    const total = own.reduce((sum, n) => sum + n, 0);
    return own.map((n, g) =>
      grid.reduce(
        (share, c, i) =>
          share + ((weights[i] as number) / sum) * ((n + c * (mean[g] as number)) / (total + c)),
        0,
      ),
    );
  };
}

/** Shares over all printings, half a copy added to each grade so that none is impossible. */
function meanOf(grades: number, all: readonly (readonly number[])[]): readonly number[] {
  const counts = Array.from({ length: grades }, (_, g) =>
    all.reduce((sum, row) => sum + (row[g] as number), 0.5),
  );
  const total = counts.reduce((a, b) => a + b, 0);
  return counts.map((n) => n / total);
}

function logLikelihood(row: readonly number[], mean: readonly number[], c: number): number {
  const total = row.reduce((a, b) => a + b, 0);
  return row.reduce(
    (sum, n, g) => sum + gammaln(n + c * (mean[g] as number)) - gammaln(c * (mean[g] as number)),
    gammaln(c) - gammaln(total + c),
  );
}

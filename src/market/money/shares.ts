/**
 * A whole amount shared by weight, so that the parts add up to it: each gets the whole units of its
 * exact share, and what remains goes to the largest fractions, of equal ones to the earlier. Where
 * no weight is above 0, all weigh alike.
 *
 * @param total a whole number, 0 or above or below
 * @param weights whole numbers, none below 0
 * @returns one whole part for each weight
 * @throws {RangeError} without a weight, or with one below 0
 */
export function sharedOut(total: number, weights: readonly number[]): number[] {
  if (weights.length === 0) throw new RangeError('an amount is shared among one at least');
  if (weights.some((weight) => !(weight >= 0))) throw new RangeError('a weight is below 0');
  const sum = weights.reduce((a, b) => a + b, 0);
  if (sum === 0)
    return sharedOut(
      total,
      weights.map(() => 1),
    );
  const size = BigInt(Math.abs(total));
  const under = BigInt(sum);
  const exact = weights.map((weight) => size * BigInt(weight));
  const parts = exact.map((over) => Number(over / under));
  const left = Math.abs(total) - parts.reduce((a, b) => a + b, 0);
  const fractions = exact.map((over, i) => ({ i, fraction: over % under }));
  fractions.sort((a, b) =>
    a.fraction === b.fraction ? a.i - b.i : a.fraction > b.fraction ? -1 : 1,
  );
  for (const { i } of fractions.slice(0, left)) parts[i] = (parts[i] as number) + 1;
  return total < 0 ? parts.map((part) => -part) : parts;
}

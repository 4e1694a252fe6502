/** A claim that a thing fell on `day`, or on one day of `range`, by a source right with chance `r`. */
export interface MixtureClaim {
  readonly day?: number;
  readonly range?: readonly [number, number];
  readonly r: number;
  /** Place, from 1, of the claim that this one repeats with chance `c`. */
  readonly copies?: number;
  readonly c?: number;
}

/** Chance of a claim if the true day is `d` of `window` days, noise being uniform over them. */
function chanceOf(claim: MixtureClaim, d: number, window: number): number {
  const [from, to] = claim.range ?? [claim.day!, claim.day!];
  const right = from <= d && d <= to ? claim.r / (to - from + 1) : 0;
  return right + (1 - claim.r) / window;
}

/**
 * Posterior over the days 0 to `window` - 1 of one event from its claims, and their probability.
 *
 * @param prior weight of each day, all above 0
 */
export function enumerateDays(
  claims: readonly MixtureClaim[],
  prior: readonly number[],
): { posterior: number[]; evidence: number } {
  const window = prior.length;
  const all = prior.reduce((a, b) => a + b, 0);
  const joint = prior.map((weight, d) =>
    claims.reduce((product, claim) => {
      const alone = chanceOf(claim, d, window);
      if (claim.copies === undefined) return product * alone;
      const same = claims[claim.copies - 1]!.day === claim.day ? 1 : 0;
      return product * (claim.c! * same + (1 - claim.c!) * alone);
    }, weight / all),
  );
  const evidence = joint.reduce((a, b) => a + b, 0);
  return { posterior: joint.map((j) => j / evidence), evidence };
}

/**
 * Posterior days of several events and mean reliabilities, each source being right at one unknown
 * rate out of `grid`, all equally probable beforehand.
 *
 * @param days for each event the day that each source states
 */
export function enumerateReliability(
  days: readonly (readonly number[])[],
  window: number,
  grid: readonly number[],
): { items: number[][]; means: number[] } {
  const sources = days[0]!.length;
  const items = days.map(() => new Array<number>(window).fill(0));
  const means = new Array<number>(sources).fill(0);
  let total = 0;
  const flat = new Array<number>(window).fill(1);
  const visit = (rates: readonly number[]): void => {
    if (rates.length < sources) {
      for (const rate of grid) visit([...rates, rate]);
      return;
    }
    const each = days.map((stated) =>
      enumerateDays(
        stated.map((day, s) => ({ day, r: rates[s]! })),
        flat,
      ),
    );
    const weight = each.reduce((product, { evidence }) => product * evidence, 1);
    total += weight;
    each.forEach(({ posterior }, i) => {
      posterior.forEach((p, d) => {
        items[i]![d]! += weight * p;
      });
    });
    rates.forEach((rate, s) => {
      means[s]! += weight * rate;
    });
  };
  visit([]);
  return {
    items: items.map((row) => row.map((sum) => sum / total)),
    means: means.map((sum) => sum / total),
  };
}

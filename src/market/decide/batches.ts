import { type BinaryProgram, chooseBest } from '../../maths/index.ts';
import { amountOf, type Money } from '../money/currencies.ts';
import { nearest } from '../money/exact.ts';
import type { Decision, Tier } from './types.ts';

/** Copies that are best sent in together. */
export interface Batch {
  readonly service: string;
  readonly tier: string;
  readonly copies: readonly string[];
}

/** The best choice of batches, and how sure it is that there is none better. */
export interface Batches {
  readonly batches: readonly Batch[];
  /** Sum of the copies' expected gains less one postage a batch. */
  readonly gain: number;
  /** Fees and postage. */
  readonly cost: number;
  /** No choice gains more. */
  readonly bound: number;
}

const inUnits = (money: Money) => nearest(amountOf(money));

/**
 * Chooses which copies to send where: each at most once, at least as many in a batch as its tier
 * asks for, one postage a batch, fees and postage within the budget; the greatest sum of expected
 * gains, by integer programming.
 *
 * @param budget in whole units of the desk's currency; null without a limit
 */
export async function bestBatches(
  decisions: readonly Pick<Decision, 'copy' | 'options'>[],
  tiers: readonly Tier[],
  budget: number | null,
): Promise<Batches> {
  const places = decisions.flatMap(({ copy, options }) =>
    options.map((option) => ({
      copy,
      gain: option.expectedGain,
      at: tiers.findIndex((one) => one.service === option.service && one.tier === option.tier),
    })),
  );
  const first = places.length;
  const solved = await chooseBest(programOf(places, tiers, budget));
  const chosen = places.filter((_, i) => solved.chosen[i]);
  const batches = tiers.flatMap(({ service, tier }, t): Batch[] => {
    if (!solved.chosen[first + t]) return [];
    return [{ service, tier, copies: chosen.filter(({ at }) => at === t).map(({ copy }) => copy) }];
  });
  const cost =
    chosen.reduce((sum, { at }) => sum + inUnits((tiers[at] as Tier).fee), 0) +
    tiers.reduce(
      (sum, { postage }, t) => sum + (solved.chosen[first + t] ? inUnits(postage) : 0),
      0,
    );
  return { batches, gain: solved.gain, cost, bound: solved.bound };
}

/** Variables: each copy at each tier that is open to it, then each tier. */
function programOf(
  places: readonly { readonly copy: string; readonly gain: number; readonly at: number }[],
  tiers: readonly Tier[],
  budget: number | null,
): BinaryProgram {
  const first = places.length;
  const byCopy = new Map<string, number[]>();
  for (const [i, { copy }] of places.entries()) byCopy.set(copy, [...(byCopy.get(copy) ?? []), i]);
  const once = [...byCopy.values()].map((own) => ({
    sum: own.map((i) => [i, 1] as const),
    most: 1,
  }));
  const open = places.map(({ at }, i) => ({
    sum: [[i, 1] as const, [first + at, -1] as const],
    most: 0,
  }));
  const enough = tiers.map(({ minCopies }, t) => ({
    sum: [
      [first + t, Math.max(1, minCopies)] as const,
      ...places.flatMap(({ at }, i) => (at === t ? [[i, -1] as const] : [])),
    ],
    most: 0,
  }));
  const spent = {
    sum: [
      ...places.map(({ at }, i) => [i, inUnits((tiers[at] as Tier).fee)] as const),
      ...tiers.map(({ postage }, t) => [first + t, inUnits(postage)] as const),
    ],
    most: budget ?? 0,
  };
  return {
    variables: first + tiers.length,
    gain: [
      ...places.map(({ gain }, i) => [i, gain] as const),
      ...tiers.map(({ postage }, t) => [first + t, -inUnits(postage)] as const),
    ],
    limits: [...once, ...open, ...enough, ...(budget === null ? [] : [spent])],
  };
}

import { amountOf, type Money } from '../money/currencies.ts';
import { nearest } from '../money/exact.ts';
import type { DecisionGround, GradeChances, HeldCopy, Option, Tier } from './types.ts';
import { expectedPrice } from './worth.ts';

const inUnits = (money: Money) => nearest(amountOf(money));

/** Statuses in which a raw copy can be sent in. */
const SENDABLE: readonly HeldCopy['status'][] = ['bought', 'arrived', 'kept'];

/**
 * The tiers that are open to a raw copy, with what each is expected to gain: price once graded, over
 * the chances of its grades, less the price raw, less the fee. A tier whose limit of value is under
 * the expected price is shut.
 */
export function optionsOf(
  copy: HeldCopy,
  prices: DecisionGround['prices'],
  tiers: readonly Tier[],
): Option[] {
  const raw = expectedPrice(prices, copy.printings, null, null);
  if (copy.service !== null || raw === undefined || !SENDABLE.includes(copy.status)) return [];
  return tiers.flatMap((tier): Option[] => {
    const chances = copy.gradeChances.find(({ service }) => service === tier.service);
    const outcomes = chances === undefined ? [] : outcomesOf(copy, prices, chances);
    if (chances === undefined || outcomes.length === 0) return [];
    const graded = outcomes.reduce((sum, { p, price }) => sum + p * price, 0);
    if (tier.maxValue !== null && graded > inUnits(tier.maxValue)) return [];
    return [optionOf(tier, raw, graded, outcomes, chances)];
  });
}

function outcomesOf(
  copy: HeldCopy,
  prices: DecisionGround['prices'],
  chances: GradeChances,
): Option['outcomes'] {
  return Object.entries(chances.p).flatMap(([grade, p]) => {
    const price = expectedPrice(prices, copy.printings, chances.service, grade);
    return price === undefined || p === 0 ? [] : [{ grade, p, price }];
  });
}

function optionOf(
  tier: Tier,
  raw: number,
  graded: number,
  outcomes: Option['outcomes'],
  { by, ungraded }: GradeChances,
): Option {
  const fee = inUnits(tier.fee);
  const postageShare = inUnits(tier.postage) / tier.minCopies;
  const sum = (of: (one: Option['outcomes'][number]) => number) =>
    outcomes.reduce((total, one) => total + one.p * of(one), 0);
  const limit = tier.maxValue === null ? Number.POSITIVE_INFINITY : inUnits(tier.maxValue);
  const over = tier.upcharge === null ? 0 : inUnits(tier.upcharge);
  return {
    service: tier.service,
    tier: tier.tier,
    expectedGain: graded - raw - fee,
    outcomes,
    spread: Math.sqrt(sum(({ price }) => (price - graded) ** 2)),
    pLoss: sum(({ price }) => (price - fee - postageShare < raw ? 1 : 0)),
    upcharge: over * sum(({ price }) => (price > limit ? 1 : 0)),
    ungraded:
      ungraded === null
        ? null
        : { p: ungraded, cost: inUnits(tier.ungradedFee ?? tier.fee) + postageShare },
    postageShare,
    days: tier.days,
    by,
  };
}

/** The best of the open tiers once its share of a batch's postage is taken off; null if none gains. */
export function bestOption(options: readonly Option[]): { option: Option; gain: number } | null {
  let best: { option: Option; gain: number } | null = null;
  for (const option of options) {
    const gain = option.expectedGain - option.postageShare;
    if (gain > 0 && gain > (best?.gain ?? 0)) best = { option, gain };
  }
  return best;
}

import { amountOf, type Money } from '../money/currencies.ts';
import { nearest } from '../money/exact.ts';
import { becauseOf } from './because.ts';
import { hingeOf } from './hinge.ts';
import { bestOption, optionsOf } from './options.ts';
import type { Advice, Decision, DecisionGround, HeldCopy } from './types.ts';
import { expectedPrice } from './worth.ts';

/** Statuses in which a copy can still go back or be complained about. */
const OPEN: readonly HeldCopy['status'][] = ['bought', 'arrived', 'kept', 'disputed'];
const GONE: readonly HeldCopy['status'][] = ['returned', 'sold'];

/**
 * What may be done with each copy, what each way is expected to be worth, and which is best by
 * expectation. Expectations are over medians of prices; terms and fees are the owner's entries, and
 * sellers' terms and local law decide. No promise of a price or a grade.
 *
 * @param bids the highest bid for each offered copy, in the desk's currency
 */
export function decide(
  ground: DecisionGround,
  bids: ReadonlyMap<string, number>,
): readonly Decision[] {
  return ground.copies.map((copy) => decisionOf(copy, ground, bids.get(copy.id) ?? null));
}

function decisionOf(
  copy: HeldCopy,
  { prices, tiers, currency, on }: DecisionGround,
  highestBid: number | null,
): Decision {
  const worth = GONE.includes(copy.status)
    ? undefined
    : expectedPrice(prices, copy.printings, copy.service, copy.grade);
  const keep = worth ?? null;
  const back = returnOf(copy);
  const complain = complaintOf(copy, keep);
  const options = optionsOf(copy, prices, tiers);
  const best = bestOption(options);
  const ways: [Advice, number | null][] = [
    ['keep', keep],
    ['return', back],
    ['complain', complain],
    ['submit', best === null || keep === null ? null : keep + best.gain],
  ];
  const advice = greatest(ways);
  const decided = {
    copy: copy.id,
    keep,
    return: back,
    complain,
    sell: keep === null || copy.sellingFeeRate === null ? null : keep * (1 - copy.sellingFeeRate),
    equalRefund: back === null || keep === null ? null : Math.max(0, back - keep),
    submit: best && {
      service: best.option.service,
      tier: best.option.tier,
      expectedGain: best.gain,
    },
    options,
    advice,
    highestBid,
  };
  return {
    ...decided,
    hingesOn: hingeOf(decided, copy, currency),
    because: becauseOf(decided, copy, currency, on),
  };
}

/** The way that is worth most; of equal ones the first, which is the least trouble. */
function greatest(ways: readonly [Advice, number | null][]): Advice | null {
  let best: Advice | null = null;
  let most = Number.NEGATIVE_INFINITY;
  for (const [way, worth] of ways) {
    if (worth === null || worth <= most) continue;
    best = way;
    most = worth;
  }
  return best;
}

/** Who a return goes back to: a carrier takes none. */
const TAKES_BACK = (against: string) => against !== 'carrier';

/** The price paid less what sending it back costs; null where it is shut or its terms are not known. */
function returnOf(copy: HeldCopy): number | null {
  const open = copy.clock.open.some(({ against, left }) => left >= 0 && TAKES_BACK(against));
  if (!OPEN.includes(copy.status) || !open || copy.returnShipping === null) return null;
  const paid = paidFor(copy);
  return paid === null ? null : paid - inUnits(copy.returnShipping);
}

/** What was offered back on top of keeping it; null where nothing was, or all periods have passed. */
function complaintOf(copy: HeldCopy, keep: number | null): number | null {
  const open = copy.clock.open.some(({ left }) => left >= 0);
  if (!OPEN.includes(copy.status) || !open || keep === null || copy.offeredBack === null)
    return null;
  return keep + inUnits(copy.offeredBack);
}

/** The price alone, in the desk's currency. */
export function paidFor({ landed }: HeldCopy): number | null {
  if ('why' in landed) return null;
  const price = landed.lines.find(({ name }) => name === 'price');
  return price === undefined ? null : inUnits(price.share);
}

function inUnits(money: Money): number {
  return nearest(amountOf(money));
}

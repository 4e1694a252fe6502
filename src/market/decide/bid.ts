import type { DecisionGround, HeldCopy } from './types.ts';
import { lowPrice } from './worth.ts';

/** What a copy would cost landed at a price in the desk's currency, in smallest units. */
export type LandedAt = (price: number) => number | undefined;

/**
 * The highest price at which an offered copy costs no more, landed, than what it fetches less than
 * with the chance of regret: P(worth less than its cost) stays at or under the limit. In smallest
 * units of the desk's currency; 0 where no bid is low enough, undefined where something needed is
 * not known. Landed costs jump where duty or tax begin, so a lower price may cost more than a higher
 * one never does: they only rise.
 *
 * @param unit smallest units in one unit of the desk's currency
 */
export function highestBid(
  copy: HeldCopy,
  prices: DecisionGround['prices'],
  regretLimit: number,
  landedAt: LandedAt,
  unit: number,
): number | undefined {
  const worth = lowPrice(prices, copy.printings, copy.service, copy.grade, regretLimit);
  if (worth === undefined) return undefined;
  const most = Math.floor(worth * unit);
  if (landedAt(0) === undefined) return undefined;
  let low = 0;
  let high = most + 1;
  if ((landedAt(0) as number) > most) return 0;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if ((landedAt(middle) as number) <= most) low = middle;
    else high = middle;
  }
  return low;
}

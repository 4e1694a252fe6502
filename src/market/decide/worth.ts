import { chanceBelow } from '../price/next-sale.ts';
import type { Price } from '../price/types.ts';
import type { DecisionGround } from './types.ts';

/** What a copy may be, with probabilities that add up to 1. */
type Among = readonly { readonly id: string; readonly p: number }[];

interface Part {
  readonly p: number;
  readonly price: Price;
}

/** The price of each printing that a copy may be; undefined where one has none at that grade. */
function partsOf(
  prices: DecisionGround['prices'],
  among: Among,
  service: string | null,
  grade: string | null,
): readonly Part[] | undefined {
  const parts: Part[] = [];
  for (const { id, p } of among) {
    const price = prices.of.get(id)?.find((one) => one.service === service && one.grade === grade);
    if (price === undefined) return undefined;
    parts.push({ p, price });
  }
  return parts.length === 0 ? undefined : parts;
}

/** What a copy is expected to fetch: the median of each printing, by how probable the printing is. */
export function expectedPrice(
  prices: DecisionGround['prices'],
  among: Among,
  service: string | null,
  grade: string | null,
): number | undefined {
  return partsOf(prices, among, service, grade)?.reduce(
    (sum, { p, price }) => sum + p * price.price,
    0,
  );
}

/**
 * The amount that a copy fetches less than with a given chance, odd sales included.
 *
 * @param chance between 0 and 1, both excluded
 */
export function lowPrice(
  prices: DecisionGround['prices'],
  among: Among,
  service: string | null,
  grade: string | null,
  chance: number,
): number | undefined {
  const parts = partsOf(prices, among, service, grade);
  return parts && quantileOf(parts, prices.scatter, chance);
}

/** The chance that a copy fetches less than an amount above 0; undefined where a price is missing. */
export function chanceUnder(
  prices: DecisionGround['prices'],
  among: Among,
  service: string | null,
  grade: string | null,
  amount: number,
): number | undefined {
  const scatter = service === null ? prices.scatter.raw : prices.scatter.graded;
  return partsOf(prices, among, service, grade)?.reduce(
    (sum, { p, price }) => sum + p * chanceBelow(price, scatter, amount),
    0,
  );
}

/**
 * The amount under which a copy falls with a given chance, over several grades of a service that it
 * may get; grades without a price are left out.
 *
 * @param grades with probabilities that add up to 1
 */
export function lowPriceOver(
  prices: DecisionGround['prices'],
  among: Among,
  service: string,
  grades: readonly { readonly grade: string; readonly p: number }[],
  chance: number,
): number | undefined {
  const parts = grades.flatMap(({ grade, p: share }) =>
    (partsOf(prices, among, service, grade) ?? []).map(({ p, price }) => ({ p: share * p, price })),
  );
  const all = parts.reduce((sum, { p }) => sum + p, 0);
  return all > 0 ? quantileOf(parts, prices.scatter, chance * all) : undefined;
}

function quantileOf(
  parts: readonly Part[],
  { raw, graded }: DecisionGround['prices']['scatter'],
  chance: number,
): number {
  const below = (log: number) =>
    parts.reduce((sum, { p, price }) => {
      const scatter = price.service === null ? raw : graded;
      return sum + p * chanceBelow(price, scatter, Math.exp(log));
    }, 0);
  const logs = parts.map(({ price }) => price.level.log);
  let low = Math.min(...logs) - 12;
  let high = Math.max(...logs) + 12;
  while (high - low > 1e-6) {
    const middle = (low + high) / 2;
    if (below(middle) < chance) low = middle;
    else high = middle;
  }
  return Math.exp(low);
}

import cdf from '@stdlib/stats-base-dists-normal-cdf';
import quantile from '@stdlib/stats-base-dists-normal-quantile';
import { chanceBelow } from '../price/next-sale.ts';
import type { Price } from '../price/types.ts';
import type { DecisionGround } from './types.ts';

/** A chance that is met so nearly is met. */
const NEAR = 1e-9;
const MOST_STEPS = 80;
/** Chances nearer to 0 or 1 are taken for it. */
const NEVER = 1e-12;

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
  const normals = parts.flatMap(({ p, price: { service, level, ahead } }) =>
    (service === null ? raw : graded).map(({ share, sd }) => ({
      p: p * share,
      mean: level.log,
      sd: Math.hypot(level.sd, ahead, sd),
    })),
  );
  const all = normals.reduce((sum, { p }) => sum + p, 0);
  const share = Math.min(1 - NEVER, Math.max(NEVER, chance / all));
  const over = (log: number) =>
    normals.reduce((sum, { p, mean, sd }) => sum + p * cdf((log - mean) / sd, 0, 1), 0) / all -
    share;
  // The quantile of a mixture lies among those of its parts.
  const ends = normals.map(({ mean, sd }) => mean + sd * quantile(share, 0, 1));
  return Math.exp(risingRoot(over, Math.min(...ends), Math.max(...ends)));
}

/** Where a rising function crosses nothing between two ends: by false position and halving in turns. */
function risingRoot(of: (x: number) => number, from: number, to: number): number {
  let [low, high, under, over] = [from, to, of(from), of(to)];
  for (let step = 0; step < MOST_STEPS && over - under > NEAR; step++) {
    const share = step % 2 === 0 ? over / (over - under) : 0.5;
    const x = high - share * (high - low);
    const y = of(x);
    if (Math.abs(y) < NEAR) return x;
    if (y < 0) [low, under] = [x, y];
    else [high, over] = [x, y];
  }
  return (low + high) / 2;
}

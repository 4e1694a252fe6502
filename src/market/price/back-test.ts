import type { Day } from '../../evidence/index.ts';
import { pricesOf } from './predict.ts';
import type { PriceGround } from './types.ts';

/** How the newest sales fell against the prices that the earlier ones gave. */
export interface BackTest {
  /** Sales of the last days that were left out and foretold. */
  readonly sales: number;
  /** How many of them fell inside their 80 % interval. */
  readonly inside: number;
  /** Median of |ln(sold / foretold)|; null without a sale. */
  readonly error: number | null;
  readonly days: number;
}

const DAYS = 75;

/**
 * Foretells the sales of the last 75 days from the ones before, as a reader would have been told
 * then. Sales that may be of several printings are not foretold. Misleads with few sales: of ten,
 * eight inside may as well be six or ten.
 */
export function backTest(ground: PriceGround, seed = 1): BackTest {
  const cut = (ground.on - DAYS) as Day;
  const before = ground.sales.filter(({ day }) => day <= cut);
  const newest = ground.sales.filter(({ day, printings }) => day > cut && printings.length === 1);
  if (newest.length === 0) return { sales: 0, inside: 0, error: null, days: DAYS };
  const prices = pricesOf({ ...ground, sales: before, on: cut }, seed);
  let inside = 0;
  const errors: number[] = [];
  for (const { printings, service, grade, price } of newest) {
    const told = prices.of
      .get(printings[0] as string)
      ?.find((one) => one.service === service && one.grade === grade);
    if (told === undefined) throw new RangeError(`${printings[0]} has no price`);
    const [low, high] = told.interval80;
    if (price >= low && price <= high) inside++;
    errors.push(Math.abs(Math.log(price / told.price)));
  }
  errors.sort((a, b) => a - b);
  const error = errors[errors.length >> 1] as number;
  return { sales: newest.length, inside, error, days: DAYS };
}

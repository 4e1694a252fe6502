import type { PricesAnswer, SaleMark, WirePrice } from '../../contract/index.ts';
import { type Day, dayFrom, sayDay } from '../../evidence/index.ts';
import { sayP } from '../words/index.ts';

/** An estimated amount, in three figures and no more digits than the currency needs. */
export function amount(value: number): string {
  if (value >= 1000) return Number(value.toPrecision(3)).toLocaleString('en');
  return value >= 100 ? value.toFixed(0) : value.toFixed(value >= 10 ? 1 : 2);
}

/** What a price is of: raw, or a service and grade. */
export function cellName(
  { service, grade }: Pick<WirePrice, 'service' | 'grade'>,
  titles: ReadonlyMap<string, string>,
): string {
  return service === null ? 'raw' : `${titles.get(service) ?? service} ${grade ?? ''}`.trim();
}

/** What the price of a cell rests on. */
export function explainPrice(
  { price, interval80: [low, high], sales }: WirePrice,
  currency: string,
  on: string,
): string {
  const basis =
    sales === 0
      ? 'Never sold so far: it rests on the printing’s other sales, on what grades add to other printings, and on printings like it.'
      : `It rests on ${sales === 1 ? 'one sale' : `${sales} sales`} of this very kind and on all the others.`;
  return `Half of the next sales should be above ${amount(price)} ${currency}; eight of ten, odd ones included, between ${amount(low)} and ${amount(high)}, up to 75 days after ${sayDay(dayFrom(on))}. ${basis} No promise.`;
}

/** How the newest sales fell against what was foretold. */
export function sayBackTest(back: NonNullable<PricesAnswer['backTest']>): string {
  const { sales, inside, error, days } = back;
  if (error === null) return `In the last ${days} days nothing was sold to try that on.`;
  return `Tried on the last ${days} days, foretold from the sales before: ${inside} of ${sales} sales fell within their range; half were off by less than ${Math.round(100 * Math.expm1(error))} %.`;
}

/** One sale in words: what, when, where, for how much, and what became of it. */
export function explainSale(
  sale: SaleMark,
  titles: ReadonlyMap<string, string>,
  currency: string,
): string {
  const { day, kind, price, venue, home, rateOf, odd, leftOut, perhaps, row } = sale;
  const when = day === null ? 'on a day not known' : `on ${sayDay(day as Day)}`;
  const verb = { sold: 'Sold', asking: 'Asked', unpaid: 'Sold, but not paid,' }[kind];
  const rate =
    rateOf === null || home === null
      ? ''
      : ` (${amount(home)} ${currency} at the rate of ${sayDay(dayFrom(rateOf))})`;
  const where = venue === '' ? '' : `, ${venue}`;
  const weight =
    leftOut !== null
      ? ` No price is learned from it: ${leftOut}.`
      : odd !== null && odd > 0.5
        ? ` It is odd with probability ${sayP(odd)} and counts for little.`
        : '';
  const which = perhaps ? ' It may be of another printing.' : '';
  return `${verb} ${cellName(sale, titles)} ${when} for ${price ?? '?'} ${sale.currency ?? ''}${rate}${where}; row ${row} of sales.csv.${weight}${which}`;
}

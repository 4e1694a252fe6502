import type { PricesAnswer, PrintingPrices, SaleMark, WirePrice } from '../../contract/index.ts';
import { shownSales } from '../../dossier/index.ts';
import { isoOf } from '../../evidence/index.ts';
import type { Price } from '../../market/index.ts';
import { Refused } from '../refusal.ts';
import type { Priced } from './pricing.ts';

/** The prices of every printing, as the page gets them. */
export function pricesOnWire({ shown, found, reply }: Priced): PricesAnswer {
  const { version, dossier } = shown;
  if (!found || !reply) return { ...NOTHING, version };
  const { ground, home, leftOut, assumed } = found;
  const tops = new Set(
    ground.services.map(({ id, grades, top }) => `${id} ${top || grades.at(-1)}`),
  );
  const own = new Map<string, number>();
  for (const { printings } of ground.sales)
    for (const id of printings) own.set(id, (own.get(id) ?? 0) + 1);
  const reasons = new Map<string, number[]>();
  for (const { row, why } of leftOut) reasons.set(why, [...(reasons.get(why) ?? []), row]);
  return {
    version,
    on: isoOf(ground.on),
    currency: home.currency,
    services: ground.services.map(({ id }) => ({ id, title: titleOf(dossier, id) })),
    printings: ground.printings.map(({ id }) => ({
      id,
      sales: own.get(id) ?? 0,
      prices: (reply.prices.of.get(id) ?? [])
        .filter(
          ({ service, grade, sales }) =>
            service === null || sales > 0 || tops.has(`${service} ${grade}`),
        )
        .map(priceOnWire),
    })),
    backTest: { ...reply.back },
    leftOut: [...reasons].map(([why, rows]) => ({ why, rows })),
    assumed: [...assumed],
  };
}

const NOTHING: Omit<PricesAnswer, 'version'> = {
  ...{ on: null, currency: '', services: [], printings: [], backTest: null },
  ...{ leftOut: [], assumed: [] },
};

function priceOnWire({ service, grade, price, interval80: [low, high], sales }: Price): WirePrice {
  return { service, grade, price, interval80: [low, high], sales };
}

function titleOf({ tables }: Priced['shown']['dossier'], id: string): string {
  const table = tables.get('services.csv');
  for (const row of table?.rows() ?? [])
    if (table?.value(row, 'id') === id) return table.value(row, 'title') || id;
  return id;
}

/** One printing's prices with every sale of it. Throws `Refused` for one that has none. */
export function printingPricesOnWire(
  { shown, found, reply }: Priced,
  printing: string,
): PrintingPrices {
  const prices = reply?.prices.of.get(printing);
  if (!found || !reply || !prices)
    throw new Refused(
      'not-found',
      `${printing} has no price: no printing, or no day in the tables.`,
    );
  const sales = shownSales(shown.dossier, found, reply.prices)
    .filter(({ printings }) => printings.includes(printing))
    .map(
      ({ printings, rateOf, ...sale }): SaleMark => ({
        ...sale,
        rateOf: rateOf === null ? null : isoOf(rateOf),
        perhaps: printings.length > 1,
      }),
    );
  return {
    version: shown.version,
    on: isoOf(found.ground.on),
    day: found.ground.on,
    currency: found.home.currency,
    prices: prices.map(priceOnWire),
    sales,
    course: reply.prices.course.map((step) => ({ ...step })),
  };
}

import type { Price } from '../../market/index.ts';
import type { Extant, PrintingCount } from '../../population/index.ts';
import type { Count, ToldExtant, ToldPrice } from './types.ts';

/** What the services have counted of a printing. */
export function countsOf(counted: PrintingCount | undefined): Count[] {
  return (counted?.services ?? []).map((one) => ({
    service: one.service,
    asOf: one.as_of,
    labels: one.labels,
    total: one.total,
    total95: one.total95,
    top: one.top,
    rate: one.rate,
    rate95: one.interval95,
    lumpedWith: one.lumped_with,
  }));
}

/** How many certified copies of it can turn up. */
export function toldExtant(extant: Extant | null): ToldExtant | null {
  if (extant === null) return null;
  const { estimate, interval95, method, bound, seen, again, from, to } = extant;
  return { estimate, interval95, method, bound, seen, again, from, to };
}

/** Raw, and the grades of which a sale is known: the others are told by their neighbours alone. */
export function toldPrices(prices: readonly Price[]): ToldPrice[] {
  return prices
    .filter(({ service, sales }) => service === null || sales > 0)
    .map(({ service, grade, price, interval80, sales }) => ({
      service,
      grade,
      median: price,
      interval80,
      sales,
    }));
}

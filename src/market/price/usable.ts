import type { Day } from '../../evidence/index.ts';
import type { Currency } from '../money/currencies.ts';
import { exactOf, nearest } from '../money/exact.ts';
import { exchanged, type Rates } from '../money/rates.ts';
import type { PricedService, Sale } from './types.ts';

/** A row of `sales.csv` as it was read; null where a cell is empty or at fault. */
export interface SaleRow {
  /** As a spreadsheet counts. */
  readonly row: number;
  /** The last day that its date can mean. */
  readonly day: Day | null;
  /** Ids of the printings that it may be of. */
  readonly printings: readonly string[];
  readonly service: string | null;
  readonly grade: string | null;
  readonly kind: 'sold' | 'asking' | 'unpaid';
  /** A decimal number as written. */
  readonly price: string | null;
  readonly currency: Currency | null;
}

/** A row that no price is learned from. */
export interface LeftOut {
  readonly row: number;
  readonly why: string;
}

/** What prices can be learned from, and what cannot. */
export interface UsableSales {
  readonly sales: readonly (Sale & { readonly row: number })[];
  readonly leftOut: readonly LeftOut[];
}

/**
 * The sales among rows that prices can be learned from, in the desk's currency at the rate of their
 * day. Asking prices and unpaid sales are no sales.
 */
export function usableSales(
  rows: readonly SaleRow[],
  about: {
    readonly printings: ReadonlySet<string>;
    readonly services: readonly PricedService[];
    readonly rates: Rates;
    readonly home: Currency;
    readonly on: Day;
  },
): UsableSales {
  const sales: (Sale & { row: number })[] = [];
  const leftOut: LeftOut[] = [];
  for (const row of rows) {
    const sale = saleOf(row, about);
    if (typeof sale === 'string') leftOut.push({ row: row.row, why: sale });
    else sales.push({ ...sale, row: row.row });
  }
  return { sales, leftOut };
}

function saleOf(
  { day, printings, service, grade, kind, price, currency }: SaleRow,
  about: Parameters<typeof usableSales>[1],
): Sale | string {
  if (kind === 'asking') return 'an asking price is no sale';
  if (kind === 'unpaid') return 'it was not paid';
  if (day === null) return 'its day is not known';
  if (day > about.on) return 'it is after the day that prices hold for';
  if (printings.length === 0) return 'its printing is not known';
  const unknown = printings.find((id) => !about.printings.has(id));
  if (unknown !== undefined) return `${unknown} is no printing of this dossier`;
  const of = gradeFault(service, grade, about.services);
  if (of !== undefined) return of;
  if (price === null || currency === null) return 'its price or currency is not known';
  const from = about.rates.on(currency, day);
  const to = about.rates.on(about.home, day);
  if (from === undefined) return `rates.csv has no rate of ${currency}`;
  if (to === undefined) return `rates.csv has no rate of ${about.home}`;
  const home = nearest(exchanged(exactOf(price), from, to));
  if (!(home > 0)) return `a price of ${price} is no sale`;
  return { day, printings, service, grade: service === null ? null : grade, price: home };
}

function gradeFault(
  service: string | null,
  grade: string | null,
  services: readonly PricedService[],
): string | undefined {
  if (service === null) return undefined;
  const known = services.find(({ id }) => id === service);
  if (known === undefined) return `services.csv has no grades of ${service}`;
  if (grade === null) return 'its grade is not known';
  return known.grades.includes(grade) ? undefined : `${grade} is no grade of ${service}`;
}

import type { Day } from '../evidence/index.ts';
import type { PricedPrinting, PricedService, RateRow, SaleRow } from '../market/index.ts';
import { daysOf } from './cell-meaning.ts';
import { FaultList } from './faults.ts';
import { rowsOf } from './rows-of.ts';
import { servicesOf } from './services.ts';
import { standingOf } from './standing.ts';
import type { Dossier } from './types.ts';

/** The last day that a date in EDTF can mean; null where there is none. */
export function lastDay(text: string): Day | null {
  const last = daysOf(text)?.last ?? Number.NaN;
  return Number.isFinite(last) ? (last as Day) : null;
}

/** The rows of `rates.csv`. */
export function rateRowsOf(dossier: Dossier): RateRow[] {
  return rowsOf(dossier, 'rates.csv', (cell) => ({
    day: lastDay(cell('date')),
    currency: cell('currency'),
    perEur: cell('per_eur'),
  })).filter((row): row is RateRow => row.day !== null && row.perEur !== '');
}

/** The rows of `sales.csv`. */
export function saleRowsOf(dossier: Dossier): SaleRow[] {
  const printings = standingOf(dossier);
  return rowsOf(dossier, 'sales.csv', (cell, row) => ({
    row,
    day: lastDay(cell('date')),
    printings: printings(cell('printing')),
    service: cell('service') || null,
    grade: cell('grade') || null,
    kind: (cell('kind') || 'sold') as SaleRow['kind'],
    price: cell('price') || null,
    currency: cell('currency') || null,
  }));
}

/** The grading services, their grades worst first. */
export function gradedBy(dossier: Dossier): PricedService[] {
  const services = servicesOf(dossier.tables.get('services.csv'), new FaultList());
  return [...services.values()].map(({ id, grades, top }) => ({
    id,
    grades,
    top: grades[top] ?? '',
  }));
}

/** Words by which printings may be dear or cheap together. */
const SHARED = [
  'language',
  'market',
  'finish',
  'edition',
  'wave',
  'art',
  'channel',
  'rarity',
  'product',
] as const;

/** The printings whose prices are asked for. */
export function pricedPrintings(
  { evidence }: Dossier,
  graded: ReadonlyMap<string, number>,
): PricedPrinting[] {
  return evidence.printings.map((printing) => ({
    id: printing.id,
    shared: Object.fromEntries(
      SHARED.flatMap((name) => (printing[name] ? [[name, printing[name]]] : [])),
    ),
    graded: graded.get(printing.id) ?? null,
  }));
}

import { type Day, parseEdtf } from '../evidence/index.ts';
import type { PricedPrinting, PricedService, RateRow, SaleRow } from '../market/index.ts';
import { rowsOf } from './rows-of.ts';
import type { Dossier } from './types.ts';

/** The last day that a date in EDTF can mean; null where there is none. */
export function lastDay(text: string): Day | null {
  const reading = parseEdtf(text);
  const last = reading.ok ? (reading.date.ranges.at(-1)?.last ?? Number.NaN) : Number.NaN;
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
  const printings = printingsMeant(dossier);
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
  return rowsOf(dossier, 'services.csv', (cell) => ({
    id: cell('id'),
    grades: cell('grades')
      .split('|')
      .map((grade) => grade.trim())
      .filter(Boolean),
    top: cell('top'),
  }));
}

/** Ids that a cell of printings means: alternatives apart, wholes in their parts, forwards followed. */
export function printingsMeant({ evidence, forwards }: Dossier): (cell: string) => string[] {
  const parts = new Map<string, string[]>();
  for (const { id, part_of } of evidence.printings)
    if (part_of) parts.set(part_of, [...(parts.get(part_of) ?? []), id]);
  return (cell) => {
    const ids = cell
      .split('|')
      .map((id) => id.trim())
      .filter((id) => id && id !== 'none');
    const now = ids.map((id) => forwards.get(id) ?? id);
    return [...new Set(now.flatMap((id) => parts.get(id) ?? [id]))];
  };
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

/**
 * The day that answers hold for: the newest one in sales, sightings, population and rates; null
 * where none of them has a day.
 */
export function newestDay(dossier: Dossier): Day | null {
  const columns = {
    'sales.csv': 'date',
    'sightings.csv': 'date',
    'population.csv': 'as_of',
    'rates.csv': 'date',
  };
  let newest: Day | null = null;
  for (const [file, column] of Object.entries(columns)) {
    const texts = new Set(rowsOf(dossier, file, (cell) => cell(column)));
    for (const text of texts) {
      const day = lastDay(text);
      if (day !== null && (newest === null || day > newest)) newest = day;
    }
  }
  return newest;
}

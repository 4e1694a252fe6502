import type { Day } from '../evidence/index.ts';
import { ratesOf, usableSales } from '../market/index.ts';
import type { Block, Offer, Records, Seen } from '../population/index.ts';
import { daysOf } from './cell-meaning.ts';
import { FaultList } from './faults.ts';
import { rateRowsOf, saleRowsOf } from './market-rows.ts';
import { DATED, newestIn } from './newest-day.ts';
import { reportsOf } from './reports.ts';
import { rankOf } from './schema.ts';
import { servicesOf } from './services.ts';
import { type Stands, standingOf } from './standing.ts';
import type { Dossier, Fault, Table } from './types.ts';

/** What populations are computed from, and all that is wrong with the dossier. */
export interface ReadRecords {
  readonly records: Records;
  readonly faults: readonly Fault[];
}

/**
 * The counts, certificates, sightings and offers of a dossier, all references followed. Beside the
 * dossier's own faults stand those that reading its tables alone does not find: grades that a service does not have, counts
 * past belief, totals that do not add up, rows said twice, certificates in two places on one day.
 */
export function recordsOf(dossier: Dossier): ReadRecords {
  const faults = new FaultList();
  const stands = standingOf(dossier);
  const services = servicesOf(dossier.tables.get('services.csv'), faults);
  const read = reportsOf(dossier.tables.get('population.csv'), services, stands, faults);
  const seen = seenOf(dossier, stands, faults);
  const records: Records = {
    services: read.services,
    reports: read.reports,
    blocks: blocksOf(dossier.tables.get('certificates.csv')),
    seen,
    offers: offersOf(dossier.tables.get('supply.csv'), stands),
    prices: rawPricesOf(dossier),
    newestDay: Math.max(
      ...read.reports.map(({ day }) => day),
      ...DATED.map((file) => newestIn(dossier.tables.get(file), 'date')),
    ),
  };
  return { records, faults: together(dossier.faults, faults.sorted()) };
}

/** Two lists of faults as one, in the order of the files, then of the rows. */
function together(some: readonly Fault[], others: readonly Fault[]): Fault[] {
  const place = ({ row }: Fault) => row ?? 0;
  return [...some, ...others].sort(
    (a, b) =>
      rankOf(a.file) - rankOf(b.file) ||
      (a.file < b.file ? -1 : a.file > b.file ? 1 : place(a) - place(b)),
  );
}

function blocksOf(table: Table | undefined): Block[] {
  if (table === undefined) return [];
  return [...table.rows()].flatMap((row) => {
    const value = (column: string) => table.value(row, column);
    const days = daysOf(value('period'));
    const [service, from, to] = [value('service'), value('from'), value('to')];
    if (days === undefined || service === '' || from === '') return [];
    const period = value('period');
    return { service, from, to: to || from, period, firstDay: days.first, lastDay: days.last };
  });
}

function offersOf(table: Table | undefined, stands: Stands): Offer[] {
  if (table === undefined) return [];
  return [...table.rows()].flatMap((row) => {
    const value = (column: string) => table.value(row, column);
    const [printing, another] = stands(value('printing'));
    const day = daysOf(value('as_of'))?.last;
    if (printing === undefined || another !== undefined || day === undefined) return [];
    const [raw, graded] = [Number(value('raw') || 0), Number(value('graded') || 0)];
    return { day, venue: value('venue'), printing, raw, graded };
  });
}

/** What raw copies of a printing were sold for, their middle, in euros at the rates of their days. */
function rawPricesOf(dossier: Dossier): ReadonlyMap<string, number> {
  const { sales } = usableSales(saleRowsOf(dossier), {
    printings: new Set(dossier.evidence.printings.map(({ id }) => id)),
    services: [],
    rates: ratesOf(rateRowsOf(dossier)),
    home: 'EUR',
    on: Number.POSITIVE_INFINITY as Day,
  });
  const byPrinting = new Map<string, number[]>();
  for (const { printings, price } of sales) {
    const [printing, another] = printings;
    if (printing === undefined || another !== undefined) continue;
    const prices = byPrinting.get(printing);
    if (prices === undefined) byPrinting.set(printing, [price]);
    else prices.push(price);
  }
  return new Map(
    [...byPrinting].map(([printing, prices]) => {
      const sorted = prices.sort((a, b) => a - b);
      return [printing, sorted[Math.floor((sorted.length - 1) / 2)] as number];
    }),
  );
}

/** Sightings, and sales and offers of graded copies. */
function seenOf({ tables }: Dossier, stands: Stands, faults: FaultList): Seen[] {
  const seen = ['sightings.csv', 'sales.csv'].flatMap((file) => {
    const table = tables.get(file);
    return table === undefined ? [] : seenIn(table, stands);
  });
  const places = new Map<string, Place>();
  for (const one of seen) {
    if (one.certificate === '') continue;
    const key = `${one.service}\n${one.certificate}\n${one.day}`;
    const before = places.get(key);
    places.set(key, one);
    if (before === undefined || before.where === one.where || one.where === '') continue;
    if (before.where === '') continue;
    const found = `${one.certificate} also in ${before.where} on that day (${before.file}, row ${before.row})`;
    const expected = 'a certificate in one place on one day';
    const fate = 'Both are kept; they count as one occasion.';
    faults.add({ file: one.file, row: one.row, column: 'certificate', found, expected, fate });
  }
  return seen.map(({ file: _, row: __, ...one }) => one);
}

type Place = Seen & { readonly file: string; readonly row: number };

function seenIn(table: Table, stands: Stands): Place[] {
  const { file } = table;
  const sold = file === 'sales.csv';
  return [...table.rows()].flatMap((row) => {
    const value = (column: string) => table.value(row, column);
    const service = value('service');
    const day = daysOf(value('date'))?.last;
    if (service === '' || service === 'none' || day === undefined) return [];
    return {
      file,
      row,
      day,
      service,
      printings: stands(value('printing')),
      certificate: value('certificate'),
      label: sold ? '' : value('label'),
      grade: value('grade'),
      serial: sold ? '' : value('serial'),
      where: value(sold ? 'venue' : 'where'),
      sold: sold && value('kind') !== 'asking',
    };
  });
}

import type { Day } from '../evidence/index.ts';
import { daysOf } from './cell-meaning.ts';
import type { Dossier, Table } from './types.ts';

/** The newest day in a column of a table, each cell read once; minus infinity without one. */
export function newestIn(table: Table | undefined, column: string): number {
  let newest = Number.NEGATIVE_INFINITY;
  if (table === undefined) return newest;
  const remembered = new Map<string, number>();
  for (const row of table.rows()) {
    const cell = table.value(row, column);
    let day = remembered.get(cell);
    if (day === undefined) {
      day = daysOf(cell)?.last ?? Number.NEGATIVE_INFINITY;
      remembered.set(cell, day);
    }
    if (day > newest && day < Number.POSITIVE_INFINITY) newest = day;
  }
  return newest;
}

/** Tables and columns beside the populations whose days an answer may hold for. */
export const DATED = ['sales.csv', 'sightings.csv', 'rates.csv'] as const;

/**
 * The day that answers hold for: the newest one in sales, sightings, population and rates; null
 * where none of them has a day.
 */
export function newestDay({ tables }: Dossier): Day | null {
  const newest = Math.max(
    newestIn(tables.get('population.csv'), 'as_of'),
    ...DATED.map((file) => newestIn(tables.get(file), 'date')),
  );
  return Number.isFinite(newest) ? (newest as Day) : null;
}

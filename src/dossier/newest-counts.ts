import { rowsOf } from './rows-of.ts';
import { standingOf } from './standing.ts';
import type { Dossier } from './types.ts';

/** Copies of one grade under one confirmed label. */
export interface ConfirmedCount {
  readonly service: string;
  /** What the label was matched to; several share the count. */
  readonly printings: readonly string[];
  readonly grade: string;
  readonly count: number;
}

/**
 * The counts of each service's newest report up to a day, of labels that are matched.
 *
 * @param day ISO 8601; empty for no limit
 */
export function newestCounts(dossier: Dossier, day: string): ConfirmedCount[] {
  const stands = standingOf(dossier);
  const rows = rowsOf(dossier, 'population.csv', (cell) => ({
    service: cell('service'),
    asOf: cell('as_of'),
    printing: cell('printing'),
    grade: cell('grade'),
    count: Number(cell('count')) || 0,
  })).filter(({ asOf }) => day === '' || asOf === '' || asOf <= day);
  const newest = new Map<string, string>();
  for (const { service, asOf } of rows)
    if (asOf > (newest.get(service) ?? '')) newest.set(service, asOf);
  return rows
    .filter(({ service, asOf, printing }) => asOf === newest.get(service) && printing !== '')
    .map(({ service, printing, grade, count }) => ({
      service,
      printings: stands(printing),
      grade,
      count,
    }));
}

/** Adds a count to each of several in equal shares. */
export function addShared(
  counts: Map<string, number>,
  ids: readonly string[],
  count: number,
): void {
  for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + count / ids.length);
}

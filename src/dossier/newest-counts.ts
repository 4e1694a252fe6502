import { type GradeCount, gradeCountsOf } from '../population/index.ts';
import { daysOf } from './cell-meaning.ts';
import { recordsOf } from './population.ts';
import type { Dossier } from './types.ts';

const counted = new WeakMap<Dossier, Map<string, readonly GradeCount[]>>();

/**
 * The graded copies of each printing by grade, in each service's newest report up to a day, counted
 * once for a dossier and a day: prices, identification and decisions all ask.
 *
 * @param day ISO 8601; empty for no limit
 */
export function newestCounts(dossier: Dossier, day: string): readonly GradeCount[] {
  const before = counted.get(dossier)?.get(day);
  if (before !== undefined) return before;
  const on = day === '' ? Number.POSITIVE_INFINITY : (daysOf(day)?.last ?? Number.NaN);
  const counts = gradeCountsOf(recordsOf(dossier).records, dossier.evidence, on);
  counted.set(dossier, (counted.get(dossier) ?? new Map()).set(day, counts));
  return counts;
}

/** Adds a count to each of several in equal shares. */
export function addShared(
  counts: Map<string, number>,
  ids: readonly string[],
  count: number,
): void {
  for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + count / ids.length);
}

import type { Chance } from '../../src/maths/index.ts';
import type { Row } from '../table.ts';
import { LABELS, type Label } from './labels.ts';
import { SERVICES, type Service } from './services.ts';

export const QUARTERS = [
  '2025-03-31',
  '2025-06-30',
  '2025-09-30',
  '2025-12-31',
  '2026-03-31',
  '2026-06-30',
] as const;

/** One report takes back copies that an earlier one had: counts of graded copies cannot fall. */
const FALL = { service: 'plumb-assay', label: 'ANNUAL', asOf: '2025-12-31', grade: '9', by: 14 };

/** Rows of `population.csv`, report by report. */
export function populationRows(luck: Chance): readonly Row[] {
  const histories = LABELS.map((label) => ({ label, counts: history(label, luck) }));
  return QUARTERS.flatMap((asOf, quarter) =>
    histories.flatMap(({ label, counts }) => report(label, asOf, counts[quarter] ?? [])),
  );
}

function report(label: Label, asOf: string, counts: readonly number[]): readonly Row[] {
  if (label.missingOn === asOf) return [];
  return serviceOf(label.service).grades.flatMap((grade, at) => {
    const count = (counts[at] ?? 0) - (falls(label, asOf, grade) ? FALL.by : 0);
    if (count === 0) return [];
    const { service, confirmed = '' } = label;
    return [
      {
        service,
        as_of: asOf,
        label: label.label,
        printing: confirmed,
        grade,
        count: String(count),
      },
    ];
  });
}

function falls(label: Label, asOf: string, grade: string): boolean {
  return (
    label.service === FALL.service &&
    label.label.includes(FALL.label) &&
    asOf === FALL.asOf &&
    grade === FALL.grade
  );
}

/** Counts by grade at each quarter: every copy gets a grade and a quarter in which it first appears. */
function history(label: Label, luck: Chance): readonly (readonly number[])[] {
  const service = serviceOf(label.service);
  const total = Object.values(label.copies).reduce((sum, n) => sum + n, 0);
  const counts = QUARTERS.map(() => service.grades.map(() => 0));
  for (let copy = 0; copy < total; copy++) {
    const grade = pick(service.shares, luck);
    const firstQuarter = pick([70, 6, 6, 6, 6, 6], luck);
    for (let quarter = firstQuarter; quarter < QUARTERS.length; quarter++) {
      const row = counts[quarter];
      if (row !== undefined) row[grade] = (row[grade] ?? 0) + 1;
    }
  }
  return counts;
}

/** An index drawn in proportion to the weights. */
export function pick(weights: readonly number[], luck: Chance): number {
  let left = luck.uniform() * weights.reduce((sum, weight) => sum + weight, 0);
  const at = weights.findIndex((weight) => {
    left -= weight;
    return left < 0;
  });
  return at < 0 ? weights.length - 1 : at;
}

/** A service by its id. Throws `RangeError` where there is none. */
export function serviceOf(id: string): Service {
  const service = SERVICES.find((one) => one.id === id);
  if (service === undefined) throw new RangeError(`no service ${id}`);
  return service;
}

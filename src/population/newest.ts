import type { Records, Report, Service } from './types.ts';

/** The newest report of each service that was read on or before a day, and all before it. */
export interface Series {
  readonly service: Service;
  /** Ascending by day; the last is the newest. */
  readonly reports: readonly Report[];
  readonly newest: Report;
}

/** The reports of each service up to a day. */
export function seriesUpTo(records: Records, day: number): Series[] {
  return records.services.flatMap((service) => {
    const reports = records.reports.filter((one) => one.service === service.id && one.day <= day);
    const newest = reports.at(-1);
    return newest === undefined ? [] : { service, reports, newest };
  });
}

/** A label's copies: at a grade, at a top grade, and by entry that is no grade. */
export interface Tally {
  readonly total: number;
  readonly top: number;
  readonly offScale: Readonly<Record<string, number>>;
}

/** Adds up one label of a report; entries that are no grade are kept apart. */
export function tallyOf(report: Report, service: Service, label: number): Tally {
  const from = label * report.columns;
  let total = 0;
  let top = 0;
  service.grades.forEach((_, grade) => {
    const count = report.counts[from + grade] as number;
    total += count;
    if (grade >= service.top) top += count;
  });
  const offScale: Record<string, number> = {};
  service.offScale.forEach((entry, i) => {
    const count = report.counts[from + service.grades.length + i] as number;
    if (count > 0) offScale[entry] = count;
  });
  return { total, top, offScale };
}

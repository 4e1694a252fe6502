import type { Interval } from '../maths/index.ts';
import { seriesUpTo } from './newest.ts';
import type { History, PrintingCount, Records, Report } from './types.ts';

/**
 * What each service counted of one printing, report by report up to a day, under the labels that are
 * its own now. Of a label that holds several printings the newest share is taken for all reports;
 * misleads where a service renamed a label: what stood under the old name is not counted.
 */
export function historyOf(records: Records, { services }: PrintingCount, on: number): History[] {
  const series = new Map(seriesUpTo(records, on).map((one) => [one.service.id, one]));
  return services.flatMap(({ service, labels, total, total95 }) => {
    const found = series.get(service);
    if (found === undefined) return [];
    const graded = found.service.grades.length;
    const snapshots = found.reports.flatMap((report) => {
      const counts = countsUnder(report, labels);
      return counts === undefined ? [] : { as_of: report.asOf, day: report.day, counts };
    });
    const newest = snapshots.at(-1)?.counts.slice(0, graded) ?? [];
    const all = newest.reduce((sum, count) => sum + count, 0);
    const part = (count: number) => (all > 0 ? count / all : 1);
    const share95: Interval = [part(total95[0]), part(total95[1])];
    return { service, share: part(total), share95, snapshots };
  });
}

/** The counts under some labels together; undefined where the report has none of them. */
function countsUnder(report: Report, labels: readonly string[]): number[] | undefined {
  const rows = labels.map((label) => report.labels.indexOf(label)).filter((at) => at >= 0);
  if (rows.length === 0) return undefined;
  return Array.from({ length: report.columns }, (_, column) =>
    rows.reduce((sum, at) => sum + (report.counts[at * report.columns + column] as number), 0),
  );
}

import type {
  CountingService,
  LabelRows,
  LabelsAnswer,
  PopulationAnswer,
  WireServiceCount,
} from '../../contract/index.ts';
import { type History, historyOf, labelledIn, type PrintingCount } from '../../population/index.ts';
import type { Counted } from './counted.ts';

/** All counts of a dossier, as the page gets them. */
export function populationOnWire({ shown, records, answer }: Counted): PopulationAnswer {
  const services = records.services.map((service): CountingService => {
    const { id, title, grades, top, offScale, assumed = false } = service;
    const reports = records.reports.filter((one) => one.service === id);
    return {
      ...{ id, title: title ?? id, top, assumed, grades: [...grades], offScale: [...offScale] },
      reports: reports.map(({ asOf, day }) => ({ as_of: asOf, day })),
    };
  });
  const daysOf = new Map(services.map(({ id, reports }) => [id, reports.map(({ day }) => day)]));
  const gradesOf = new Map(services.map(({ id, grades }) => [id, grades.length]));
  const printings = answer.printings.map((one) => {
    const { certificates: _, looked: __, services: counts, ...rest } = one;
    const histories = new Map(
      historyOf(records, one, records.newestDay).map((history) => [history.service, history]),
    );
    return {
      ...rest,
      services: counts.map((count): WireServiceCount => {
        const { service } = count;
        const history = histories.get(service);
        const course = courseOf(history, daysOf.get(service) ?? [], gradesOf.get(service) ?? 0);
        return { ...structuredClone(count), course } as WireServiceCount;
      }),
    };
  });
  const labels = labelledIn(records, answer, records.newestDay);
  return {
    version: shown.version,
    on: answer.on,
    services,
    printings: structuredClone(printings) as PopulationAnswer['printings'],
    falls: answer.falls.map((fall) => ({ ...fall })),
    in_doubt: labels.filter((label) => label.in_doubt).length,
  };
}

/** A printing's part of the totals at some days. */
function courseOf(history: History | undefined, days: readonly number[], grades: number) {
  const totals = new Map(
    history?.snapshots.map(({ day, counts }) => [
      day,
      history.share * counts.slice(0, grades).reduce((sum, count) => sum + count, 0),
    ]),
  );
  return days.map((day) => totals.get(day) ?? null);
}

/** The labels of the newest reports. */
export function labelsOnWire({ shown, records, answer }: Counted): LabelsAnswer {
  const labels = labelledIn(records, answer, records.newestDay);
  return {
    version: shown.version,
    on: answer.on,
    labels: structuredClone(labels) as LabelsAnswer['labels'],
  };
}

/** A printing's counts by grade, report by report. */
export function historiesOnWire({ shown, records }: Counted, count: PrintingCount) {
  return { version: shown.version, histories: historyOf(records, count, records.newestDay) };
}

/**
 * The rows of `population.csv` that a word on a label is written in: those of the service's newest
 * report, and of older ones all that say something.
 */
export function labelRowsOnWire(
  { shown, records }: Counted,
  service: string,
  label: string,
): LabelRows {
  const newest = records.reports.filter((one) => one.service === service).at(-1)?.asOf;
  const table = shown.dossier.tables.get('population.csv');
  const rows: LabelRows['rows'] = [];
  for (const row of table?.rows() ?? []) {
    if (table?.value(row, 'label') !== label || table.value(row, 'service') !== service) continue;
    if (table.value(row, 'as_of') !== newest && table.value(row, 'printing') === '') continue;
    rows.push({ row, cells: table.record(row) });
  }
  return { version: shown.version, rows };
}

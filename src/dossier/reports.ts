import type { Report, Service } from '../population/index.ts';
import { daysOf } from './cell-meaning.ts';
import { FATE, type FaultList } from './faults.ts';
import type { Stands } from './standing.ts';
import type { Table } from './types.ts';

/** A count above this is taken for a slip of the pen: no service has graded as many of one card. */
const PAST_BELIEF = 50_000_000;

/** One report while its rows are read. */
class Growing {
  readonly labels = new Map<string, number>();
  readonly confirmed: (readonly string[] | null)[] = [];
  readonly totals = new Map<number, { readonly count: number; readonly row: number }>();
  readonly service: string;
  readonly asOf: string;
  readonly day: number;
  readonly columns: number;
  counts: Int32Array;

  constructor(service: string, asOf: string, day: number, columns: number) {
    this.service = service;
    this.asOf = asOf;
    this.day = day;
    this.columns = columns;
    this.counts = new Int32Array(64 * columns).fill(-1);
  }

  /** Position of a label, a new one where it was not there. */
  labelAt(label: string): number {
    const before = this.labels.get(label);
    if (before !== undefined) return before;
    const index = this.labels.size;
    this.labels.set(label, index);
    this.confirmed.push(NOBODY);
    if ((index + 1) * this.columns > this.counts.length) {
      const larger = new Int32Array(2 * this.counts.length).fill(-1);
      larger.set(this.counts);
      this.counts = larger;
    }
    return index;
  }

  report(): Report {
    const size = this.labels.size * this.columns;
    const counts = this.counts.slice(0, size);
    for (let i = 0; i < size; i++) if (counts[i] === -1) counts[i] = 0;
    const { service, asOf, day, confirmed, columns } = this;
    return { service, asOf, day, labels: [...this.labels.keys()], confirmed, counts, columns };
  }
}

const NOBODY: readonly string[] = [];
const NO_DAY = Number.NEGATIVE_INFINITY;

/** What a report's rows tell, and the services with the grades that were found where none are stated. */
export interface ReadReports {
  readonly services: readonly Service[];
  readonly reports: readonly Report[];
}

/** The population reports of a dossier, by service and day. */
export function reportsOf(
  table: Table | undefined,
  stated: ReadonlyMap<string, Service>,
  stands: Stands,
  faults: FaultList,
): ReadReports {
  const services = new Map(stated);
  if (table === undefined) return { services: [...services.values()], reports: [] };
  for (const service of withoutGrades(table, services)) services.set(service.id, service);
  const growing = new Map<string, Growing>();
  const reader = new RowReader(table, services, growing, stands, faults);
  for (const row of table.rows()) reader.take(row);
  for (const one of growing.values()) checkTotals(one, table.file, faults);
  const reports = [...growing.values()]
    .map((one) => one.report())
    .sort((a, b) => (a.service < b.service ? -1 : a.service > b.service ? 1 : a.day - b.day));
  return { services: [...services.values()], reports: confirmedOnce(reports) };
}

/** A label that is matched in one report of a service is matched in all; the newest word counts. */
function confirmedOnce(reports: readonly Report[]): Report[] {
  const known = new Map<string, readonly string[] | null>();
  const keyOf = ({ service }: Report, label: string) => `${service}\n${label}`;
  for (const report of reports)
    report.confirmed.forEach((ids, at) => {
      if (ids === null || ids.length > 0)
        known.set(keyOf(report, report.labels[at] as string), ids);
    });
  return reports.map((report) => ({
    ...report,
    confirmed: report.labels.map((label, at) => {
      const said = report.confirmed[at];
      if (said === null || (said !== undefined && said.length > 0)) return said;
      const elsewhere = known.get(keyOf(report, label));
      return elsewhere === undefined ? NOBODY : elsewhere;
    }),
  }));
}

/** Reads row by row; what the row before said is not looked up again. */
class RowReader {
  readonly #table: Table;
  readonly #services: ReadonlyMap<string, Service>;
  readonly #growing: Map<string, Growing>;
  readonly #stands: Stands;
  readonly #faults: FaultList;
  readonly #columns = new Map<string, ReadonlyMap<string, number>>();
  #service = '\n';
  #asOf = '';
  #label = '\n';
  #report: Growing | undefined;
  #at = 0;
  #grades: ReadonlyMap<string, number> = new Map();

  constructor(
    table: Table,
    services: ReadonlyMap<string, Service>,
    growing: Map<string, Growing>,
    stands: Stands,
    faults: FaultList,
  ) {
    this.#table = table;
    this.#services = services;
    this.#growing = growing;
    this.#stands = stands;
    this.#faults = faults;
  }

  take(row: number): void {
    const table = this.#table;
    const service = table.value(row, 'service');
    const asOf = table.value(row, 'as_of');
    if (service !== this.#service || asOf !== this.#asOf) this.#turnTo(service, asOf);
    const report = this.#report;
    if (report === undefined) return;
    const label = table.value(row, 'label');
    if (label !== this.#label) {
      this.#label = label;
      this.#at = report.labelAt(label);
    }
    const printing = table.value(row, 'printing');
    if (printing !== '')
      report.confirmed[this.#at] = printing === 'none' ? null : this.#stands(printing);
    const count = this.#countIn(row);
    if (count !== undefined) this.#count(row, report, table.value(row, 'grade'), count);
  }

  #turnTo(service: string, asOf: string): void {
    this.#service = service;
    this.#asOf = asOf;
    this.#label = '\n';
    const key = `${service}\n${asOf}`;
    this.#report = this.#growing.get(key);
    const known = this.#services.get(service);
    if (known === undefined) return;
    this.#grades = this.#columnsOf(known);
    if (this.#report !== undefined) return;
    const day = daysOf(asOf)?.last ?? NO_DAY;
    if (!Number.isFinite(day)) return;
    const columns = known.grades.length + known.offScale.length;
    this.#report = new Growing(service, asOf, day, columns);
    this.#growing.set(key, this.#report);
  }

  #columnsOf(service: Service): ReadonlyMap<string, number> {
    const before = this.#columns.get(service.id);
    if (before !== undefined) return before;
    const columns = new Map<string, number>();
    for (const [i, grade] of [...service.grades, ...service.offScale].entries())
      columns.set(grade, i);
    this.#columns.set(service.id, columns);
    return columns;
  }

  #countIn(row: number): number | undefined {
    const cell = this.#table.value(row, 'count');
    if (cell === '' || cell === 'none') return undefined;
    const count = Number(cell);
    if (count <= PAST_BELIEF) return count;
    const expected = `a count that can be, at most ${PAST_BELIEF}`;
    const { file } = this.#table;
    this.#faults.add({ file, row, column: 'count', found: cell, expected, fate: FATE.row });
    return undefined;
  }

  #count(row: number, report: Growing, grade: string, count: number): void {
    const column = this.#grades.get(grade) ?? this.#grades.get(grade.toLowerCase());
    const { file } = this.#table;
    if (column === undefined) {
      if (/^total$/i.test(grade)) report.totals.set(this.#at, { count, row });
      else {
        const expected = `a grade of ${this.#service} (${[...this.#grades.keys()].join(' ')})`;
        this.#faults.add({ file, row, column: 'grade', found: grade, expected, fate: FATE.row });
      }
      return;
    }
    const place = this.#at * report.columns + column;
    const before = report.counts[place] as number;
    if (before === -1) report.counts[place] = count;
    else {
      const found = `${this.#label}, ${grade} again (${count})`;
      const expected = `one row a service, day, label and grade; the first says ${before}`;
      this.#faults.add({ file, row, column: 'grade', found, expected, fate: FATE.row });
    }
  }
}

/** A row whose grade is `total` is no grade; what it says must be the sum of the others. */
function checkTotals(report: Growing, file: string, faults: FaultList): void {
  for (const [at, { count, row }] of report.totals) {
    let sum = 0;
    for (let i = 0; i < report.columns; i++)
      sum += Math.max(0, report.counts[at * report.columns + i] as number);
    if (sum === count) continue;
    const expected = `${sum}, the sum of the grades`;
    const fate = 'The grades are used, the total is not.';
    faults.add({ file, row, column: 'count', found: String(count), expected, fate });
  }
}

/** Services of which no grades are stated: those found in the report, in the order of their numbers. */
function withoutGrades(table: Table, services: ReadonlyMap<string, Service>): Service[] {
  if (services.size > 0 && [...services.values()].every(({ grades }) => grades.length > 0))
    return [];
  const found = new Map<string, Set<string>>();
  for (const row of table.rows()) {
    const id = table.value(row, 'service');
    if (id === '' || (services.get(id)?.grades.length ?? 0) > 0) continue;
    const grades = found.get(id) ?? new Set();
    found.set(id, grades.add(table.value(row, 'grade')));
  }
  return [...found].map(([id, all]) => {
    const isNumber = (grade: string) => /^\d+(\.\d+)?$/.test(grade);
    const grades = [...all].filter(isNumber).sort((a, b) => Number(a) - Number(b));
    const offScale = [...all].filter((grade) => !isNumber(grade) && !/^total$/i.test(grade));
    const top = Math.max(0, grades.length - 1);
    return { ...services.get(id), id, grades, top, offScale, assumed: true };
  });
}

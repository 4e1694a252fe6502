import type { Service } from '../types.ts';
import { cellsOf, type Form } from './cells.ts';
import { gradeIn, type Heads, headsOf } from './heads.ts';

/** One count that was read from a pasted report. */
export interface PastedCount {
  readonly label: string;
  readonly grade: string;
  readonly count: number;
}

/** Something in a pasted report that is not as it should be. */
export interface PasteFault {
  /** Line of the text, or row of the HTML table, from 1; null where all of it is meant. */
  readonly line: number | null;
  readonly found: string;
  readonly expected: string;
  /** What was done about it. */
  readonly fate: string;
}

/** What a pasted report was understood to say, before anything is written. */
export interface PastedReport {
  readonly form: Form;
  /** In sentences. */
  readonly understood: readonly string[];
  readonly labels: readonly string[];
  /** Counts above 0, and one of 0 for a label that has none. */
  readonly counts: readonly PastedCount[];
  readonly faults: readonly PasteFault[];
}

/** As in a dossier: no service has graded as many of one card. */
const PAST_BELIEF = 50_000_000;

/**
 * Reads a population report that was pasted from a table, a CSV, or saved as a page: a column a grade,
 * or a row a grade. Totals are held against the sum of the grades. Nothing is guessed: a figure that
 * cannot be read is left out and said.
 */
export function readReport(text: string, service: Service): PastedReport {
  const { form, rows } = cellsOf(text);
  const heads = headsOf(rows, service);
  if (heads === undefined) {
    const expected = `a row of heads with grades of ${service.id} (${service.grades.join(' ')}), or columns “grade” and “count”`;
    const fault = {
      line: null,
      found: `${rows.length} rows without one`,
      expected,
      fate: 'Nothing was read.',
    };
    return { form, understood: [], labels: [], counts: [], faults: [fault] };
  }
  const reading = new Reading(service, heads);
  for (const row of rows.slice(heads.row + 1)) reading.take(row);
  return { form, ...reading.done() };
}

type Row = { readonly line: number; readonly cells: readonly string[] };

class Reading {
  readonly #service: Service;
  readonly #heads: Heads;
  readonly #counts = new Map<string, Map<string, number>>();
  readonly #faults: PasteFault[] = [];
  #sumRow: Row | undefined;
  #totals = 0;

  constructor(service: Service, heads: Heads) {
    this.#service = service;
    this.#heads = heads;
  }

  take(row: Row): void {
    const { roles } = this.#heads;
    const said = roles.flatMap(({ is }, at) => (is === 'label' ? (row.cells[at] ?? '') : []));
    const label = said.join(' ').replace(/\s+/g, ' ').trim();
    if (/^(grand )?(totals?|sum|all|합계)$/i.test(label)) this.#sumRow = row;
    else if (label === '') {
      if (row.cells.some((cell) => /\d/.test(cell)))
        this.#fault(row, row.cells.join(' '), 'a label beside the counts', 'The row is left out.');
    } else if (roles.some(({ is }) => is === 'grade-name')) this.#long(row, label);
    else this.#wide(row, label);
  }

  #wide(row: Row, label: string): void {
    if (this.#counts.has(label)) {
      this.#fault(row, label, 'each label once', 'The row is left out.');
      return;
    }
    const counts = this.#of(label);
    let total: number | undefined;
    this.#heads.roles.forEach((role, at) => {
      if (role.is !== 'grade' && role.is !== 'total') return;
      const count = this.#number(row, row.cells[at] ?? '');
      if (count === undefined) return;
      if (role.is === 'total') total = count;
      else if (role.is === 'grade') counts.set(role.grade, (counts.get(role.grade) ?? 0) + count);
    });
    if (total !== undefined) this.#check(row, counts, total, label);
  }

  #check(row: Row, counts: ReadonlyMap<string, number>, total: number, label: string): void {
    this.#totals += 1;
    const sum = (grades: readonly string[]) =>
      grades.reduce((all, grade) => all + (counts.get(grade) ?? 0), 0);
    const graded = sum(this.#service.grades);
    const all = graded + sum(this.#service.offScale);
    if (total === graded || total === all) return;
    const expected = `${all}, the sum of the grades`;
    this.#fault(
      row,
      `${label}: total ${total}`,
      expected,
      'The grades are kept, the total is not.',
    );
  }

  #long(row: Row, label: string): void {
    const { roles } = this.#heads;
    const named = row.cells[roles.findIndex(({ is }) => is === 'grade-name')] ?? '';
    const count = this.#number(row, row.cells[roles.findIndex(({ is }) => is === 'count')] ?? '');
    const grade = gradeIn(named, this.#service);
    if (count === undefined) return;
    const counts = this.#of(label);
    if (grade === undefined && /^total$/i.test(named)) this.#check(row, counts, count, label);
    else if (grade === undefined) {
      const expected = `a grade of ${this.#service.id}`;
      this.#fault(row, named, expected, 'The row is left out.');
    } else if (counts.has(grade)) {
      this.#fault(row, `${label}, ${named} again`, 'each grade once', 'The row is left out.');
    } else counts.set(grade, count);
  }

  #of(label: string): Map<string, number> {
    const counts = this.#counts.get(label) ?? new Map<string, number>();
    this.#counts.set(label, counts);
    return counts;
  }

  /** A count as people write it, nothing and a dash being none. */
  #number(row: Row, cell: string): number | undefined {
    const bare = cell.trim();
    if (bare === '' || /^[-–—·.]$/.test(bare)) return 0;
    const digits = /^\d{1,3}([,.\u2009\u00a0 '’]\d{3})+$/.test(bare)
      ? bare.replace(/\D/g, '')
      : bare;
    const count = Number(digits);
    if (/^\d+$/.test(digits) && count <= PAST_BELIEF) return count;
    this.#fault(row, cell, 'a count, 0 or above', 'It is left out.');
    return undefined;
  }

  #fault({ line }: Row, found: string, expected: string, fate: string): void {
    this.#faults.push({ line, found, expected, fate });
  }

  done(): Omit<PastedReport, 'form'> {
    const counts = [...this.#counts].flatMap(([label, grades]) => {
      const some = [...grades].filter(([, count]) => count > 0);
      const first = this.#service.grades[0] as string;
      const kept = some.length > 0 ? some : [[first, 0] as const];
      return kept.map(([grade, count]) => ({ label, grade, count }));
    });
    if (this.#sumRow !== undefined) this.#checkSums(this.#sumRow);
    const labels = [...this.#counts.keys()];
    return {
      understood: this.#understood(labels.length, counts),
      labels,
      counts,
      faults: this.#faults,
    };
  }

  #checkSums(row: Row): void {
    this.#heads.roles.forEach((role, at) => {
      if (role.is !== 'grade') return;
      const said = this.#number(row, row.cells[at] ?? '');
      let sum = 0;
      for (const grades of this.#counts.values()) sum += grades.get(role.grade) ?? 0;
      if (said === undefined || said === sum || row.cells[at] === undefined) return;
      const expected = `${sum}, the sum of the column`;
      this.#fault(row, `grade ${role.grade}: ${said}`, expected, 'The rows above are kept.');
    });
  }

  #understood(labels: number, counts: readonly PastedCount[]): string[] {
    const { roles } = this.#heads;
    const graded = roles.flatMap((role) => (role.is === 'grade' ? role.grade : []));
    const missing = [...this.#service.grades].filter((grade) => !graded.includes(grade));
    const sum = counts.reduce((all, { count }) => all + count, 0);
    return [
      `${labels} labels with ${sum} copies.`,
      graded.length > 0 ? `A column a grade: ${graded.join(', ')}.` : 'A row a grade.',
      ...(graded.length > 0 && missing.length > 0
        ? [`No column for ${missing.join(', ')}: taken for none graded so.`]
        : []),
      ...(this.#totals > 0 ? [`${this.#totals} totals were held against their grades.`] : []),
    ];
  }
}

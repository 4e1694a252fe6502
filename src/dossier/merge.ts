import { type Alignment, align } from './align.ts';
import { encodeLossless } from './lossless.ts';
import { orderOf } from './merge-order.ts';
import { rowText } from './row-scan.ts';
import { type Cells, Sheet } from './sheet.ts';
import type { Change, MergeConflict, Merged } from './types.ts';

/**
 * Puts two edits of one table together, row by row and in a row cell by cell. It makes no difference
 * which side is called ours. Where both changed a cell, what stood there before is kept and the
 * conflict given back; where one changed a row that the other removed, the changed row is kept.
 */
export function mergeTables(
  file: string,
  base: Uint8Array,
  ours: Uint8Array,
  theirs: Uint8Array,
): Merged {
  const [from, a, b] = [base, ours, theirs].map((bytes) => Sheet.of(file, bytes, []));
  return new Merger(file, from!, a!, b!).merged();
}

/**
 * The changes that lead from one state of a table to another. A row that was only moved is no
 * change, nor is one that only got or lost quotes.
 */
export function changesBetween(file: string, from: Uint8Array, to: Uint8Array): Change[] {
  const [before, after] = [Sheet.of(file, from, []), Sheet.of(file, to, [])];
  const { matches, added } = align(before, after);
  const gone = before.columns.filter((column) => !after.columns.includes(column));
  const alike = sameList(before.columns, after.columns);
  const emptied = Object.fromEntries(gone.map((column) => [column, '']));
  const replaced: Change[] = [];
  const removed: Change[] = [];
  for (let row = before.lastRow; row >= 2; row--) {
    const other = matches.get(row);
    if (alike && other !== undefined && before.raw(row) === after.raw(other)) continue;
    const record = before.record(row);
    if (other === undefined) {
      if (before.raw(row) !== '') removed.push({ file, op: 'remove', row, before: record });
      continue;
    }
    const cells = { ...emptied, ...after.record(other) };
    if (before.matches(row, cells)) continue;
    replaced.push({ file, op: 'replace', row, before: record, after: cells });
  }
  const additions = added
    .filter((row) => after.raw(row) !== '')
    .map((row): Change => ({ file, op: 'add', row, after: after.record(row) }));
  return [...replaced.reverse(), ...removed, ...additions];
}

class Merger {
  readonly #file: string;
  readonly #base: Sheet;
  readonly #a: Sheet;
  readonly #b: Sheet;
  readonly #columns: readonly string[];
  readonly #conflicts: MergeConflict[] = [];

  constructor(file: string, base: Sheet, a: Sheet, b: Sheet) {
    this.#file = file;
    this.#base = base;
    this.#a = a;
    this.#b = b;
    this.#columns = columnsOf(base.columns, a.columns, b.columns);
  }

  merged(): Merged {
    const [base, a, b] = [this.#base, this.#a, this.#b];
    const [toA, toB] = [align(base, a), align(base, b)];
    const twins = twinsOf(a, b, toA, toB);
    const rows = [this.#header()];
    for (const place of orderOf(base, a, b, toA, toB, twins)) {
      const row = this.#row(place.base, place.a, place.b);
      if (row !== undefined) rows.push(row);
    }
    return { bytes: this.#bytes(rows), conflicts: this.#conflicts };
  }

  #header(): string {
    const side = [this.#a, this.#b].find((sheet) => this.#hasLayout(sheet));
    return side?.raw(1) ?? rowText(this.#columns);
  }

  #hasLayout(sheet: Sheet): boolean {
    return sameList(sheet.columns, this.#columns);
  }

  #bytes(rows: readonly string[]): Uint8Array {
    const [base, a, b] = [this.#base, this.#a, this.#b];
    const lineEnd = chosen(base.lineEnd, a.lineEnd, b.lineEnd);
    const last = (sheet: Sheet) => (sheet.lineEndOf(sheet.lastRow) === '' ? '' : 'ended');
    const end = chosen(last(base), last(a), last(b)) === '' ? '' : lineEnd;
    return encodeLossless(chosen(base.mark, a.mark, b.mark) + rows.join(lineEnd) + end);
  }

  /** Text of a row that stands in some of the sheets; undefined where it is removed. */
  #row(base: number | undefined, a: number | undefined, b: number | undefined): string | undefined {
    if (a !== undefined && b !== undefined) return this.#both(base, a, b);
    if (a === undefined && b === undefined) return undefined;
    const [sheet, row] = a !== undefined ? [this.#a, a] : [this.#b, b!];
    if (base === undefined) return this.#text(sheet, row);
    if (this.#isSame(base, sheet, row)) return undefined;
    const side = a !== undefined ? { ours: sheet.record(row) } : { theirs: sheet.record(row) };
    const before = { base: this.#base.record(base) };
    this.#conflicts.push({ file: this.#file, ...before, ...side, columns: [] });
    return this.#text(sheet, row);
  }

  #isSame(base: number, sheet: Sheet, row: number): boolean {
    const [before, after] = [this.#base.record(base), sheet.record(row)];
    return this.#columns.every((column) => own(before, column) === own(after, column));
  }

  #both(base: number | undefined, a: number, b: number): string {
    const text = this.#a.raw(a);
    if (text === this.#b.raw(b) && this.#hasLayout(this.#a) && this.#hasLayout(this.#b))
      return text;
    const before: Cells = base === undefined ? {} : this.#base.record(base);
    const [mine, other] = [this.#a.record(a), this.#b.record(b)];
    const columns: string[] = [];
    const cells = this.#columns.map((column) => {
      const [was, x, y] = [own(before, column), own(mine, column), own(other, column)];
      if (x === y || y === was) return x;
      if (x === was) return y;
      columns.push(column);
      return base === undefined ? least(x, y) : was;
    });
    if (columns.length > 0) {
      const known = base === undefined ? {} : { base: before };
      this.#conflicts.push({ file: this.#file, ...known, ours: mine, theirs: other, columns });
    }
    return this.#written(cells, base, a, b);
  }

  /** A row's text as one of the sheets has it, where one says these cells; else a new one. */
  #written(cells: readonly string[], base: number | undefined, a: number, b: number): string {
    const says = (sheet: Sheet, row: number) =>
      this.#hasLayout(sheet) && sheet.cells(row).join('\u0000') === cells.join('\u0000');
    const texts = [
      ...(says(this.#a, a) ? [this.#a.raw(a)] : []),
      ...(says(this.#b, b) ? [this.#b.raw(b)] : []),
    ];
    if (texts.length < 2) return texts[0] ?? rowText(cells);
    return chosen(base === undefined ? '' : this.#base.raw(base), texts[0]!, texts[1]!);
  }

  #text(sheet: Sheet, row: number): string {
    if (this.#hasLayout(sheet)) return sheet.raw(row);
    const record = sheet.record(row);
    return rowText(this.#columns.map((column) => own(record, column)));
  }
}

function own(cells: Cells, column: string): string {
  return Object.hasOwn(cells, column) ? cells[column]! : '';
}

/** What was changed, if one side did; the lesser of the two where both did. */
function chosen(base: string, a: string, b: string): string {
  if (a === b || b === base) return a;
  return a === base ? b : least(a, b);
}

function least(a: string, b: string): string {
  return a < b ? a : b;
}

function sameList(x: readonly string[], y: readonly string[]): boolean {
  return x.length === y.length && x.every((item, i) => item === y[i]);
}

function columnsOf(base: readonly string[], a: readonly string[], b: readonly string[]) {
  const same = (x: readonly string[], y: readonly string[]) =>
    x.join('\u0000') === y.join('\u0000');
  if (same(a, b) || same(b, base)) return a;
  if (same(a, base)) return b;
  const old = base.filter((column) => a.includes(column) && b.includes(column));
  const added = [...a, ...b].filter((column) => !base.includes(column)).sort();
  return [...new Set([...old, ...added])];
}

/** Rows that both sides added: with one id, or saying the same. */
function twinsOf(a: Sheet, b: Sheet, toA: Alignment, toB: Alignment): ReadonlyMap<number, number> {
  const { matches } = align(a, b);
  const [newInA, newInB] = [new Set(toA.added), new Set(toB.added)];
  const id = a.columns.includes('id');
  return new Map(
    [...matches].filter(([x, y]) => {
      if (!newInA.has(x) || !newInB.has(y)) return false;
      return (id && b.matches(y, { id: own(a.record(x), 'id') })) || b.matches(y, a.record(x));
    }),
  );
}

import { isSafeName } from './names.ts';
import { RowScan, rowText } from './row-scan.ts';
import { type Cells, Sheet } from './sheet.ts';
import type { Applied, Change, Conflict } from './types.ts';

/**
 * Makes changes to one table, one behind the other; rows that no change speaks of keep their bytes.
 * A row is looked for at its hint, then by its cells, which must be those of one row only. Without
 * bytes (or with none) a new table with the format's own columns is begun. A column that the table
 * does not have is added when a cell needs it, behind the last; undo empties it but leaves it.
 * Throws RangeError for a name that leads out of the folder or is no table, and TypeError for a
 * change of another file or without the cells that its kind needs.
 */
export function applyChanges(
  file: string,
  bytes: Uint8Array | undefined,
  changes: readonly Change[],
): Applied {
  for (const change of changes) checkCall(file, change);
  if (changes.length === 0)
    return { bytes: bytes ?? new Uint8Array(0), conflicts: [], inverse: [] };
  const named = changes.flatMap((change) => Object.keys(change.after ?? {}));
  const editor = new Editor(Sheet.of(file, bytes, [...new Set(named)]));
  for (const change of changes) editor.make(change);
  return { bytes: editor.bytes(), conflicts: editor.conflicts, inverse: editor.inverse.reverse() };
}

function checkCall(file: string, change: Change): void {
  if (!isSafeName(file) || !file.endsWith('.csv')) {
    throw new RangeError(`file must be a table inside the folder, not ${file}`);
  }
  if (change.file !== file)
    throw new TypeError(`a change of ${change.file} cannot be made to ${file}`);
  if (change.op !== 'remove' && change.after === undefined) {
    throw new TypeError(`a change that would ${change.op} a row must say what is to stand there`);
  }
  if (change.op !== 'add' && change.before === undefined) {
    throw new TypeError(`a change that would ${change.op} a row must say what stands there`);
  }
}

class Editor {
  readonly #sheet: Sheet;
  readonly conflicts: Conflict[] = [];
  /** In the order of the changes. */
  readonly inverse: Change[] = [];
  /** How far the last row stood from its hint. */
  #drift = 0;

  constructor(sheet: Sheet) {
    this.#sheet = sheet;
  }

  bytes(): Uint8Array {
    return this.#sheet.bytes();
  }

  make(change: Change): void {
    if (change.op === 'add') this.#add(change);
    else {
      const row = this.#find(change);
      if (row === undefined) return;
      if (change.op === 'remove') this.#remove(change, row);
      else this.#replace(change, row);
    }
  }

  #add(change: Change): void {
    const sheet = this.#sheet;
    const { file, after = {}, row: hint = Number.POSITIVE_INFINITY } = change;
    this.#addColumns(after);
    const row = hint >= 2 && hint <= sheet.lastRow ? Math.trunc(hint) : sheet.lastRow + 1;
    const { start, raw, end } = piecesOf(change.raw ?? '');
    if (this.#says(raw, after)) sheet.insert(row, raw, start || end || sheet.lineEnd);
    else sheet.insert(row, rowText(sheet.columns.map((column) => own(after, column))));
    this.inverse.push({ file, op: 'remove', row, before: sheet.record(row) });
  }

  #remove({ file }: Change, row: number): void {
    const after = this.#sheet.record(row);
    const raw = this.#sheet.remove(row);
    this.inverse.push({ file, op: 'add', row, after, raw });
  }

  #replace(change: Change, row: number): void {
    const sheet = this.#sheet;
    const { file, after = {} } = change;
    if (sheet.matches(row, after)) return;
    const raw = sheet.raw(row);
    this.#addColumns(after);
    const before = sheet.record(row);
    const given = change.raw ?? '';
    sheet.rewrite(row, this.#says(given, after) ? given : sheet.edited(row, after));
    this.inverse.push({ file, op: 'replace', row, before: sheet.record(row), after: before, raw });
  }

  #addColumns(after: Cells): void {
    for (const [column, cell] of Object.entries(after)) {
      if (cell !== '' && !this.#sheet.columns.includes(column)) this.#sheet.addColumn(column);
    }
  }

  /** Whether a text is one row of this table that says these cells and, beside them, nothing. */
  #says(raw: string, cells: Cells): boolean {
    const { columns } = this.#sheet;
    const scan = new RowScan().over(raw);
    if (raw === '' || scan.scan(0) !== 'row') return false;
    if (scan.next !== raw.length || scan.end !== raw.length) return false;
    if (scan.count !== columns.length) return false;
    return columns.every((column, i) => scan.cell(i) === own(cells, column));
  }

  /** The row that a change speaks of; undefined, and the conflict noted, where there is none. */
  #find(change: Change): number | undefined {
    const { before = {}, row: hint } = change;
    const sheet = this.#sheet;
    const isThere = (row: number, cells: Cells) =>
      Number.isInteger(row) && row >= 2 && row <= sheet.lastRow && sheet.matches(row, cells);
    if (hint !== undefined) {
      if (isThere(hint, before)) return hint;
      if (this.#drift !== 0 && isThere(hint + this.#drift, before)) return hint + this.#drift;
    }
    const rows = rowsLike(sheet, before);
    const [first] = rows;
    if (first !== undefined && rows.every((row) => sheet.raw(row) === sheet.raw(first))) {
      this.#drift = hint === undefined ? 0 : first - hint;
      return first;
    }
    const done = change.op === 'replace' && hint !== undefined && isThere(hint, change.after ?? {});
    if (done && first === undefined) return undefined;
    const reason = first === undefined ? 'gone' : 'several';
    const inside = hint !== undefined && hint >= 2 && hint <= sheet.lastRow;
    const now = inside ? { now: sheet.record(hint) } : {};
    this.conflicts.push({ change, reason, ...now });
    return undefined;
  }
}

function own(cells: Cells, column: string): string {
  return Object.hasOwn(cells, column) ? cells[column]! : '';
}

/** A row as it was taken out: with its line end behind it, or, as the last, with the one before. */
function piecesOf(taken: string): { start: string; raw: string; end: string } {
  const start = /^\r?\n/.exec(taken)?.[0] ?? '';
  const end = start === '' ? (/\r?\n$/.exec(taken)?.[0] ?? '') : '';
  return { start, raw: taken.slice(start.length, taken.length - end.length), end };
}

/** All rows with these cells. */
function rowsLike(sheet: Sheet, cells: Cells): number[] {
  // A cell without quotes in it stands in the text of its row as it is.
  const plain = Object.values(cells).filter((cell) => !cell.includes('"'));
  const longest = plain.reduce((a, b) => (b.length > a.length ? b : a), '');
  const rows: number[] = [];
  for (let row = 2; row <= sheet.lastRow; row++) {
    if (sheet.raw(row).includes(longest) && sheet.matches(row, cells)) rows.push(row);
  }
  return rows;
}

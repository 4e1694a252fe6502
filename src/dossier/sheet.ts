import { decodeLossless, encodeLossless } from './lossless.ts';
import { cellText, RowScan, rowText } from './row-scan.ts';
import { specOf } from './schema.ts';

/** Cells by column name. */
export type Cells = Readonly<Record<string, string>>;

const MARK = '\ufeff';

/**
 * A table as the text of its rows, for editing: what is not edited keeps its bytes. Rows are
 * counted as a spreadsheet does, the header being row 1.
 */
export class Sheet {
  readonly mark: string;
  /** Line end of the header, for new rows. */
  readonly lineEnd: string;
  columns: string[];
  /** Text of each row without its line end; the header is at 0. */
  readonly #rows: string[];
  readonly #ends: string[];
  readonly #scan = new RowScan();

  private constructor(mark: string, rows: string[], ends: string[]) {
    this.mark = mark;
    this.#rows = rows;
    this.#ends = ends;
    this.lineEnd = ends[0] || '\n';
    this.columns = this.cells(1).map((cell) => cell.trim());
  }

  /** The sheet of a file's bytes; where there are none, one with the format's own columns. */
  static of(file: string, bytes: Uint8Array | undefined, columns: readonly string[]): Sheet {
    const text = bytes === undefined ? '' : decodeLossless(bytes);
    const mark = text.startsWith(MARK) ? MARK : '';
    const { rows, ends } = linesOf(text.slice(mark.length));
    if (rows.length > 0) return new Sheet(mark, rows, ends);
    const known = [...(specOf(file)?.columns.keys() ?? [])];
    const header = [...new Set([...known, ...columns])];
    return new Sheet(mark, [rowText(header)], ['\n']);
  }

  get lastRow(): number {
    return this.#rows.length;
  }

  raw(row: number): string {
    return this.#rows[row - 1]!;
  }

  lineEndOf(row: number): string {
    return this.#ends[row - 1]!;
  }

  /** The cells of a row; a broken row is one cell. */
  cells(row: number): string[] {
    const raw = this.raw(row);
    if (this.#scan.over(raw).scan(0) !== 'row') return [raw];
    return this.#scan.cells();
  }

  record(row: number): Record<string, string> {
    const cells = this.cells(row);
    const columns = this.columns.map((column, i) => [column, cells[i] ?? ''] as const);
    // The first of two columns of one name counts.
    return Object.fromEntries(columns.reverse());
  }

  /** Whether the named cells of a row are these; a column that is not there is empty. */
  matches(row: number, cells: Cells): boolean {
    const there = this.cells(row);
    return Object.entries(cells).every(([column, cell]) => {
      const index = this.columns.indexOf(column);
      return (index < 0 ? '' : (there[index] ?? '')) === cell;
    });
  }

  /** Puts other text in the place of a row. */
  rewrite(row: number, raw: string): void {
    this.#rows[row - 1] = raw;
  }

  /** Text of a row with some cells changed; the others keep their quotes. */
  edited(row: number, cells: Cells): string {
    const scan = this.#scan.over(this.raw(row));
    const whole = scan.scan(0) === 'row';
    const width = Math.max(this.columns.length, whole ? scan.count : 0);
    const texts = Array.from({ length: width }, (_, i) => {
      const column = this.columns[i];
      if (column === undefined || !Object.hasOwn(cells, column))
        return whole ? scan.rawCell(i) : '';
      if (this.columns.indexOf(column) !== i) return whole ? scan.rawCell(i) : '';
      const same = whole && scan.cell(i) === cells[column];
      return same ? scan.rawCell(i) : cellText(cells[column]!);
    });
    return texts.length === 1 && texts[0] === '' ? '""' : texts.join(',');
  }

  /** Puts a row before another, or behind the last. A table without a last line end keeps so. */
  insert(row: number, raw: string, lineEnd: string = this.lineEnd): void {
    const last = this.#rows.length;
    const end = row > last && this.#ends[last - 1] === '' ? '' : lineEnd;
    if (row > last && end === '') this.#ends[last - 1] = lineEnd;
    this.#rows.splice(row - 1, 0, raw);
    this.#ends.splice(row - 1, 0, end);
  }

  /** Takes a row out, and gives back all that was taken out of the text. */
  remove(row: number): string {
    const raw = this.raw(row);
    const end = this.lineEndOf(row);
    this.#rows.splice(row - 1, 1);
    this.#ends.splice(row - 1, 1);
    if (end !== '') return raw + end;
    const before = this.#ends[row - 2] ?? '';
    this.#ends[row - 2] = '';
    return before + raw;
  }

  /** Puts a new column behind the last; every row that is not blank gets an empty cell. */
  addColumn(name: string): void {
    this.columns = [...this.columns, name];
    this.#rows.forEach((raw, i) => {
      if (i === 0) this.#rows[i] = `${raw},${cellText(name)}`;
      else if (raw !== '') this.#rows[i] = `${raw},`;
    });
  }

  bytes(): Uint8Array {
    const pieces = [this.mark];
    this.#rows.forEach((raw, i) => {
      pieces.push(raw, this.#ends[i]!);
    });
    return encodeLossless(pieces.join(''));
  }
}

function linesOf(text: string): { rows: string[]; ends: string[] } {
  const scan = new RowScan().over(text);
  const rows: string[] = [];
  const ends: string[] = [];
  for (let at = 0; at < text.length; at = scan.next) {
    if (scan.scan(at) !== 'row') scan.takeLine();
    rows.push(scan.raw);
    ends.push(text.slice(scan.end, scan.next));
  }
  return { rows, ends };
}

import { RowScan } from './row-scan.ts';
import type { Table } from './types.ts';

/** What became of a row. */
export const ROW = { usable: 0, blank: 1, leftOut: 2 } as const;
export type RowState = (typeof ROW)[keyof typeof ROW];

interface Stretch {
  /** Number of the first row in it. */
  readonly first: number;
  readonly text: string;
  /** Where each row begins; -1 for a row that is not kept. */
  readonly starts: readonly number[];
}

/** A table as text in a few long stretches, whose cells are found when they are asked for. */
export class ReadTable implements Table {
  readonly file: string;
  readonly columns: readonly string[];
  readonly #index = new Map<string, number>();
  readonly #stretches: Stretch[] = [];
  #states = new Uint8Array(1024);
  #lastRow = 1;
  /** Columns whose cell is at fault, by row. */
  readonly #bad = new Map<number, Set<number>>();
  readonly #scan = new RowScan();
  #scanned = 0;
  #at: Stretch | undefined;

  constructor(file: string, columns: readonly string[]) {
    this.file = file;
    this.columns = columns;
    columns.forEach((column, i) => {
      if (!this.#index.has(column)) this.#index.set(column, i);
    });
  }

  get lastRow(): number {
    return this.#lastRow;
  }

  /** Takes the next rows. */
  append(text: string, starts: readonly number[], states: readonly RowState[]): void {
    const first = this.#lastRow + 1;
    this.#stretches.push({ first, text, starts });
    this.#lastRow += starts.length;
    if (this.#lastRow >= this.#states.length) {
      const larger = new Uint8Array(2 * this.#lastRow);
      larger.set(this.#states);
      this.#states = larger;
    }
    this.#states.set(states, first);
  }

  /** Marks a row as one that cannot be used. */
  leaveOut(row: number): void {
    this.#states[row] = ROW.leftOut;
  }

  /** Marks a cell as one that says nothing. */
  spoil(row: number, column: number): void {
    const columns = this.#bad.get(row) ?? new Set();
    this.#bad.set(row, columns.add(column));
  }

  /** Position of a column, -1 where the table has none of that name. */
  indexOf(column: string): number {
    return this.#index.get(column) ?? -1;
  }

  *rows(): IterableIterator<number> {
    for (let row = 2; row <= this.#lastRow; row++) if (this.#states[row] === ROW.usable) yield row;
  }

  /** The cells of a row, until another row is asked for. */
  at(row: number): RowScan {
    if (!(row >= 1 && row <= this.#lastRow)) throw new RangeError(`there is no row ${row}`);
    if (row === this.#scanned) return this.#scan;
    const stretch = this.#stretchOf(row);
    const start = stretch.starts[row - stretch.first]!;
    if (stretch !== this.#at) this.#scan.over(stretch.text);
    this.#at = stretch;
    if (start < 0 || this.#scan.scan(start) !== 'row') this.#scan.count = 0;
    this.#scanned = row;
    return this.#scan;
  }

  #stretchOf(row: number): Stretch {
    const at = this.#at;
    if (at !== undefined && row >= at.first && row < at.first + at.starts.length) return at;
    let low = 0;
    let high = this.#stretches.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.#stretches[middle]!.first <= row) low = middle;
      else high = middle - 1;
    }
    return this.#stretches[low]!;
  }

  cell(row: number, column: string): string {
    if (row === 1) return this.#index.has(column) ? column : '';
    return this.at(row).cell(this.indexOf(column));
  }

  value(row: number, column: string): string {
    return this.valueAt(row, this.indexOf(column));
  }

  /** As `value`, by the position of the column. */
  valueAt(row: number, index: number): string {
    if (index < 0) return '';
    const cell = this.at(row).cell(index);
    if (cell === '' || this.#bad.get(row)?.has(index)) return '';
    return cell.trim();
  }

  record(row: number): Record<string, string> {
    const scan = this.at(row);
    return Object.fromEntries([...this.#index].map(([column, i]) => [column, scan.cell(i)]));
  }
}

import { type Block, blocksOf, type Stop } from './blocks.ts';
import { FATE, type FaultList } from './faults.ts';
import { faultOfHeader } from './header.ts';
import { LIMITS, sizeInWords } from './limits.ts';
import { isDamaged } from './lossless.ts';
import { ReadTable, ROW, type RowState } from './read-table.ts';
import { RowScan } from './row-scan.ts';
import type { TableSpec } from './schema.ts';

/** Looks at one row as it is read, and says whether it can be used. */
export type RowCheck = (row: number, scan: RowScan, damaged: boolean, table: ReadTable) => boolean;

/** Given the header, the check of the rows below it. */
export type CheckOfTable = (table: ReadTable) => RowCheck;

/**
 * Reads a table as its bytes come in. What is wrong goes into `faults`. Undefined where the file as
 * a whole cannot be used.
 */
export async function takeTable(
  spec: TableSpec,
  pieces: AsyncIterable<Uint8Array>,
  checkOfTable: CheckOfTable,
  faults: FaultList,
): Promise<ReadTable | undefined> {
  const taker = new TableTaker(spec, checkOfTable, faults);
  for await (const block of blocksOf(pieces)) if (!taker.take(block)) return taker.table;
  return taker.finish();
}

const STOPS: Readonly<Record<Stop, readonly [found: string, expected: string]>> = {
  binary: ['bytes that are no text', 'a table as CSV in UTF-8'],
  'utf-16': ['UTF-16', 'UTF-8 (save as “CSV UTF-8”)'],
  'too-large': ['a larger file', `at most ${sizeInWords(LIMITS.table)}`],
};

class TableTaker {
  readonly #spec: TableSpec;
  readonly #checkOfTable: CheckOfTable;
  readonly #faults: FaultList;
  readonly #scan = new RowScan();
  #check: RowCheck | undefined;
  table: ReadTable | undefined;
  /** A row that began inside quotes in the last block. */
  #open = '';
  #starts: number[] = [];
  #states: RowState[] = [];

  constructor(spec: TableSpec, checkOfTable: CheckOfTable, faults: FaultList) {
    this.#spec = spec;
    this.#checkOfTable = checkOfTable;
    this.#faults = faults;
  }

  /** Takes a block; false where there is no use in reading on. */
  take(block: Block): boolean {
    if (block.is === 'stop') return this.#stop(block.why);
    if (block.is === 'lines') return this.#rows(this.#open + block.text, block.damaged, false);
    if (this.#open !== '' && !this.#rows(this.#open, false, true)) return false;
    if (this.table === undefined) return this.#stopAtHeader(...LONG_ROW, this.#spec.file);
    this.#fault(this.table.lastRow + 1, ...LONG_ROW);
    this.table.append('', [-1], [ROW.leftOut]);
    return true;
  }

  finish(): ReadTable | undefined {
    if (this.#open !== '') this.#rows(this.#open, true, true);
    else if (this.table === undefined) this.#stopAtHeader('', 'a header row', this.#spec.file);
    return this.table;
  }

  #stop(why: Stop): boolean {
    const [found, expected] = STOPS[why];
    const fate = this.table === undefined ? FATE.file : FATE.rest;
    this.#faults.add({ file: this.#spec.file, found, expected, fate });
    return false;
  }

  #stopAtHeader(found: string, expected: string, file: string): boolean {
    this.#faults.add({ file, row: 1, found, expected, fate: FATE.file });
    return false;
  }

  /** Takes all rows that end in the text; `last`: an open row cannot be finished any more. */
  #rows(text: string, damaged: boolean, last: boolean): boolean {
    const scan = this.#scan.over(text);
    let at = 0;
    if (this.table === undefined) {
      const end = scan.scan(0);
      if (end === 'open' && !last && text.length <= LIMITS.row) return this.#keepOpen(text);
      if (!this.#header(end === 'row')) return false;
      at = scan.next;
    }
    this.#open = '';
    while (at < text.length) {
      const end = scan.scan(at);
      if (end === 'open' && !last && text.length - at <= LIMITS.row) {
        this.#keepOpen(text.slice(at));
        break;
      }
      if (end !== 'row') scan.takeLine();
      this.#row(end === 'row' ? undefined : end, damaged);
      at = scan.next;
    }
    this.table?.append(text.slice(0, at), this.#starts, this.#states);
    this.#starts = [];
    this.#states = [];
    return true;
  }

  #keepOpen(text: string): boolean {
    this.#open = text;
    return true;
  }

  #header(whole: boolean): boolean {
    const { file } = this.#spec;
    if (!whole) return this.#stopAtHeader(...QUOTES.open, file);
    const columns = this.#scan.cells().map((cell) => cell.trim());
    const wrong = faultOfHeader(this.#spec, columns, this.#faults);
    if (wrong !== undefined) return this.#stopAtHeader(wrong.found, wrong.expected, file);
    this.table = new ReadTable(file, columns);
    this.#check = this.#checkOfTable(this.table);
    return true;
  }

  #row(quotes: 'open' | 'broken' | undefined, damaged: boolean): void {
    const scan = this.#scan;
    const row = this.table!.lastRow + 1 + this.#starts.length;
    const state = this.#stateOf(row, quotes, damaged);
    this.#starts.push(quotes === undefined ? scan.from : -1);
    this.#states.push(state);
  }

  #stateOf(row: number, quotes: 'open' | 'broken' | undefined, damaged: boolean): RowState {
    const scan = this.#scan;
    if (quotes !== undefined) return this.#fault(row, ...QUOTES[quotes]);
    if (scan.end - scan.from > LIMITS.row) return this.#fault(row, ...LONG_ROW);
    if (scan.blank) return ROW.blank;
    const width = this.table!.columns.length;
    if (scan.count !== width) {
      return this.#fault(row, inCells(scan.count), `${inCells(width)}, as in the header`);
    }
    const rowDamaged = damaged && isDamaged(scan.raw);
    return this.#check!(row, scan, rowDamaged, this.table!) ? ROW.usable : ROW.leftOut;
  }

  #fault(row: number, found: string, expected: string): RowState {
    this.#faults.add({ file: this.#spec.file, row, found, expected, fate: FATE.row });
    return ROW.leftOut;
  }
}

const LONG_ROW: readonly [string, string] = [
  'a longer row',
  `at most ${sizeInWords(LIMITS.row)} in one row`,
];

const QUOTES: Readonly<Record<'open' | 'broken', readonly [found: string, expected: string]>> = {
  open: ['a quote that nothing closes', 'a closing quote'],
  broken: ['letters behind a closing quote', 'a comma or the end of the row'],
};

function inCells(count: number): string {
  return count === 1 ? '1 cell' : `${count} cells`;
}

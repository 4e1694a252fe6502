import { type Check, checkOf, type Surroundings } from './cell-types.ts';
import { FATE, type FaultList } from './faults.ts';
import { isDamaged } from './lossless.ts';
import type { ReadTable } from './read-table.ts';
import type { RowScan } from './row-scan.ts';
import { type TableSpec, typeOf } from './schema.ts';
import type { ColumnType } from './schema-types.ts';
import type { CheckOfTable } from './take-table.ts';

interface ColumnCheck {
  readonly column: string;
  readonly index: number;
  readonly check: Check;
  readonly must: boolean;
  readonly key: boolean;
}

/** Cells of few different texts are checked once for each text. */
const REMEMBERED = 50_000;

/** Whether the columns of a type are to be checked. */
export type Wanted = (type: ColumnType) => boolean;

/** The check of the rows of one table, by the types of its columns. */
export function rowCheck(
  spec: TableSpec,
  around: Surroundings,
  faults: FaultList,
  wanted: Wanted,
): CheckOfTable {
  return (table) => {
    const checks = checksOf(spec, table, around, wanted);
    const rows = new RowJudge(spec.file, checks, faults);
    return (row, scan, damaged) => rows.judge(row, scan, damaged, table);
  };
}

function checksOf(
  spec: TableSpec,
  table: ReadTable,
  around: Surroundings,
  wanted: Wanted,
): ColumnCheck[] {
  return table.columns.flatMap((column, index) => {
    const type = typeOf(spec, column);
    if (type === undefined || table.indexOf(column) !== index || !wanted(type)) return [];
    const must = spec.must.has(column);
    if (type.is === 'text' && !must) return [];
    const check = type.is === 'ref' ? checkOf(type, around) : remembered(checkOf(type, around));
    return { column, index, check, must, key: must || spec.key.has(column) };
  });
}

function remembered(check: Check): Check {
  const known = new Map<string, string | undefined>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined || known.has(text)) return before;
    const expected = check(text);
    if (known.size < REMEMBERED) known.set(text, expected);
    return expected;
  };
}

class RowJudge {
  readonly #file: string;
  readonly #checks: readonly ColumnCheck[];
  readonly #faults: FaultList;

  constructor(file: string, checks: readonly ColumnCheck[], faults: FaultList) {
    this.#file = file;
    this.#checks = checks;
    this.#faults = faults;
  }

  /** Whether the row can be used; its faults are listed, and cells at fault marked. */
  judge(row: number, scan: RowScan, damaged: boolean, table: ReadTable): boolean {
    let usable = !damaged || this.#letters(row, scan, table);
    for (const { column, index, check, must, key } of this.#checks) {
      const text = scan.cell(index).trim();
      if (text === '' && !must) continue;
      if (text === 'none' && !must) continue;
      const expected = check(text) ?? (text === '' ? 'a cell that is not empty' : undefined);
      if (expected === undefined || isDamaged(text)) continue;
      const fate = key ? FATE.row : FATE.cell;
      this.#faults.add({ file: this.#file, row, column, found: text, expected, fate });
      if (key) usable = false;
      else table.spoil(row, index);
    }
    return usable;
  }

  /** Lists the cells with bytes that are no UTF-8; false where one of them spoils the row. */
  #letters(row: number, scan: RowScan, table: ReadTable): boolean {
    let usable = true;
    table.columns.forEach((column, index) => {
      const found = scan.cell(index);
      if (!isDamaged(found)) return;
      const key = this.#checks.some((check) => check.index === index && check.key);
      const fate = key ? FATE.row : FATE.cell;
      const expected = 'letters in UTF-8 (save as “CSV UTF-8”)';
      this.#faults.add({ file: this.#file, row, column, found, expected, fate });
      if (key) usable = false;
      else table.spoil(row, index);
    });
    return usable;
  }
}

import { groupBy } from './group-by.ts';
import type { Sheet } from './sheet.ts';

/** Which row of one sheet is which of another. */
export interface Alignment {
  /** Row of the other sheet by row of the first, ascending by the first; both from 2. */
  readonly matches: ReadonlyMap<number, number>;
  /** Rows of the second sheet that no row of the first is. */
  readonly added: readonly number[];
}

/**
 * Finds the rows of `from` again in `to`: those at the top and at the end that are written alike,
 * then by their id where the table has ids, else rows that say the same (of several, the first is
 * the first), else rows at one place that are half alike.
 */
export function align(from: Sheet, to: Sheet): Alignment {
  const { top, bottom } = alikeAtEnds(from, to);
  const columns = from.columns.filter((column) => to.columns.includes(column));
  const mine = cellsOf(from, columns, top, from.lastRow - bottom);
  const theirs = cellsOf(to, columns, top, to.lastRow - bottom);
  const between = matchBetween(mine, theirs, columns.indexOf('id'), top - 1);
  const taken = new Set(between.values());
  const added = [...theirs.keys()].filter((row) => !taken.has(row));
  const matches = new Map<number, number>();
  for (let row = 2; row < top; row++) matches.set(row, row);
  for (const [row, other] of [...between].sort(([a], [b]) => a - b)) matches.set(row, other);
  const shift = to.lastRow - from.lastRow;
  for (let row = from.lastRow - bottom + 1; row <= from.lastRow; row++)
    matches.set(row, row + shift);
  return { matches, added };
}

/** The first row that is not written alike, and how many at the end are. */
function alikeAtEnds(from: Sheet, to: Sheet): { top: number; bottom: number } {
  let top = 2;
  let bottom = 0;
  if (from.columns.join('\u0000') !== to.columns.join('\u0000')) return { top, bottom };
  const shorter = Math.min(from.lastRow, to.lastRow);
  while (top <= shorter && from.raw(top) === to.raw(top)) top++;
  while (
    shorter - bottom >= top &&
    from.raw(from.lastRow - bottom) === to.raw(to.lastRow - bottom)
  ) {
    bottom++;
  }
  return { top, bottom };
}

/** Matches rows of two stretches that stand behind the same row. */
function matchBetween(mine: Rows, theirs: Rows, id: number, before: number): Map<number, number> {
  const matches = new Map<number, number>();
  const taken = new Set<number>();
  const match = (row: number, other: number) => {
    matches.set(row, other);
    taken.add(other);
  };
  if (id >= 0) matchKeys(mine, theirs, (cells) => cells[id] ?? '', true, match);
  const left = kept(mine, (row) => !matches.has(row));
  const free = kept(theirs, (row) => !taken.has(row));
  matchKeys(left, free, (cells) => cells.join('\u0000'), false, match);
  matchAlike(mine, theirs, id, before, matches, taken, match);
  return matches;
}

type Rows = ReadonlyMap<number, readonly string[]>;

function cellsOf(sheet: Sheet, columns: readonly string[], first: number, last: number): Rows {
  const places = columns.map((column) => sheet.columns.indexOf(column));
  const rows = new Map<number, string[]>();
  for (let row = first; row <= last; row++) {
    const cells = sheet.cells(row);
    rows.set(
      row,
      places.map((place) => cells[place] ?? ''),
    );
  }
  return rows;
}

function kept(rows: Rows, keep: (row: number) => boolean): Rows {
  return new Map([...rows].filter(([row]) => keep(row)));
}

/** Matches rows of one key: the first with the first and so on, or only keys that stand alone. */
function matchKeys(
  mine: Rows,
  theirs: Rows,
  keyOf: (cells: readonly string[]) => string,
  alone: boolean,
  match: (row: number, other: number) => void,
): void {
  const [here, there] = [grouped(mine, keyOf), grouped(theirs, keyOf)];
  for (const [key, rows] of here) {
    const others = there.get(key) ?? [];
    if (alone && (key === '' || rows.length > 1 || others.length > 1)) continue;
    for (const [i, row] of rows.entries()) {
      const other = others[i];
      if (other !== undefined) match(row, other);
    }
  }
}

function grouped(rows: Rows, keyOf: (cells: readonly string[]) => string): Map<string, number[]> {
  return groupBy(rows.keys(), (row) => keyOf(rows.get(row)!));
}

/** Matches what is left over between the same neighbours, where at least half the cells agree. */
function matchAlike(
  mine: Rows,
  theirs: Rows,
  id: number,
  before: number,
  matches: ReadonlyMap<number, number>,
  taken: ReadonlySet<number>,
  match: (row: number, other: number) => void,
): void {
  const gaps = gapsBehind(theirs, before, (row) => taken.has(row));
  for (const [neighbour, rows] of gapsBehind(mine, before, (row) => matches.has(row))) {
    const there = gaps.get(matches.get(neighbour) ?? before) ?? [];
    const open = new Set(there.slice(0, 1000));
    for (const row of rows.slice(0, 1000)) {
      const cells = mine.get(row)!;
      const other = [...open].find((candidate) => areAlike(cells, theirs.get(candidate)!, id));
      if (other === undefined) continue;
      open.delete(other);
      match(row, other);
    }
  }
}

/** Runs of rows that are not matched, by the matched row before them or the one before all. */
function gapsBehind(
  rows: Rows,
  before: number,
  isMatched: (row: number) => boolean,
): Map<number, number[]> {
  let neighbour = before;
  const gaps = groupBy(rows.keys(), (row) => {
    if (!isMatched(row)) return neighbour;
    neighbour = row;
    return 0;
  });
  gaps.delete(0);
  return gaps;
}

/** Half the cells that are filled agree; rows with two ids are never alike. */
function areAlike(a: readonly string[], b: readonly string[], id: number): boolean {
  if (id >= 0 && a[id] !== '' && b[id] !== '' && a[id] !== b[id]) return false;
  const filled = a.map((cell, i) => [cell, b[i]!] as const).filter(([x, y]) => x + y !== '');
  const same = filled.filter(([x, y]) => x === y).length;
  return filled.length > 0 && 2 * same >= filled.length;
}

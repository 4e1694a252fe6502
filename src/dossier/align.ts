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
 * Finds the rows of `from` again in `to`: by their id where the table has ids, else rows that say
 * the same (of several, the first is the first), else rows at one place that are half alike.
 */
export function align(from: Sheet, to: Sheet): Alignment {
  const columns = from.columns.filter((column) => to.columns.includes(column));
  const [mine, theirs] = [cellsOf(from, columns), cellsOf(to, columns)];
  const matches = new Map<number, number>();
  const taken = new Set<number>();
  const match = (row: number, other: number) => {
    matches.set(row, other);
    taken.add(other);
  };
  const id = columns.indexOf('id');
  if (id >= 0) matchKeys(mine, theirs, (cells) => cells[id] ?? '', true, match);
  const left = (row: number) => !matches.has(row);
  const free = (row: number) => !taken.has(row);
  const content = (cells: readonly string[]) => cells.join('\u0000');
  matchKeys(kept(mine, left), kept(theirs, free), content, false, match);
  matchAlike(mine, theirs, id, matches, taken, match);
  const added = [...theirs.keys()].filter(free);
  return { matches: new Map([...matches].sort(([a], [b]) => a - b)), added };
}

type Rows = ReadonlyMap<number, readonly string[]>;

function cellsOf(sheet: Sheet, columns: readonly string[]): Rows {
  const places = columns.map((column) => sheet.columns.indexOf(column));
  const rows = new Map<number, string[]>();
  for (let row = 2; row <= sheet.lastRow; row++) {
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
  matches: ReadonlyMap<number, number>,
  taken: ReadonlySet<number>,
  match: (row: number, other: number) => void,
): void {
  const gaps = gapsBehind(theirs, (row) => taken.has(row));
  for (const [neighbour, rows] of gapsBehind(mine, (row) => matches.has(row))) {
    const there = gaps.get(neighbour === 1 ? 1 : matches.get(neighbour)!) ?? [];
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

/** Runs of rows that are not matched, by the matched row before them; 1 is the header. */
function gapsBehind(rows: Rows, isMatched: (row: number) => boolean): Map<number, number[]> {
  let neighbour = 1;
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

import type { RawLine } from './lines.ts';
import { isRule } from './lines.ts';

/** A run of lines that is a table: its cells by row, the first row being the header if it has one. */
export interface TextTable {
  /** Index of the first and one past the last line. */
  readonly from: number;
  readonly to: number;
  readonly header: readonly string[] | undefined;
  readonly rows: readonly { readonly index: number; readonly cells: readonly string[] }[];
}

/** Cells of a row separated by a sign, with `"quoted; cells"` kept whole. */
export function cellsOf(row: string, separator: string): string[] {
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (let at = 0; at < row.length; at += 1) {
    const sign = row[at]!;
    if (sign === '"' && (quoted || cell.trim() === '')) {
      if (quoted && row[at + 1] === '"') {
        cell += '"';
        at += 1;
      } else quoted = !quoted;
    } else if (sign === separator && !quoted) {
      cells.push(cell.trim());
      cell = '';
    } else cell += sign;
  }
  cells.push(cell.trim());
  return cells;
}

function pipeCells(row: string): string[] {
  const inner = row.trim().replace(/^[|│]/u, '').replace(/[|│]$/u, '');
  return inner.split(/[|│]/u).map((cell) => cell.trim());
}

/** Cells by the columns at which the header's words begin, parted by two spaces or more. */
function alignedCells(row: string, starts: readonly number[]): string[] {
  const cells: string[] = starts.map(() => '');
  for (const match of row.matchAll(/\S+(?: \S+)*/gu)) {
    const begin = match.index;
    let best = 0;
    starts.forEach((start, column) => {
      if (Math.abs(start - begin) < Math.abs(starts[best]! - begin)) best = column;
    });
    cells[best] = cells[best] === '' ? match[0] : `${cells[best]} ${match[0]}`;
  }
  return cells;
}

const MOST_CELLS = 60;

function separatorOf(lines: readonly RawLine[], at: number): string | undefined {
  const [first, second] = [lines[at]!, lines[at + 1]];
  if (!second) return undefined;
  const next = isRule(second.body) ? (lines[at + 2] ?? second) : second;
  for (const sign of ['\t', '|', '│', ';', ',']) {
    if (!first.raw.includes(sign) || !next.raw.includes(sign)) continue;
    const rawFirst = sign === '\t' ? first.raw.trim() : first.raw;
    const rawNext = sign === '\t' ? next.raw.replace(/^\s{0,3}(?=\S)/u, '') : next.raw;
    const [a, b] = [count(rawFirst, sign), count(rawNext, sign)];
    const least = sign === ',' || sign === ';' ? 2 : 1;
    if (
      a < MOST_CELLS &&
      b < MOST_CELLS &&
      a >= least &&
      b >= 1 &&
      Math.abs(a - b) <= (sign === '\t' ? a : 1)
    )
      return sign;
  }
  return undefined;
}

function count(row: string, sign: string): number {
  if (sign === '|' || sign === '│') return pipeCells(row).length - 1;
  return cellsOf(row, sign).length - 1;
}

/** Whether the cells of a row are the heads of columns. */
export type IsHeader = (cells: readonly string[]) => boolean;

function splitTable(lines: readonly RawLine[], at: number, sign: string, isHeader: IsHeader) {
  const cut = (row: string) => (sign === '|' || sign === '│' ? pipeCells(row) : cellsOf(row, sign));
  const first = cut(lines[at]!.raw.replace(/\s+$/u, ''));
  const headed = isHeader(first);
  if (!headed && (sign === ',' || sign === ';' || first.length < 3)) return undefined;
  const rows: { index: number; cells: string[] }[] = [];
  let to = at;
  while (to < lines.length) {
    const line = lines[to]!;
    if (line.body === '') break;
    if (!isRule(line.body)) {
      const cells = cut(line.raw.replace(/\s+$/u, ''));
      if (cells.length < 2 || (sign === ',' && Math.abs(cells.length - first.length) > 1)) break;
      if (to > at || !headed) rows.push({ index: to, cells });
    }
    to += 1;
  }
  if (rows.length === 0) return undefined;
  return { from: at, to, header: headed ? first : undefined, rows };
}

function alignedTable(lines: readonly RawLine[], at: number, isHeader: IsHeader) {
  const head = lines[at]!.raw;
  if (!/\S {2,}\S/u.test(head) || head.includes('\t')) return undefined;
  const starts = [...head.matchAll(/\S+(?: \S+)*/gu)].map((match) => match.index);
  const cells = [...head.matchAll(/\S+(?: \S+)*/gu)].map((match) => match[0]);
  if (starts.length < 2 || !isHeader(cells)) return undefined;
  const rows: { index: number; cells: string[] }[] = [];
  let to = at + 1;
  while (to < lines.length && lines[to]!.body !== '') {
    if (!isRule(lines[to]!.body)) {
      if (!/\S {2,}\S/u.test(lines[to]!.raw.trim()) && lines[to]!.body.length > 24) break;
      rows.push({ index: to, cells: alignedCells(lines[to]!.raw, starts) });
    }
    to += 1;
  }
  return rows.length === 0 ? undefined : { from: at, to, header: cells, rows };
}

/** The table that begins at a line, if one does. */
export function tableAt(
  lines: readonly RawLine[],
  at: number,
  isHeader: IsHeader,
): TextTable | undefined {
  if (lines[at]!.body === '' || lines[at]!.raw.length > 2000) return undefined;
  const sign = separatorOf(lines, at);
  const split = sign === undefined ? undefined : splitTable(lines, at, sign, isHeader);
  return split ?? alignedTable(lines, at, isHeader);
}

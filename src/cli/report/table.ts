import { padded, widthOf, wrapped } from './width.ts';

/** A column of a table. */
export interface Column {
  readonly head: string;
  readonly align?: 'left' | 'right';
}

/** Cells, one a column; or one text that stands below the row before it, across all columns. */
export type Row = readonly string[] | string;

const GAP = '  ';
const INDENT = '    ';
const NARROWEST = 6;

/**
 * A table for the terminal, aligned by what letters take on the screen. Where it is wider than
 * `width`, heads are wrapped first, then its widest columns are narrowed and their cells wrapped.
 */
export function tableOf(columns: readonly Column[], rows: readonly Row[], width: number): string {
  const widths = widthsOf(columns, rows, width);
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, i) => padded(cell, widths[i] ?? 0, columns[i]?.align))
      .join(GAP)
      .trimEnd();
  const body = rows.flatMap((row) =>
    typeof row === 'string' ? below(row, width) : brokenUp(row, widths).map(line),
  );
  const head = brokenUp(
    columns.map((column) => column.head),
    widths,
  ).map(line);
  return [...head, ...body].map((text) => `${text}\n`).join('');
}

function below(text: string, width: number): readonly string[] {
  return wrapped(text, width - INDENT.length).map((line) => INDENT + line);
}

function widthsOf(
  columns: readonly Column[],
  rows: readonly Row[],
  width: number,
): readonly number[] {
  const least = columns.map(({ head }, i) =>
    rows.reduce(
      (so, row) => (typeof row === 'string' ? so : Math.max(so, widthOf(row[i] ?? ''))),
      Math.max(...head.split(/(?<=\S)\s+/).map(widthOf)),
    ),
  );
  const widths = columns.map(({ head }, i) => Math.max(least[i] ?? 0, widthOf(head)));
  const room = width - GAP.length * (columns.length - 1);
  for (let over = widths.reduce((sum, one) => sum + one, 0) - room; over > 0; over -= 1) {
    const slack = widths.map((one, i) => one - (least[i] ?? 0));
    const most = Math.max(...slack);
    const narrowed = most > 0 ? slack.indexOf(most) : widths.indexOf(Math.max(...widths));
    widths[narrowed] = Math.max(NARROWEST, (widths[narrowed] ?? 0) - 1);
    if (most <= 0) least[narrowed] = widths[narrowed] ?? 0;
  }
  return widths;
}

function brokenUp(row: readonly string[], widths: readonly number[]): readonly string[][] {
  const cells = widths.map((width, i) => wrapped(row[i] ?? '', width));
  const height = Math.max(...cells.map((lines) => lines.length));
  return Array.from({ length: height }, (_, i) => cells.map((lines) => lines[i] ?? ''));
}

import { padded, widthOf, wrapped } from './width.ts';

/** A column of a table; the last one takes what room is left and wraps. */
export interface Column {
  readonly head: string;
  readonly align?: 'left' | 'right';
  /** Widest that it may become; longer cells wrap. */
  readonly most?: number;
}

const GAP = '  ';

/** A table for the terminal, aligned by what letters take on the screen, in lines within `width`. */
export function tableOf(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  width: number,
): string {
  const widths = widthsOf(columns, rows, width);
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, i) => padded(cell, widths[i] ?? 0, columns[i]?.align))
      .join(GAP)
      .trimEnd();
  const body = rows.flatMap((row) => brokenUp(row, widths).map(line));
  const heads = columns.map(({ head }) => head);
  const head = heads.some((word) => word !== '') ? [line(heads)] : [];
  return [...head, ...body].map((text) => `${text}\n`).join('');
}

function widthsOf(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  width: number,
): readonly number[] {
  const widths = columns.map(({ head, most = Number.POSITIVE_INFINITY }, i) => {
    const widest = rows.reduce((so, row) => Math.max(so, widthOf(row[i] ?? '')), widthOf(head));
    return Math.max(widthOf(head), Math.min(most, widest));
  });
  const taken = widths.slice(0, -1).reduce((sum, one) => sum + one + GAP.length, 0);
  return [...widths.slice(0, -1), Math.min(widths.at(-1) ?? 0, Math.max(20, width - taken))];
}

function brokenUp(row: readonly string[], widths: readonly number[]): readonly string[][] {
  const cells = widths.map((width, i) => wrapped(row[i] ?? '', width));
  const height = Math.max(...cells.map((lines) => lines.length));
  return Array.from({ length: height }, (_, i) => cells.map((lines) => lines[i] ?? ''));
}

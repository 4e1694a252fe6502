import type { DossierTable } from '../leaving/types.ts';

/** A table as CSV (RFC 4180): CRLF at line ends, quotation marks only where they are needed. */
export function csvOf({ columns, rows }: DossierTable): string {
  const lines = rows.map(({ cells }) => columns.map((column) => cells[column] ?? ''));
  return [columns, ...lines].map((line) => `${line.map(quoted).join(',')}\r\n`).join('');
}

function quoted(cell: string): string {
  return /[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/** Tables as one JSON object, a list of rows by file; cells that are not known are left out. */
export function jsonOf(tables: readonly DossierTable[]): string {
  const lists = tables.map(({ file, rows }) => {
    const known = rows.map(({ cells }) =>
      Object.fromEntries(Object.entries(cells).filter(([, cell]) => cell !== '')),
    );
    return `${JSON.stringify(file)}: [\n${known.map((row) => JSON.stringify(row)).join(',\n')}\n]`;
  });
  return `{\n${lists.join(',\n')}\n}\n`;
}

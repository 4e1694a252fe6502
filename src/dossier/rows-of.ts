import type { Dossier } from './types.ts';

/** Reads one cell of a row, without spaces around it; empty where it is not known or at fault. */
export type Cell = (column: string) => string;

/** What the usable rows of a table say, in order; empty where the table is not there. */
export function rowsOf<T>(
  { tables }: Dossier,
  file: string,
  read: (cell: Cell, row: number) => T,
): T[] {
  const table = tables.get(file);
  if (!table) return [];
  return [...table.rows()].map((row) => read((column) => table.value(row, column), row));
}

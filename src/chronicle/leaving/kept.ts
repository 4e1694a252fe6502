import { isDesk } from './stays.ts';
import type { DossierRow, DossierTable, Stay } from './types.ts';

/** The tables as they may leave: without the desk, and without the rows and cells that stay. */
export function withoutStays(
  tables: readonly DossierTable[],
  stays: readonly Stay[],
): readonly DossierTable[] {
  return tables.flatMap((table) => {
    const own = stays.filter(({ file }) => file === table.file);
    const whole = own.some(({ row, column }) => row === null && column === null);
    return whole || isDesk(table.file) ? [] : [pruned(table, own)];
  });
}

function pruned(table: DossierTable, stays: readonly Stay[]): DossierTable {
  const gone = new Set(stays.flatMap(({ row, column }) => (column === null ? [row] : [])));
  const emptied = stays.filter(({ row, column }) => row === null && column !== null);
  const changed = new Map<number, Stay[]>();
  for (const one of stays)
    if (one.row !== null && one.column !== null)
      changed.set(one.row, [...(changed.get(one.row) ?? []), one]);
  const rows = table.rows
    .filter(({ row }) => !gone.has(row))
    .map((row) => without(row, [...emptied, ...(changed.get(row.row) ?? [])]));
  return { ...table, rows };
}

function without({ row, cells }: DossierRow, stays: readonly Stay[]): DossierRow {
  const changes = stays.map(({ column, remains }) => [column ?? '', remains ?? '']);
  return { row, cells: { ...cells, ...Object.fromEntries(changes) } };
}

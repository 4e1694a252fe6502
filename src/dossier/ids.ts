import { FATE, type FaultList } from './faults.ts';
import type { ReadTable } from './read-table.ts';

/** The ids of a table with their rows; of rows with one id the first is kept, the others left out. */
export function idsOf(table: ReadTable, faults: FaultList): ReadonlyMap<string, number> {
  const ids = new Map<string, number>();
  for (const row of table.rows()) {
    const id = table.value(row, 'id');
    const before = ids.get(id);
    if (before === undefined) {
      ids.set(id, row);
      continue;
    }
    const expected = `an id of its own; row ${before} has this one`;
    faults.add({ file: table.file, row, column: 'id', found: id, expected, fate: FATE.row });
    table.leaveOut(row);
  }
  return ids;
}

import { WEEKDAYS, type WeekdayFact } from '../evidence/index.ts';
import { FATE } from './faults.ts';
import type { Ground } from './ground.ts';
import type { ReadTable } from './read-table.ts';

/** The weekday habits that are stated; a period that ends before it begins is left out, and listed. */
export function weekdaysOf(ground: Ground): WeekdayFact[] {
  const table = ground.tables.get('weekdays.csv');
  if (table === undefined) return [];
  return [...table.rows()].flatMap((row) => {
    const first = endOf(ground, table, row, 'from');
    const last = endOf(ground, table, row, 'to');
    if (first > last) {
      const found = table.value(row, 'to');
      const expected = `a day that is not before the beginning, ${table.value(row, 'from')}`;
      ground.faults.add({ file: table.file, row, column: 'to', found, expected, fate: FATE.row });
      table.leaveOut(row);
      return [];
    }
    const [market, channel] = [table.value(row, 'market'), table.value(row, 'channel')];
    return {
      row,
      ...(market === '' ? {} : { market }),
      ...(channel === '' ? {} : { channel }),
      weekdays: weekdaysIn(table.value(row, 'weekdays')),
      first,
      last,
    };
  });
}

/** The numbers of weekdays by their names, each once, 1 for Monday. */
function weekdaysIn(cell: string): number[] {
  const numbers = cell.split('|').map((name) => WEEKDAYS.indexOf(name.trim().toLowerCase()) + 1);
  return [...new Set(numbers)].sort((a, b) => a - b);
}

/** The first day of `from` or the last of `to`; infinite where the period is open there. */
function endOf({ around }: Ground, table: ReadTable, row: number, column: 'from' | 'to'): number {
  const reading = around.date(table.value(row, column));
  if (column === 'from') {
    return reading.ok ? reading.date.ranges[0]!.first : Number.NEGATIVE_INFINITY;
  }
  return reading.ok ? reading.date.ranges.at(-1)!.last : Number.POSITIVE_INFINITY;
}

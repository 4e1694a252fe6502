import type { Service } from '../population/index.ts';
import { FATE, type FaultList } from './faults.ts';
import type { Table } from './types.ts';

/** The grading services by id, with their grades. */
export function servicesOf(table: Table | undefined, faults: FaultList): Map<string, Service> {
  const services = new Map<string, Service>();
  if (table === undefined) return services;
  for (const row of table.rows()) {
    const value = (column: string) => table.value(row, column);
    const list = (column: string) => listOf(value(column));
    const grades = list('grades');
    const found = value('top');
    const top = grades.indexOf(found);
    const wrong = grades.length > 0 && found !== '' && top < 0;
    if (wrong) {
      const expected = `one of the grades ${grades.join('|')}`;
      const fate = `Only ${grades.at(-1)} is counted as a top grade.`;
      faults.add({ file: table.file, row, column: 'top', found, expected, fate });
    }
    const twice = grades.find((grade, i) => grades.indexOf(grade) !== i);
    if (twice !== undefined) {
      const expected = 'each grade once, worst to best';
      faults.add({
        file: table.file,
        row,
        column: 'grades',
        found: twice,
        expected,
        fate: FATE.kept,
      });
    }
    const title = value('title');
    services.set(value('id'), {
      id: value('id'),
      ...(title === '' ? {} : { title }),
      grades: [...new Set(grades)],
      top: top < 0 ? Math.max(0, grades.length - 1) : top,
      offScale: list('off_scale'),
    });
  }
  return services;
}

function listOf(cell: string): string[] {
  return cell === 'none'
    ? []
    : cell
        .split('|')
        .map((word) => word.trim())
        .filter(Boolean);
}

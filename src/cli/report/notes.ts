import { type NotesReading, sayEdtf } from '../../evidence/index.ts';
import { tableOf } from './table.ts';
import { counted, percent } from './words.ts';

/** What was read from notes, line by line: the words of a note, then what they claim. */
export function notesReport(reading: NotesReading, text: string, width: number): string {
  const written = text.split(/\r\n|\r|\n/);
  const claims = reading.lines.reduce((sum, { claims: own }) => sum + own.length, 0);
  const columns = [
    { head: 'line', align: 'right' },
    { head: 'written' },
    { head: 'claims' },
    { head: 'value' },
    { head: 'p', align: 'right' },
    { head: 'source' },
  ] as const;
  const rows = reading.lines.flatMap(({ line, printing, claims: own, left_over }) => {
    const note = written[line - 1] ?? '';
    const first = [String(line), note.trim()];
    const said = own.map(({ property, value, source, p }) => [
      property,
      sayEdtf(value, true),
      percent(p),
      source ?? '',
    ]);
    const told = printing ? [['printing', cellsOf(printing), '', '']] : [];
    const all = [...told, ...said];
    if (all.length === 0) return left_over.trim() === '' ? [] : [[...first, 'nothing', '', '', '']];
    return all.map((cells, i) => [...(i === 0 ? first : ['', '']), ...cells]);
  });
  return `${counted(claims, 'claim')} in ${counted(reading.lines.length, 'line')}\n\n${tableOf(columns, rows, width)}`;
}

function cellsOf(printing: Readonly<Record<string, string>>): string {
  return Object.entries(printing)
    .map(([column, value]) => `${column} ${value}`)
    .join(', ');
}

import type { Fault } from '../../dossier/index.ts';
import { tableOf } from './table.ts';
import { counted } from './words.ts';

/** Faults by file: row, column, and what is wrong in a sentence. */
export function faultsReport(faults: readonly Fault[], width: number): string {
  const files = [...new Set(faults.map(({ file }) => file))];
  const parts = files.map((file) => {
    const rows = faults
      .filter((fault) => fault.file === file)
      .map((fault) => [`  ${fault.row ?? ''}`, fault.column ?? '', withoutPlace(fault)]);
    const columns = [
      { head: '  row', align: 'right' },
      { head: 'column' },
      { head: 'what' },
    ] as const;
    return `${file}: ${counted(rows.length, 'fault')}\n${tableOf(columns, rows, width)}`;
  });
  return parts.join('\n');
}

/** The sentence of a fault without the place, which the table shows beside it. */
function withoutPlace({ file, row, column, message }: Fault): string {
  const place = [file, row === null ? null : `row ${row}`, column].filter((part) => part !== null);
  const start = `${place.join(', ')}: `;
  return message.startsWith(start) ? message.slice(start.length) : message;
}

import type { Fault } from '../../dossier/index.ts';
import { tableOf } from './table.ts';
import { counted } from './words.ts';

/** Faults by file: row, column, and what is wrong in a sentence. */
export function faultsReport(faults: readonly Fault[], width: number): string {
  const files = [...new Set(faults.map(({ file }) => file))];
  const parts = files.map((file) => {
    const rows = faults
      .filter((fault) => fault.file === file)
      .map(({ row, column, message }) => [`  ${row ?? ''}`, column ?? '', message]);
    const columns = [{ head: '  row', align: 'right' }, { head: 'column' }, { head: '' }] as const;
    return `${file}: ${counted(rows.length, 'fault')}\n${tableOf(columns, rows, width)}`;
  });
  return parts.join('\n');
}

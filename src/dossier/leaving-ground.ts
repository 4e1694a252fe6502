import type { DossierTable, LeavingGround, PictureMark } from '../chronicle/index.ts';
import { TABLES, type TableSpec, typeOf } from './schema.ts';
import type { Dossier, Table } from './types.ts';

/** What is looked at before something of a dossier leaves; `marks` are those of its pictures. */
export function leavingGroundIn(dossier: Dossier, marks: readonly PictureMark[]): LeavingGround {
  const tables = TABLES.flatMap((spec) => {
    const table = dossier.tables.get(spec.file);
    return table === undefined ? [] : [asWritten(table, spec)];
  });
  const documents = [...dossier.documents.keys()].filter((name) => name.startsWith('desk/')).sort();
  return { tables, documents, texts: dossier.texts, marks };
}

function asWritten(table: Table, spec: TableSpec): DossierTable {
  const { file, columns } = table;
  const isWords = (column: string) => (typeOf(spec, column)?.is ?? 'text') === 'text';
  const rows = [...table.rows()].map((row) => ({ row, cells: table.record(row) }));
  return { file, columns, words: new Set(columns.filter(isWords)), rows };
}

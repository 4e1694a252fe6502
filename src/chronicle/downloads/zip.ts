import { strToU8, zipSync } from 'fflate';
import { withoutStays } from '../leaving/kept.ts';
import { cellOf, isDesk, staysIn } from '../leaving/stays.ts';
import type { DossierTable, LeavingGround, Shown } from '../leaving/types.ts';
import { csvOf } from './csv.ts';

/** The first moment that a zip can tell (APPNOTE, 4.4.6); one for all files, so that bytes repeat. */
const THEN = new Date(1980, 0, 1);

/** The tables that may be shared: nothing that stays, and no path of the desk. */
export function sharedTables(ground: LeavingGround, shown: Shown): readonly DossierTable[] {
  return withoutStays(ground.tables, staysIn(ground, shown)).map((table) => {
    if (table.file !== 'pictures.csv') return table;
    return { ...table, rows: table.rows.filter((row) => !isDesk(cellOf(row, 'file'))) };
  });
}

/**
 * The research of a dossier as a zip, itself a dossier that can be opened: tables without what
 * stays, the story and `dossier.json`. Pictures are not in it; `pictures.csv` holds their hashes.
 * Equal contents give equal bytes.
 */
export function researchZip(
  tables: readonly DossierTable[],
  texts: ReadonlyMap<string, string>,
  manifest: unknown,
): Uint8Array {
  const files = new Map<string, string>(tables.map((table) => [table.file, csvOf(table)]));
  for (const [name, text] of texts) files.set(name, text);
  if (manifest !== undefined) files.set('dossier.json', `${JSON.stringify(manifest, null, 2)}\n`);
  const sorted = [...files].sort(([a], [b]) => (a < b ? -1 : 1));
  const entries = sorted.map(([name, text]) => [name, strToU8(text)]);
  return zipSync(Object.fromEntries(entries), { mtime: THEN, level: 9 });
}

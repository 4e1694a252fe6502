import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { applyChanges } from '../dossier/index.ts';
import { replaceFile } from '../host/index.ts';

/** Adds rows to a table of a dossier, behind those that are there; the file is replaced as a whole. */
export async function addRows(
  folder: string,
  file: string,
  rows: readonly Readonly<Record<string, string>>[],
): Promise<void> {
  const path = join(folder, file);
  const bytes = await readFile(path).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return undefined;
    throw error;
  });
  const changes = rows.map((after) => ({ file, op: 'add' as const, after }));
  await replaceFile(path, applyChanges(file, bytes, changes).bytes);
}

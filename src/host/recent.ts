import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';

/** A dossier that was opened, and when (RFC 3339). */
export interface Recent {
  readonly folder: string;
  readonly title: string;
  readonly opened: string;
}

const AT_MOST = 20;

/** The dossiers opened lately, the newest first; none where the list is missing or spoilt. */
export async function readRecent(file: string): Promise<readonly Recent[]> {
  const text = await readFile(file, 'utf8').catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return '[]';
    throw error;
  });
  return parsed(text).filter(isRecent);
}

/** Puts a dossier at the head of the list. */
export async function noteRecent(file: string, entry: Recent): Promise<void> {
  const others = (await readRecent(file)).filter(({ folder }) => folder !== entry.folder);
  const list = [entry, ...others].slice(0, AT_MOST);
  await mkdir(dirname(file), { recursive: true });
  const fresh = `${file}.${process.pid}.tmp`;
  await writeFile(fresh, `${JSON.stringify(list, null, 2)}\n`);
  await rename(fresh, file);
}

/** The list is a convenience: one that was spoilt is begun anew. */
function parsed(text: string): readonly unknown[] {
  try {
    const value: unknown = JSON.parse(text);
    return Array.isArray(value) ? value : [];
  } catch (error) {
    if (error instanceof SyntaxError) return [];
    throw error;
  }
}

function isRecent(value: unknown): value is Recent {
  if (value === null || typeof value !== 'object') return false;
  const { folder, title, opened } = value as Record<string, unknown>;
  return [folder, title, opened].every((part) => typeof part === 'string');
}

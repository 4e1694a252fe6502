import { lstat, mkdir, rename } from 'node:fs/promises';
import { join } from 'node:path';
import { Kysely, SqliteDialect } from 'kysely';
import Database from 'libsql';
import { MIGRATIONS } from './migrations.ts';
import type { JournalTables } from './schema.ts';

/** Where the journal stands inside a dossier folder. */
export const JOURNAL_FOLDER = '.printlore';
const JOURNAL_FILE = 'journal.sqlite';

/** The journal opened for this process alone, or in words why it cannot be. */
export type OpenedDatabase =
  | { ok: true; db: Kysely<JournalTables>; close(): Promise<void>; setAside?: string }
  | { ok: false; reason: string };

/**
 * Opens the journal of a dossier folder, made anew where there is none. A file that is no journal
 * is set aside, never deleted; a second process is refused while the first one lives.
 */
export async function openDatabase(folder: string): Promise<OpenedDatabase> {
  const home = join(folder, JOURNAL_FOLDER);
  const file = join(home, JOURNAL_FILE);
  try {
    await mkdir(home).catch(unlessThere);
    for (const path of [home, file]) {
      if (await isLink(path)) return { ok: false, reason: 'its journal is a link to elsewhere' };
    }
    return { ok: true, ...connect(file) };
  } catch (error) {
    if (codeOf(error) !== 'SQLITE_NOTADB') return { ok: false, reason: reasonOf(error) };
    const setAside = await moveAside(file);
    return { ok: true, ...connect(file), setAside };
  }
}

function connect(file: string): { db: Kysely<JournalTables>; close(): Promise<void> } {
  const raw = new Database(file);
  try {
    raw.pragma('locking_mode = EXCLUSIVE');
    raw.pragma('journal_mode = WAL');
    raw.pragma('synchronous = FULL');
    raw.pragma('foreign_keys = ON');
    raw.exec('begin exclusive');
    lift(raw);
    raw.exec('commit');
  } catch (error) {
    raw.close();
    throw error;
  }
  const db = new Kysely<JournalTables>({ dialect: new SqliteDialect({ database: raw }) });
  return {
    db,
    close: async () => {
      letGo(raw);
      await db.destroy();
      if (raw.open) raw.close();
    },
  };
}

/**
 * Folds the log into the file and gives the lock back. Closing alone would keep the lock until the
 * last prepared statement is collected.
 */
function letGo(raw: Database.Database): void {
  raw.pragma('journal_mode = DELETE');
  raw.pragma('locking_mode = NORMAL');
  raw.pragma('user_version');
}

/** Brings an older journal to the newest version. Throws `RangeError` on one from a later release. */
function lift(raw: Database.Database): void {
  const [found] = raw.pragma('user_version') as { user_version: number }[];
  const version = found?.user_version ?? 0;
  if (version > MIGRATIONS.length) {
    throw new RangeError(
      `its journal is of version ${version}, made by a newer Printlore; this one knows ${MIGRATIONS.length}`,
    );
  }
  for (const statement of MIGRATIONS.slice(version).flat()) raw.exec(statement);
  raw.pragma(`user_version = ${MIGRATIONS.length}`);
}

function unlessThere(error: unknown): void {
  if (codeOf(error) !== 'EEXIST') throw error;
}

async function isLink(path: string): Promise<boolean> {
  const found = await lstat(path).catch((error: unknown) => {
    if (codeOf(error) === 'ENOENT') return undefined;
    throw error;
  });
  return found?.isSymbolicLink() ?? false;
}

/** Renames what is no journal, with its log, to a name that is free. */
async function moveAside(file: string): Promise<string> {
  for (let n = 1; ; n++) {
    const aside = `${file}.unreadable-${n}`;
    const taken = await lstat(aside).then(
      () => true,
      () => false,
    );
    if (taken) continue;
    await rename(file, aside);
    return aside;
  }
}

function codeOf(error: unknown): string | undefined {
  return (error as { code?: string }).code;
}

function reasonOf(error: unknown): string {
  switch (codeOf(error)) {
    case 'SQLITE_BUSY':
      return 'it is open in another Printlore';
    case 'EACCES':
    case 'ENOTDIR':
    case 'ENOENT':
    case 'EPERM':
    case 'EROFS':
    case 'SQLITE_READONLY':
    case 'SQLITE_CANTOPEN':
      return 'its folder cannot be written';
    default:
      return error instanceof Error ? error.message : String(error);
  }
}

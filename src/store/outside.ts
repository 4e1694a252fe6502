import type { Kysely } from 'kysely';
import { hashOf, NO_FILE } from './content.ts';
import { know, knownFile, knownHashes, recordOutside } from './journal.ts';
import type { JournalTables } from './schema.ts';
import type { Doors } from './types.ts';

type Db = Kysely<JournalTables>;

/**
 * Looks for edits that another program made since the files were last read or written, and records
 * each as a step of its own. Answers the names of the files that were edited. On the first look at
 * a folder everything is taken as it stands.
 */
export async function lookOutside(db: Db, doors: Doors): Promise<readonly string[]> {
  const hashes = await knownHashes(db);
  const names = new Set([...(await doors.list()), ...hashes.keys()]);
  const edited: string[] = [];
  for (const file of [...names].sort()) {
    const bytes = await doors.read(file);
    const hash = hashOf(bytes);
    if (hash === (hashes.get(file) ?? NO_FILE)) continue;
    if (hashes.size === 0) await know(db, file, hash, bytes);
    else {
      await recordEdit(db, doors, file, bytes, (await knownFile(db, file))?.bytes);
      edited.push(file);
    }
  }
  return edited;
}

/**
 * Records the edit that leads from `before` to `bytes`. An edit of a file that was too large to keep
 * is only noted: it cannot be undone.
 */
export async function recordEdit(
  db: Db,
  doors: Doors,
  file: string,
  bytes: Uint8Array | undefined,
  before: Uint8Array | undefined,
): Promise<void> {
  const nothing = new Uint8Array();
  const was = before ?? ((await knownFile(db, file)) ? undefined : nothing);
  const is = bytes ?? nothing;
  const forward = was ? doors.differences(file, was, is) : [];
  if (forward.length > 0) {
    const label = `Edited outside: ${file}`;
    const inverse = was ? doors.differences(file, is, was) : [];
    await recordOutside(db, label, doors.now(), { file, forward, inverse });
  }
  await know(db, file, hashOf(bytes), bytes);
}

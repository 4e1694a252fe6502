import type { Kysely } from 'kysely';
import { hashOf } from './content.ts';
import { finish, knownFile, setBack, type Write, waitingWrites } from './journal.ts';
import { recordEdit } from './outside.ts';
import type { JournalTables } from './schema.ts';
import type { Doors, Written } from './types.ts';

type Db = Kysely<JournalTables>;

/**
 * Makes the files follow the journal: once after each change, and at the start for what a crash left
 * undone. `ready` holds the bytes already computed, by the number of the write.
 */
export async function followAll(
  db: Db,
  doors: Doors,
  ready: ReadonlyMap<number, Uint8Array> = new Map(),
): Promise<Written> {
  for (const write of await waitingWrites(db)) {
    try {
      await follow(db, doors, write, ready.get(write.id));
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      return { ok: false, reason: `${write.file} could not be written: ${why}` };
    }
  }
  return { ok: true };
}

async function follow(db: Db, doors: Doors, write: Write, ready?: Uint8Array): Promise<void> {
  const current = await doors.read(write.file);
  const hash = hashOf(current);
  if (current && hash === write.after) return await finish(db, write, hash, current);
  if (hash !== write.before) return await followEdited(db, doors, write, current);
  const bytes = ready ?? doors.apply(write.file, current, write.changes).bytes;
  await doors.replace(write.file, bytes);
  await finish(db, write, hashOf(bytes), bytes);
}

/** The file was edited between the acknowledgement and the write: neither side may be lost. */
async function followEdited(
  db: Db,
  doors: Doors,
  write: Write,
  current: Uint8Array | undefined,
): Promise<void> {
  const { file } = write;
  const before = (await knownFile(db, file))?.bytes;
  if (current && doors.apply(file, current, write.inverse).conflicts.length === 0) {
    const after = before && doors.apply(file, before, write.changes).bytes;
    await recordEdit(db, doors, file, current, after);
    return await finish(db, write, hashOf(current), current);
  }
  await recordEdit(db, doors, file, current, before);
  const made = doors.apply(file, current, write.changes);
  if (made.conflicts.length > 0) return await setBack(db, write.id, made.conflicts);
  await doors.replace(file, made.bytes);
  await finish(db, write, hashOf(made.bytes), made.bytes);
}

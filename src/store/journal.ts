import type { Kysely, Transaction } from 'kysely';
import { NO_FILE, pack, unpack } from './content.ts';
import type { JournalTables } from './schema.ts';
import type { Change, Conflict, Step } from './types.ts';

type Db = Kysely<JournalTables>;

/** A file that has to follow: the changes that lead there, and what it was before and is after. */
export interface Write {
  readonly id: number;
  readonly step: number;
  readonly file: string;
  readonly changes: readonly Change[];
  readonly inverse: readonly Change[];
  readonly before: string;
  readonly after: string;
}

/** A write that is not yet in the journal. */
export type Planned = Omit<Write, 'id' | 'step'>;

/** What a step did to one file. */
export interface Part {
  readonly file: string;
  readonly forward: readonly Change[];
  readonly inverse: readonly Change[];
}

/** A file as it was last read or written. */
export interface Known {
  readonly hash: string;
  /** Missing where the file was too large to keep. */
  readonly bytes?: Uint8Array;
}

/** Records a new change with the writes it asks for; what could be taken again is dropped. */
export async function recordChange(
  db: Db,
  label: string,
  at: string,
  planned: readonly Planned[],
): Promise<readonly Write[]> {
  return await db.transaction().execute(async (tx) => {
    const step = await addStep(tx, label, at, 'change');
    for (const { file, changes, inverse } of planned) {
      await addPart(tx, step, { file, forward: changes, inverse });
    }
    return await addWrites(tx, step, planned);
  });
}

/** Records an edit that was found in the files, as a step of its own. */
export async function recordOutside(db: Db, label: string, at: string, part: Part): Promise<void> {
  await db.transaction().execute(async (tx) => {
    await addPart(tx, await addStep(tx, label, at, 'outside'), part);
  });
}

/** Records that a step was taken back or taken again, with the writes it asks for. */
export async function recordMove(
  db: Db,
  step: number,
  way: 'undo' | 'redo',
  planned: readonly Planned[],
): Promise<readonly Write[]> {
  return await db.transaction().execute(async (tx) => {
    const state = way === 'undo' ? 'undone' : 'done';
    await tx.updateTable('steps').set({ state }).where('id', '=', step).execute();
    for (const { file, inverse } of planned) {
      const back = JSON.stringify(inverse);
      await tx
        .updateTable('parts')
        .set(way === 'undo' ? { forward: back } : { inverse: back })
        .where('step', '=', step)
        .where('file', '=', file)
        .execute();
    }
    return await addWrites(tx, step, planned);
  });
}

async function addStep(
  tx: Transaction<JournalTables>,
  label: string,
  at: string,
  kind: 'change' | 'outside',
): Promise<number> {
  await tx.updateTable('steps').set({ state: 'dropped' }).where('state', '=', 'undone').execute();
  const { id } = await tx
    .insertInto('steps')
    .values({ label, at, kind, state: 'done' })
    .returning('id')
    .executeTakeFirstOrThrow();
  return id;
}

async function addPart(tx: Transaction<JournalTables>, step: number, part: Part): Promise<void> {
  await tx
    .insertInto('parts')
    .values({
      step,
      file: part.file,
      forward: JSON.stringify(part.forward),
      inverse: JSON.stringify(part.inverse),
    })
    .execute();
}

async function addWrites(
  tx: Transaction<JournalTables>,
  step: number,
  planned: readonly Planned[],
): Promise<readonly Write[]> {
  const writes: Write[] = [];
  for (const plan of planned) {
    const { id } = await tx
      .insertInto('writes')
      .values({
        step,
        file: plan.file,
        changes: JSON.stringify(plan.changes),
        inverse: JSON.stringify(plan.inverse),
        before_hash: plan.before,
        after_hash: plan.after,
        conflicts: null,
      })
      .returning('id')
      .executeTakeFirstOrThrow();
    writes.push({ ...plan, id, step });
  }
  return writes;
}

/** The file has followed: what it holds now is known, and the write is done with. */
export async function finish(db: Db, write: Write, hash: string, bytes: Uint8Array): Promise<void> {
  const content = await pack(bytes);
  await db.transaction().execute(async (tx) => {
    await tx.deleteFrom('writes').where('id', '=', write.id).execute();
    await putKnown(tx, write.file, hash, content);
  });
}

/** Keeps a write that its file cannot take, for the collector to settle. */
export async function setBack(db: Db, id: number, conflicts: readonly Conflict[]): Promise<void> {
  await db
    .updateTable('writes')
    .set({ conflicts: JSON.stringify(conflicts) })
    .where('id', '=', id)
    .execute();
}

/** Gives a write up, and with it what its step did to that file. */
export async function giveUp(db: Db, id: number): Promise<void> {
  await db.transaction().execute(async (tx) => {
    const write = await tx
      .deleteFrom('writes')
      .where('id', '=', id)
      .returning(['step', 'file'])
      .executeTakeFirst();
    if (!write) return;
    const { step, file } = write;
    await tx.deleteFrom('parts').where('step', '=', step).where('file', '=', file).execute();
    const left = await tx.selectFrom('parts').select('id').where('step', '=', step).execute();
    if (left.length > 0) return;
    await tx.updateTable('steps').set({ state: 'dropped' }).where('id', '=', step).execute();
  });
}

/** The writes that files have still to follow, oldest first. */
export async function waitingWrites(db: Db): Promise<readonly Write[]> {
  const rows = await db
    .selectFrom('writes')
    .selectAll()
    .where('conflicts', 'is', null)
    .orderBy('id')
    .execute();
  return rows.map((row) => ({
    id: row.id,
    step: row.step,
    file: row.file,
    changes: JSON.parse(row.changes),
    inverse: JSON.parse(row.inverse),
    before: row.before_hash,
    after: row.after_hash,
  }));
}

/** The writes that were set back, with the label of their step. */
export async function unsettledWrites(db: Db) {
  const rows = await db
    .selectFrom('writes')
    .innerJoin('steps', 'steps.id', 'writes.step')
    .select(['writes.id', 'steps.label', 'writes.changes', 'writes.conflicts'])
    .where('writes.conflicts', 'is not', null)
    .orderBy('writes.id')
    .execute();
  return rows.map(({ id, label, changes, conflicts }) => ({
    id,
    label,
    changes: JSON.parse(changes) as readonly Change[],
    conflicts: JSON.parse(conflicts ?? '[]') as readonly Conflict[],
  }));
}

/** The step that undo takes back next, or redo takes again. */
export async function nextStep(db: Db, way: 'undo' | 'redo'): Promise<Step | undefined> {
  return await db
    .selectFrom('steps')
    .select(['id', 'label', 'at'])
    .where('state', '=', way === 'undo' ? 'done' : 'undone')
    .orderBy('id', way === 'undo' ? 'desc' : 'asc')
    .executeTakeFirst();
}

/** What a step did to each of its files. */
export async function partsOf(db: Db, step: number): Promise<readonly Part[]> {
  const rows = await db.selectFrom('parts').selectAll().where('step', '=', step).execute();
  return rows.map(({ file, forward, inverse }) => ({
    file,
    forward: JSON.parse(forward),
    inverse: JSON.parse(inverse),
  }));
}

/** A file as it was last read or written; undefined where it was never seen. */
export async function knownFile(db: Db, file: string): Promise<Known | undefined> {
  const row = await db.selectFrom('files').selectAll().where('name', '=', file).executeTakeFirst();
  if (!row) return undefined;
  const bytes = await unpack(row.content);
  return bytes ? { hash: row.hash, bytes } : { hash: row.hash };
}

/** Hash of every file that was ever seen, by its name. */
export async function knownHashes(db: Db): Promise<ReadonlyMap<string, string>> {
  const rows = await db.selectFrom('files').select(['name', 'hash']).execute();
  return new Map(rows.map(({ name, hash }) => [name, hash]));
}

/** Notes what a file holds now. */
export async function know(
  db: Db,
  file: string,
  hash: string,
  bytes: Uint8Array | undefined,
): Promise<void> {
  await putKnown(db, file, hash, hash === NO_FILE ? await pack(undefined) : await pack(bytes));
}

async function putKnown(
  db: Db,
  name: string,
  hash: string,
  content: Uint8Array | null,
): Promise<void> {
  await db
    .insertInto('files')
    .values({ name, hash, content })
    .onConflict((conflict) => conflict.column('name').doUpdateSet({ hash, content }))
    .execute();
}

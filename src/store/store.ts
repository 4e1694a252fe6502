import type { Kysely } from 'kysely';
import { hashOf } from './content.ts';
import { openDatabase } from './database.ts';
import { followAll } from './follow.ts';
import {
  giveUp,
  nextStep,
  type Planned,
  partsOf,
  recordChange,
  recordMove,
  unsettledWrites,
  type Write,
} from './journal.ts';
import { lookOutside } from './outside.ts';
import { inTurn } from './queue.ts';
import type { JournalTables } from './schema.ts';
import type { Change, Conflict, Doors, Outcome, Step, Unsettled, Written } from './types.ts';

type Db = Kysely<JournalTables>;

/** The journal of one dossier, and its files, which follow it. Calls are worked off in turn. */
export interface Store {
  /**
   * Makes changes as one step, all of them or none. It answers once the step is in the journal;
   * the files follow at once (`written`). Edits made outside are recorded first.
   */
  change(label: string, changes: readonly Change[]): Promise<Outcome>;
  /** Takes the last step back; with nothing to take back it changes nothing. */
  undo(): Promise<Outcome>;
  /** Takes the step again that was taken back last. */
  redo(): Promise<Outcome>;
  /** Records what other programs did to the files since, and answers the names of those files. */
  look(): Promise<readonly string[]>;
  /** What undo and redo would take next. */
  steps(): Promise<{ undo: Step | undefined; redo: Step | undefined }>;
  /** Acknowledged changes that wait for the collector's word. */
  unsettled(): Promise<readonly Unsettled[]>;
  /** Makes an unsettled change over the row as it is now (`mine`), or gives it up (`theirs`). */
  settle(id: number, keep: 'mine' | 'theirs'): Promise<Outcome>;
  /** Finishes what is under way and lets the journal go. */
  close(): Promise<void>;
}

/** A store, with what the collector has to know; or in words why the dossier can only be read. */
export type OpenedStore =
  | { readonly ok: true; readonly store: Store; readonly notices: readonly string[] }
  | { readonly ok: false; readonly reason: string };

/**
 * Opens the journal in `<folder>/.printlore`, lets the files follow where a crash left them behind,
 * and records what was edited since. Throws what `doors` throws when a file cannot be read.
 */
export async function openStore(folder: string, doors: Doors): Promise<OpenedStore> {
  const opened = await openDatabase(folder);
  if (!opened.ok) return opened;
  const { db, close, setAside } = opened;
  const notices: string[] = [];
  if (setAside) {
    notices.push(
      `The journal could not be read and was set aside as ${setAside}; undo begins anew.`,
    );
  }
  try {
    const written = await followAll(db, doors);
    if (!written.ok) notices.push(written.reason);
    else await lookOutside(db, doors);
  } catch (error) {
    await close();
    throw error;
  }
  return { ok: true, store: storeOf(db, doors, close), notices };
}

function storeOf(db: Db, doors: Doors, close: () => Promise<void>): Store {
  const queue = inTurn();
  return {
    change: (label, changes) => queue.run(() => change(db, doors, label, changes)),
    undo: () => queue.run(() => move(db, doors, 'undo')),
    redo: () => queue.run(() => move(db, doors, 'redo')),
    look: () => queue.run(() => catchUp(db, doors)),
    steps: () =>
      queue.run(async () => ({
        undo: await nextStep(db, 'undo'),
        redo: await nextStep(db, 'redo'),
      })),
    unsettled: () => queue.run(() => unsettledWrites(db)),
    settle: (id, keep) => queue.run(() => settle(db, doors, id, keep)),
    close: async () => {
      await queue.end();
      await close();
    },
  };
}

const NOTHING: Outcome = { conflicts: [], edited: [], written: Promise.resolve({ ok: true }) };

/** The files follow what waits, and edits made outside are recorded; answers the names of those. */
async function catchUp(db: Db, doors: Doors): Promise<readonly string[]> {
  const behind = await followAll(db, doors);
  if (!behind.ok) throw new UnwritableError(behind.reason);
  return await lookOutside(db, doors);
}

async function change(
  db: Db,
  doors: Doors,
  label: string,
  changes: readonly Change[],
): Promise<Outcome> {
  const edited = await catchUp(db, doors);
  const record = (plans: readonly Planned[]) => recordChange(db, label, doors.now(), plans);
  return { edited, ...(await make(db, doors, changes, record)) };
}

async function move(db: Db, doors: Doors, way: 'undo' | 'redo'): Promise<Outcome> {
  const edited = await catchUp(db, doors);
  const step = await nextStep(db, way);
  if (!step) return { ...NOTHING, edited };
  const parts = await partsOf(db, step.id);
  const changes = parts.flatMap((part) => (way === 'undo' ? part.inverse : part.forward));
  const record = (plans: readonly Planned[]) => recordMove(db, step.id, way, plans);
  return { edited, ...(await make(db, doors, changes, record)) };
}

async function settle(db: Db, doors: Doors, id: number, keep: 'mine' | 'theirs'): Promise<Outcome> {
  const found = (await unsettledWrites(db)).find((write) => write.id === id);
  if (!found) return NOTHING;
  if (keep === 'mine') {
    const outcome = await change(db, doors, found.label, over(found));
    if (outcome.conflicts.length === 0) await giveUp(db, id);
    return outcome;
  }
  await giveUp(db, id);
  return NOTHING;
}

/** Applies changes to each file they speak of, and records them unless one cannot be made. */
async function make(
  db: Db,
  doors: Doors,
  changes: readonly Change[],
  record: (plans: readonly Planned[]) => Promise<readonly Write[]>,
): Promise<Omit<Outcome, 'edited'>> {
  const conflicts: Conflict[] = [];
  const plans: Planned[] = [];
  const bytes: Uint8Array[] = [];
  for (const file of new Set(changes.map((change) => change.file))) {
    const mine = changes.filter((change) => change.file === file);
    const current = await doors.read(file);
    const made = doors.apply(file, current, mine);
    conflicts.push(...made.conflicts);
    bytes.push(made.bytes);
    const [before, after] = [hashOf(current), hashOf(made.bytes)];
    plans.push({ file, changes: mine, inverse: made.inverse, before, after });
  }
  if (conflicts.length > 0) return { conflicts, written: NOTHING.written };
  const writes = await record(plans);
  const ready = new Map(writes.map((write, index) => [write.id, bytes[index]!]));
  return { conflicts, written: followAll(db, doors, ready) };
}

/** The changes of a write that was set back, made to fit the rows as they are now. */
function over(write: {
  readonly changes: readonly Change[];
  readonly conflicts: readonly Conflict[];
}): readonly Change[] {
  return write.changes.flatMap((change): readonly Change[] => {
    const conflict = write.conflicts.find((one) => sameChange(one.change, change));
    if (!conflict) return [change];
    const { raw: _, before: __, ...rest } = change;
    if (conflict.now) return [{ ...rest, before: conflict.now }];
    return change.op === 'remove' ? [] : [{ ...rest, op: 'add' }];
  });
}

function sameChange(one: Change, other: Change): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

/** An earlier change still waits to be written, so that no later one can be taken. */
export class UnwritableError extends Error {
  override name = 'UnwritableError';
}

export type { Written };

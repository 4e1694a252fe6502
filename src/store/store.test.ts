import { mkdir, mkdtemp, readdir, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Change, type Doors, type OpenedStore, openStore, type Store } from './index.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);
const textOf = (bytes: Uint8Array | undefined) => new TextDecoder().decode(bytes);
const linesOf = (bytes: Uint8Array | undefined) => textOf(bytes).split('\n').filter(Boolean);

/** A table of one column: every line is a row. */
function applyLines(_file: string, bytes: Uint8Array | undefined, changes: readonly Change[]) {
  const lines = linesOf(bytes);
  const conflicts = [];
  const inverse: Change[] = [];
  for (const change of changes) {
    const { file, before, after } = change;
    const at = before ? lines.indexOf(before.text ?? '') : lines.length;
    if (at < 0) {
      conflicts.push({ change, reason: 'gone' as const, now: { text: lines[0] ?? '' } });
      continue;
    }
    lines.splice(at, before ? 1 : 0, ...(after ? [after.text ?? ''] : []));
    inverse.unshift({
      file,
      op: !before ? 'remove' : after ? 'replace' : 'add',
      ...(after ? { before: after } : {}),
      ...(before ? { after: before } : {}),
    });
  }
  return { bytes: bytesOf(lines.map((line) => `${line}\n`).join('')), conflicts, inverse };
}

function lineDifferences(file: string, from: Uint8Array, to: Uint8Array): Change[] {
  const [old, now] = [linesOf(from), linesOf(to)];
  return [
    ...old
      .filter((text) => !now.includes(text))
      .map((text): Change => ({ file, op: 'remove', before: { text } })),
    ...now
      .filter((text) => !old.includes(text))
      .map((text): Change => ({ file, op: 'add', after: { text } })),
  ];
}

const add = (text: string, file = 'claims.csv'): Change => ({ file, op: 'add', after: { text } });
const replace = (from: string, to: string): Change => ({
  file: 'claims.csv',
  op: 'replace',
  before: { text: from },
  after: { text: to },
});

describe('a store', () => {
  let folder: string;
  let files: Map<string, Uint8Array>;
  let doors: Doors;
  let store: Store;
  const claims = () => linesOf(files.get('claims.csv'));

  async function open(): Promise<Store> {
    const opened = await openStore(folder, doors);
    if (!opened.ok) throw new Error(opened.reason);
    return opened.store;
  }
  async function make(label: string, ...changes: Change[]) {
    const outcome = await store.change(label, changes);
    expect(await outcome.written).toEqual({ ok: true });
    return outcome.conflicts;
  }

  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'printlore-store-'));
    files = new Map([['claims.csv', bytesOf('one\ntwo\n')]]);
    doors = {
      list: async () => [...files.keys()],
      read: async (file) => files.get(file),
      replace: async (file, bytes) => void files.set(file, bytes),
      apply: applyLines,
      differences: lineDifferences,
      now: () => '2026-11-25T12:00:00Z',
    };
    store = await open();
  });
  afterEach(async () => {
    await store.close();
    await rm(folder, { recursive: true });
  });

  it('takes steps back and again, also after it was closed in between', async () => {
    await make('Add three', add('three'), add('a source', 'sources.csv'));
    await make('Rename one', replace('one', 'uno'));
    expect(claims()).toEqual(['uno', 'two', 'three']);
    await store.close();
    store = await open();
    expect((await store.steps()).undo?.label).toBe('Rename one');
    await (await store.undo()).written;
    await (await store.undo()).written;
    expect([claims(), linesOf(files.get('sources.csv'))]).toEqual([['one', 'two'], []]);
    expect((await store.steps()).redo?.label).toBe('Add three');
    expect((await store.steps()).undo).toBeUndefined();
    await store.close();
    store = await open();
    await (await store.redo()).written;
    await (await store.redo()).written;
    expect(claims()).toEqual(['uno', 'two', 'three']);
    expect((await store.steps()).redo).toBeUndefined();
  });

  it('drops what could be taken again when something new is done', async () => {
    await make('Add three', add('three'));
    await (await store.undo()).written;
    await make('Add four', add('four'));
    expect(await store.steps()).toMatchObject({ undo: { label: 'Add four' } });
    expect((await store.steps()).redo).toBeUndefined();
  });

  it('changes nothing at all when one change of several disagrees', async () => {
    const [conflict, ...more] = await make('Both', add('three'), replace('zero', 'null'));
    expect(conflict).toMatchObject({ reason: 'gone', now: { text: 'one' } });
    expect(more).toEqual([]);
    expect(claims()).toEqual(['one', 'two']);
    expect((await store.steps()).undo).toBeUndefined();
  });

  it('records an edit made outside as a step, keeps it, and can take it back', async () => {
    await make('Add three', add('three'));
    files.set('claims.csv', bytesOf('one\ndos\nthree\n'));
    await make('Add four', add('four'));
    expect(claims()).toEqual(['one', 'dos', 'three', 'four']);
    await (await store.undo()).written;
    expect((await store.steps()).undo?.label).toBe('Edited outside: claims.csv');
    await (await store.undo()).written;
    expect(claims().sort()).toEqual(['one', 'three', 'two']);
    expect((await store.steps()).undo?.label).toBe('Add three');
  });

  it('finds edits made while it was shut, and none where there were none', async () => {
    await store.close();
    files.set('claims.csv', bytesOf('one\n'));
    files.set('sources.csv', bytesOf('a shop\n'));
    store = await open();
    expect(await store.look()).toEqual([]);
    expect((await store.steps()).undo?.label).toBe('Edited outside: sources.csv');
    files.delete('sources.csv');
    expect(await store.look()).toEqual(['sources.csv']);
    expect(await store.look()).toEqual([]);
  });

  it('returns a conflict where both sides changed the same row', async () => {
    files.set('claims.csv', bytesOf('uno\ntwo\n'));
    expect(await make('Rename one', replace('one', 'eins'))).toHaveLength(1);
    expect(claims()).toEqual(['uno', 'two']);
  });

  describe('whose files could not follow', () => {
    const failing = async () => {
      const replaceTruly = doors.replace;
      doors.replace = async () => {
        throw new Error('disk full');
      };
      const outcome = await store.change('Rename one', [replace('one', 'uno'), add('three')]);
      expect(await outcome.written).toEqual({
        ok: false,
        reason: 'claims.csv could not be written: disk full',
      });
      await expect(store.change('Add four', [add('four')])).rejects.toThrow(/disk full/);
      doors.replace = replaceTruly;
      await store.close();
    };

    it('lets them follow at the next start', async () => {
      await failing();
      store = await open();
      expect(claims()).toEqual(['uno', 'two', 'three']);
      await (await store.undo()).written;
      expect(claims()).toEqual(['one', 'two']);
    });

    it('does nothing twice where the file was written and only the note is missing', async () => {
      await failing();
      files.set('claims.csv', bytesOf('uno\ntwo\nthree\n'));
      store = await open();
      expect(claims()).toEqual(['uno', 'two', 'three']);
      expect((await store.steps()).undo?.label).toBe('Rename one');
    });

    it('puts both together where another row was edited meanwhile', async () => {
      await failing();
      files.set('claims.csv', bytesOf('one\ndos\n'));
      store = await open();
      expect(claims()).toEqual(['uno', 'dos', 'three']);
    });

    it('does nothing twice where the file was written and then edited', async () => {
      await failing();
      files.set('claims.csv', bytesOf('uno\ndos\nthree\n'));
      store = await open();
      expect(claims()).toEqual(['uno', 'dos', 'three']);
      await (await store.undo()).written;
      expect(claims().sort()).toEqual(['three', 'two', 'uno']);
    });

    it.each([
      ['mine', ['uno', 'two', 'three']],
      ['theirs', ['ein', 'two']],
    ] as const)('asks where the same row was edited, and takes %s', async (keep, rows) => {
      await failing();
      files.set('claims.csv', bytesOf('ein\ntwo\n'));
      store = await open();
      expect(claims()).toEqual(['ein', 'two']);
      const [unsettled, ...more] = await store.unsettled();
      expect(unsettled).toMatchObject({ label: 'Rename one', conflicts: [{ reason: 'gone' }] });
      expect(more).toEqual([]);
      await (await store.settle(unsettled!.id, keep)).written;
      expect(claims()).toEqual(rows);
      expect(await store.unsettled()).toEqual([]);
    });
  });

  describe('that cannot be opened', () => {
    const refusal = (opened: OpenedStore) => (opened.ok ? 'opened' : opened.reason);

    it('says that another one has it open', async () => {
      expect(refusal(await openStore(folder, doors))).toBe('it is open in another Printlore');
    });

    it('says that its folder cannot be written', async () => {
      const blocked = join(folder, 'blocked');
      await writeFile(blocked, '');
      expect(refusal(await openStore(blocked, doors))).toBe('its folder cannot be written');
    });

    it('does not follow a link that leads out of the folder', async () => {
      const other = join(folder, 'other');
      await symlink(folder, other);
      const linked = await mkdtemp(join(tmpdir(), 'printlore-linked-'));
      await symlink(folder, join(linked, '.printlore'));
      expect(refusal(await openStore(linked, doors))).toBe('its journal is a link to elsewhere');
      await rm(linked, { recursive: true });
    });
  });

  it('sets aside a journal that is none, and begins anew', async () => {
    await store.close();
    const home = join(folder, '.printlore');
    await rm(home, { recursive: true });
    await mkdir(home);
    await writeFile(join(home, 'journal.sqlite'), 'no database at all, '.repeat(300));
    const opened = await openStore(folder, doors);
    if (!opened.ok) throw new Error(opened.reason);
    store = opened.store;
    expect(opened.notices[0]).toMatch(/set aside/);
    expect(await readdir(home)).toContain('journal.sqlite.unreadable-1');
    expect(await make('Add three', add('three'))).toEqual([]);
  });
});

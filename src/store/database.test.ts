import { mkdir, mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'libsql';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openDatabase } from './database.ts';
import { nextStep, partsOf } from './journal.ts';
import { MIGRATIONS } from './migrations.ts';

const SAMPLES = new URL('../../checks/fixtures/journal/', import.meta.url);

describe('the journal of an older release', () => {
  let folder: string;
  const fileOf = () => join(folder, '.printlore', 'journal.sqlite');
  const lay = (sql: string) => {
    const raw = new Database(fileOf());
    raw.exec(sql);
    raw.close();
  };
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'printlore-journal-'));
    await mkdir(join(folder, '.printlore'));
  });
  afterEach(() => rm(folder, { recursive: true }));

  it.each(MIGRATIONS.map((_, index) => index + 1))('of version %i keeps its history', async (n) => {
    lay(await readFile(new URL(`${n}.sql`, SAMPLES), 'utf8'));
    const opened = await openDatabase(folder);
    if (!opened.ok) throw new Error(opened.reason);
    const { db, close } = opened;
    expect((await nextStep(db, 'undo'))?.label).toBe('Add a claim of the checklist');
    expect((await nextStep(db, 'redo'))?.at).toBe('2026-11-02T10:01:00Z');
    expect((await partsOf(db, 2))[0]?.inverse).toEqual([
      { file: 'claims.csv', op: 'add', after: { value: '1996' } },
    ]);
    await close();
  });

  it('of a newer release is left alone', async () => {
    lay(`create table leaves (id integer); pragma user_version = ${MIGRATIONS.length + 1}`);
    const opened = await openDatabase(folder);
    expect(opened).toEqual({
      ok: false,
      reason: `its journal is of version ${MIGRATIONS.length + 1}, made by a newer Printlore; this one knows ${MIGRATIONS.length}`,
    });
  });

  it('gives the lock back when it is closed, so that it can be opened again', async () => {
    for (let n = 0; n < 3; n++) {
      const opened = await openDatabase(folder);
      if (!opened.ok) throw new Error(opened.reason);
      await nextStep(opened.db, 'undo');
      expect(await openDatabase(folder)).toMatchObject({ ok: false });
      await opened.close();
    }
  });
});

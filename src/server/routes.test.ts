import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  ChangedSchema,
  DatingAnswerSchema,
  DossierSchema,
  DossiersSchema,
  NotesAnswerSchema,
  OpenedSchema,
} from '../contract/index.ts';
import { startTrial, type Trial } from './fixtures/running.ts';

describe('the routes', () => {
  let trial: Trial;
  beforeEach(async () => {
    trial = await startTrial();
  });
  afterEach(() => trial.end());

  const dossier = async () => DossierSchema.parse((await trial.ask('/api/dossier')).body);
  const textOf = (file: string) => readFile(join(trial.folder, file), 'utf8');
  const added = {
    file: 'claims.csv',
    op: 'add',
    after: { printing: 'fi-first', source: 'catalogo', property: 'seen-by', value: '1996-10' },
  };
  const change = async (label: string, ...changes: object[]) => {
    const { version } = await dossier();
    return ChangedSchema.parse((await trial.ask('/api/changes', { version, label, changes })).body);
  };

  it('give the dossier with its rows and cells', async () => {
    const { title, demo, writable, printings, claims, sources, faults, undo } = await dossier();
    expect({ title, demo, writable, faults, undo }).toEqual({
      title: 'Amberjay',
      demo: false,
      writable: true,
      faults: [],
      undo: null,
    });
    expect(printings.map(({ id, row }) => [id, row])).toEqual([
      ['pt-first', 2],
      ['fi-first', 3],
    ]);
    expect(claims[1]).toMatchObject({
      row: 3,
      printings: ['fi-first'],
      span: ['1996-09-01', '1996-09-30'],
      cells: { value: '1996-09' },
    });
    expect(sources[0]).toMatchObject({ id: 'catalogo', kind: 'checklist', cites: [] });
  });

  it('list neither an id that was given up nor a whole that stands for its parts', async () => {
    const rows = 'id,part_of,replaced_by\nlark,,\nlark-foil,lark,\nlark-old,,lark-foil\n';
    await writeFile(join(trial.folder, 'printings.csv'), rows);
    const { printings, otherIds } = await dossier();
    expect(printings.map(({ id, row }) => [id, row])).toEqual([['lark-foil', 3]]);
    expect(otherIds).toEqual(['lark', 'lark-old']);
  });

  it('count the copies held, by what their ids stand for, and tell nothing else of the desk', async () => {
    const rows =
      'id,part_of,replaced_by\nlark,,\nlark-foil,lark,\nlark-matte,lark,\nlark-old,,lark-foil\nrook,,\nwren,,\n';
    await writeFile(join(trial.folder, 'printings.csv'), rows);
    expect((await dossier()).held).toEqual([]);
    await mkdir(join(trial.folder, 'desk'));
    const copies = [
      'id,printing,status,price,currency,listing',
      '1,lark-old,kept,12.50,EUR,a very private word',
      '2,lark-foil,submitted,,,',
      '3,lark,disputed,,,',
      '4,rook|lark-matte,arrived,,,',
      '5,wren,offered,,,',
      '6,wren,returned,,,',
      '7,wren,sold,,,',
      '8,wren,,,,',
      '9,rook,bought,,,',
    ];
    await writeFile(join(trial.folder, 'desk', 'copies.csv'), `${copies.join('\n')}\n`);
    const { body } = await trial.ask('/api/dossier');
    expect(DossierSchema.parse(body).held).toEqual([
      { printing: 'lark-foil', copies: 2, perhaps: 1 },
      { printing: 'lark-matte', copies: 0, perhaps: 2 },
      { printing: 'rook', copies: 1, perhaps: 1 },
    ]);
    expect(JSON.stringify(body)).not.toMatch(/private|12\.50/);
  });

  it('answer unchanged data with 304', async () => {
    const headers = { 'x-printlore-token': trial.running.token };
    await trial.ask('/api/dating?effort=refined');
    const first = await fetch(`${trial.running.url}api/dossier`, { headers });
    const tag = first.headers.get('etag') ?? '';
    const again = { ...headers, 'if-none-match': tag };
    expect((await fetch(`${trial.running.url}api/dossier`, { headers: again })).status).toBe(304);
    await change('Add a claim', added);
    expect((await fetch(`${trial.running.url}api/dossier`, { headers: again })).status).toBe(200);
  });

  it('write a change to its file, take it back and again', async () => {
    const before = await textOf('claims.csv');
    const made = await change('Add a claim', added);
    expect([made.conflicts, made.undo?.label]).toEqual([[], 'Add a claim']);
    const after = await textOf('claims.csv');
    expect(after).toBe(`${before}fi-first,catalogo,seen-by,1996-10\n`);
    expect((await dossier()).claims).toHaveLength(3);
    const undone = ChangedSchema.parse((await trial.ask('/api/undo', {})).body);
    expect([undone.undo, undone.redo?.label]).toEqual([null, 'Add a claim']);
    expect(await textOf('claims.csv')).toBe(before);
    await trial.again();
    await trial.ask('/api/redo', {});
    expect(await textOf('claims.csv')).toBe(after);
    expect((await readdir(trial.folder)).sort()).toEqual(
      ['.printlore', 'claims.csv', 'dossier.json', 'printings.csv', 'sources.csv'].sort(),
    );
  });

  it('keep a stated weekday habit like every other row', async () => {
    const after = { market: 'FI', weekdays: 'friday', from: '1994', source: 'catalogo' };
    await change('State a habit', { file: 'weekdays.csv', op: 'add', after });
    expect((await dossier()).weekdays).toMatchObject([{ row: 2, cells: after }]);
    expect(await textOf('weekdays.csv')).toContain('\nFI,');
    await trial.ask('/api/undo', {});
    expect((await dossier()).weekdays).toEqual([]);
  });

  it('read an edit made outside, and keep it', async () => {
    await change('Add a claim', added);
    const edited = (await textOf('claims.csv')).replace('1996-05-03', '1996-05-10');
    await writeFile(join(trial.folder, 'claims.csv'), edited);
    const shown = await dossier();
    expect(shown.claims[0]?.value).toBe('1996-05-10');
    expect(shown.undo?.label).toBe('Edited outside: claims.csv');
    await trial.ask('/api/undo', {});
    expect((await dossier()).claims.map(({ value }) => value)).toEqual([
      '1996-05-03',
      '1996-09',
      '1996-10',
    ]);
  });

  it('return a conflict where the row was edited meanwhile, and write nothing', async () => {
    const row = (await dossier()).claims[0]!;
    const edited = (await textOf('claims.csv')).replace('1996-05-03', '1996-05-10');
    await writeFile(join(trial.folder, 'claims.csv'), edited);
    const { file, op } = { file: 'claims.csv', op: 'replace' };
    const after = { ...row.cells, value: '1996-05-04' };
    const mine = { file, op, row: row.row, before: row.cells, after };
    const made = await change('Correct a day', mine);
    expect(made.conflicts).toMatchObject([{ reason: 'gone', now: { value: '1996-05-10' } }]);
    expect(made.conflicts[0]?.message).toMatch(/claims\.csv, row 2/);
    expect(await textOf('claims.csv')).toBe(edited);
    const again = { ...mine, before: made.conflicts[0]?.now };
    expect((await change('Correct a day', again)).conflicts).toEqual([]);
    expect((await dossier()).claims[0]?.value).toBe('1996-05-04');
  });

  it('write nothing into a file that is no table any more, and go on once it is one', async () => {
    const good = await textOf('claims.csv');
    await change('Add a claim', added);
    const utf16 = Buffer.from(`\ufeff${good}`, 'utf16le');
    await writeFile(join(trial.folder, 'claims.csv'), utf16);
    const { version, faults } = await dossier();
    expect(faults.map(({ file, row }) => [file, row])).toContainEqual(['claims.csv', null]);
    for (const [path, body] of [
      ['/api/changes', { version, label: 'Add', changes: [added] }],
      ['/api/undo', {}],
    ] as const) {
      const refused = await trial.ask(path, body);
      expect([refused.status, refused.body.error.code]).toEqual([503, 'cannot-read']);
    }
    expect(await readFile(join(trial.folder, 'claims.csv'))).toEqual(utf16);
    await writeFile(join(trial.folder, 'claims.csv'), good);
    expect((await change('Add a claim', added)).conflicts).toEqual([]);
    expect((await dossier()).claims).toHaveLength(3);
  });

  it('date anew after a change, first soon and then well', async () => {
    const first = (await trial.ask('/api/dating?effort=first')).body;
    expect(DatingAnswerSchema.parse(first).dating?.effort).toBe('first');
    const { version } = await change('Add a claim', added);
    const refined = DatingAnswerSchema.parse((await trial.ask('/api/dating?effort=refined')).body);
    expect([refined.version, refined.dating?.effort]).toEqual([version, 'refined']);
    expect((await trial.ask('/api/dating?effort=best')).status).toBe(400);
  });

  it('read notes, and write nothing', async () => {
    const { status, body } = await trial.ask('/api/notes', { text: 'no. 14 foil - pub. 24.9.93' });
    expect(status).toBe(200);
    expect(NotesAnswerSchema.parse(body).lines).toHaveLength(1);
    expect((await dossier()).undo).toBeNull();
  });

  it('begin a dossier in the data folder, and open it', async () => {
    const changes = [{ file: 'printings.csv', op: 'add', after: { id: 'ko-1', market: 'KR' } }];
    const request = { title: 'Glass Heron!', language: 'ko', changes };
    const opened = OpenedSchema.parse((await trial.ask('/api/begin', request)).body);
    expect(opened.folder).toMatch(/data.glass-heron$/);
    expect(await dossier()).toMatchObject({
      title: 'Glass Heron!',
      folder: opened.folder,
      printings: [{ id: 'ko-1' }],
      faults: [],
    });
    const second = OpenedSchema.parse((await trial.ask('/api/begin', request)).body);
    expect(second.folder).toMatch(/data.glass-heron-2$/);
    const { dossiers } = DossiersSchema.parse((await trial.ask('/api/dossiers')).body);
    expect(dossiers.map(({ title, current }) => [title, current])).toEqual([
      ['Glass Heron!', true],
      ['Glass Heron!', false],
      ['Amberjay', false],
    ]);
  });

  it('begin with rows that are added, not with others', async () => {
    const request = (change: object) => ({ title: 'Odd', language: 'en', changes: [change] });
    for (const change of [
      { file: '../printings.csv', op: 'add', after: { id: 'a' } },
      { file: 'printings.csv', op: 'remove', before: { id: 'a' } },
    ]) {
      const { status, body } = await trial.ask('/api/begin', request(change));
      expect([status, body.error.code]).toEqual([400, 'bad-request']);
    }
    expect(await readdir(join(trial.root, 'data'))).not.toContain('odd');
  });

  it('open another folder, and take no change meant for the last', async () => {
    const { version } = await dossier();
    const data = join(trial.root, 'data');
    const opened = await trial.ask('/api/open', { folder: join(data, 'demo') });
    expect(OpenedSchema.parse(opened.body).version).toBeGreaterThan(version);
    expect(await dossier()).toMatchObject({ demo: true });
    const late = await trial.ask('/api/changes', { version, label: 'Late', changes: [added] });
    expect([late.status, late.body.error.code]).toEqual([409, 'other-dossier']);
    for (const folder of ['relative', join(trial.root, 'none'), trial.root]) {
      const { status, body } = await trial.ask('/api/open', { folder });
      expect(status).toBeGreaterThanOrEqual(400);
      expect(body.error.message).toMatch(/full path|no such folder|no printings\.csv/);
    }
    expect(await dossier()).toMatchObject({ demo: true });
  });

  it('open again what was open last, else the demo', async () => {
    await trial.again({ folder: undefined } as never);
    expect(await dossier()).toMatchObject({ title: 'Amberjay' });
    await trial.again({ folder: undefined, dataFolder: join(trial.root, 'other') } as never);
    expect(await dossier()).toMatchObject({ demo: true });
  });

  it('show a dossier that cannot be written, and refuse changes', async () => {
    const other = await startTrial();
    await writeFile(join(other.root, 'blocker'), '');
    try {
      await trial.ask('/api/open', { folder: other.folder });
      const shown = await dossier();
      expect(shown.writable).toBe(false);
      expect(shown.notices.join()).toMatch(/only be read: it is open in another Printlore/);
      expect(shown.printings).toHaveLength(2);
      const { version } = shown;
      const { status, body } = await trial.ask('/api/changes', {
        version,
        label: 'x',
        changes: [added],
      });
      expect([status, body.error.code]).toEqual([403, 'read-only']);
      expect((await trial.ask('/api/undo', {})).status).toBe(403);
    } finally {
      await other.end();
    }
  });
});

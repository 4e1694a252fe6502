import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readDossier } from '../../dossier/index.ts';
import { filesOf } from '../../host/index.ts';
import { writeSeen } from './seen.ts';

const NOTE = 'Two specks at the top edge';
const SEEN = {
  is: 'seen',
  at: 62.5,
  clock: '2026-06-18T20:31:04+03:00',
  copy: 'hare-1',
  note: NOTE,
};
const EVENTS = 'desk/events.csv';
const EXAMINATION = 'desk/examinations/hare-1.json';

describe('what was seen on film', () => {
  let folder: string;
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'printlore-seen-'));
    await cp('demo/dossier', folder, { recursive: true });
    await mkdir(join(folder, 'desk/examinations'), { recursive: true });
    await writeFile(join(folder, EXAMINATION), '{"marks": [{"id": "by-hand"}]}');
  });
  afterEach(() => rm(folder, { recursive: true }));

  const text = (file: string) => readFile(join(folder, file), 'utf8');
  const write = async (copy = 'hare-1') => {
    const dossier = await readDossier(await filesOf(folder));
    const terminal = { width: 80, watched: false, write: async () => {}, say: () => {} };
    await writeSeen(folder, dossier, [{ ...SEEN, copy } as never], 'desk.mp4', terminal);
  };
  const marks = async () => JSON.parse(await text(EXAMINATION)).marks as { target: object }[];

  it('becomes one event and one mark at that moment, once', async () => {
    const events = await text(EVENTS);
    const before = await marks();
    await write();
    await write();
    const added = (await text(EVENTS)).slice(events.length);
    expect(added.split(NOTE)).toHaveLength(2);
    expect(added).toContain('seen on film');
    const after = await marks();
    expect(after.slice(0, -1)).toEqual(before);
    expect(after.at(-1)?.target).toMatchObject({
      source: 'desk.mp4',
      selector: { type: 'FragmentSelector', value: 't=62.5' },
    });
  });

  it('is refused for a copy that is not there or an examination that is broken, and nothing is written', async () => {
    const events = await text(EVENTS);
    await expect(write('hare-9')).rejects.toThrow('hare-9, which is not on the desk');
    await writeFile(join(folder, EXAMINATION), '{');
    await expect(write()).rejects.toThrow('no JSON object');
    expect([await text(EVENTS), await text(EXAMINATION)]).toEqual([events, '{']);
  });
});

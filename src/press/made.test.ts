import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { MADE, makerInto } from './made.ts';
import { type Files, shelfOf } from './told.ts';

let place: string;
beforeEach(async () => {
  place = await mkdtemp(join(tmpdir(), 'printlore-made-'));
});
afterEach(() => rm(place, { recursive: true, force: true }));

/** Makes one file of a source, into a site whose folder is `place`; how often, and what came of it. */
async function publish(source: string, earlier: string | null = place) {
  const files: Files = new Map();
  const maker = await makerInto(shelfOf(files), earlier);
  let made = 0;
  const told = await maker.put(source, async () => {
    made++;
    return { files: new Map([['a.txt', `of ${source}`]]), told: { length: source.length } };
  });
  files.set(MADE, maker.notes());
  for (const [name, content] of files) await writeFile(join(place, name), content);
  return { made, told, text: await readFile(join(place, 'a.txt'), 'utf8') };
}

it('takes over what was made of the same, and makes the rest anew', async () => {
  expect(await publish('one')).toEqual({ made: 1, told: { length: 3 }, text: 'of one' });
  const notes = await readFile(join(place, MADE), 'utf8');
  expect(await publish('one')).toEqual({ made: 0, told: { length: 3 }, text: 'of one' });
  expect(await readFile(join(place, MADE), 'utf8')).toBe(notes);
  expect(await publish('other')).toEqual({ made: 1, told: { length: 5 }, text: 'of other' });
  expect(await publish('one')).toMatchObject({ made: 1, text: 'of one' });
});

it('takes over nothing that was changed, is gone, or of which the notes are none', async () => {
  await publish('one');
  await writeFile(join(place, 'a.txt'), 'changed');
  expect(await publish('one')).toMatchObject({ made: 1, text: 'of one' });
  await rm(join(place, 'a.txt'));
  expect((await publish('one')).made).toBe(1);
  for (const notes of ['{', '[]', '{"one":{}}', '{"one":{"files":{"a.txt":1}}}']) {
    await writeFile(join(place, MADE), notes);
    expect(await publish('one'), notes).toMatchObject({ made: 1, text: 'of one' });
  }
  expect((await publish('one', null)).made).toBe(1);
});

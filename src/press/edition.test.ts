import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Revision } from '../chronicle/index.ts';
import { filledWith } from '../host/index.ts';
import { publishInto } from './edition.ts';

let place: string;
let site: string;
beforeEach(async () => {
  place = await mkdtemp(join(tmpdir(), 'printlore-edition-'));
  site = join(place, 'site');
});
afterEach(() => rm(place, { recursive: true, force: true }));

const revision: Revision = {
  format: 1,
  number: 1,
  day: '2026-06-30',
  sha512: '0'.repeat(128),
  files: {},
  madeWith: 'Printlore 0.1.0',
  figures: [],
  claims: [],
};
const pages = (text: string) => filledWith(new Map([['index.html', text]]));
const page = () => readFile(join(site, 'index.html'), 'utf8');

it('freezes a new revision with its site, and nothing for a proof or where nothing changed', async () => {
  await publishInto(site, place, null, pages('proof'));
  await publishInto(site, place, { revision, isNew: false, earlier: [] }, pages('as before'));
  expect(await readdir(place)).toEqual(['site']);
  await publishInto(site, place, { revision, isNew: true, earlier: [] }, pages('one'));
  expect(await page()).toBe('one');
  expect(JSON.parse(await readFile(join(place, 'revisions', '1.json'), 'utf8'))).toEqual(revision);
});

it('leaves the earlier site where the revision cannot be written, and the other way round', async () => {
  await publishInto(site, place, null, pages('one'));
  await writeFile(join(place, 'revisions'), 'a file in the place of the folder');
  const edition = { revision, isNew: true, earlier: [] };
  await expect(publishInto(site, place, edition, pages('two'))).rejects.toThrow();
  expect(await page()).toBe('one');
  expect((await readdir(place)).sort()).toEqual(['revisions', 'site']);

  await rm(join(place, 'revisions'));
  const impossible = filledWith(
    new Map([
      ['index.html', 'three'],
      ['index.html/none', 'x'],
    ]),
  );
  await expect(publishInto(site, place, edition, impossible)).rejects.toThrow();
  expect(await page()).toBe('one');
  expect(await readdir(place)).toEqual(['site']);
});

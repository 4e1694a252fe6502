import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Revision } from '../chronicle/index.ts';
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
const pages = (text: string) => new Map([['index.html', text]]);
const page = () => readFile(join(site, 'index.html'), 'utf8');

it('freezes a new revision with its site, and nothing for a proof or where nothing changed', async () => {
  await publishInto(site, pages('proof'), place, null);
  await publishInto(site, pages('as before'), place, { revision, isNew: false, earlier: [] });
  expect(await readdir(place)).toEqual(['site']);
  await publishInto(site, pages('one'), place, { revision, isNew: true, earlier: [] });
  expect(await page()).toBe('one');
  expect(JSON.parse(await readFile(join(place, 'revisions', '1.json'), 'utf8'))).toEqual(revision);
});

it('leaves the earlier site where the revision cannot be written, and the other way round', async () => {
  await publishInto(site, pages('one'), place, null);
  await writeFile(join(place, 'revisions'), 'a file in the place of the folder');
  const edition = { revision, isNew: true, earlier: [] };
  await expect(publishInto(site, pages('two'), place, edition)).rejects.toThrow();
  expect(await page()).toBe('one');
  expect((await readdir(place)).sort()).toEqual(['revisions', 'site']);

  await rm(join(place, 'revisions'));
  const impossible = new Map([['index.html/none', 'x'], ...pages('three')]);
  await expect(publishInto(site, impossible, place, edition)).rejects.toThrow();
  expect(await page()).toBe('one');
  expect(await readdir(place)).toEqual(['site']);
});

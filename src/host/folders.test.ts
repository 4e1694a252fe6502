import { mkdir, mkdtemp, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { replaceFolder } from './folders.ts';

let place: string;
beforeEach(async () => {
  place = await mkdtemp(join(tmpdir(), 'printlore-folders-'));
});
afterEach(() => rm(place, { recursive: true, force: true }));

const files = (text: string) => new Map([['a/b.txt', text]]);
const read = () => readFile(join(place, 'site', 'a/b.txt'), 'utf8');

it('replaces a folder as a whole, and leaves nothing beside it', async () => {
  await replaceFolder(join(place, 'site'), new Map([...files('one'), ['old.txt', '']]));
  await replaceFolder(join(place, 'site'), files('two'));
  expect(await read()).toBe('two');
  expect(await readdir(place)).toEqual(['site']);
  expect(await readdir(join(place, 'site'))).not.toContain('old.txt');
});

it('touches no folder that holds other files', async () => {
  await mkdir(join(place, 'site'));
  await writeFile(join(place, 'site', 'mine.txt'), 'mine');
  await expect(replaceFolder(join(place, 'site'), files('one'))).rejects.toThrow(RangeError);
  expect(await readdir(join(place, 'site'))).toEqual(['mine.txt']);
});

it('leaves the earlier folder whole where a file cannot be written', async () => {
  await replaceFolder(join(place, 'site'), files('one'));
  const broken = new Map([...files('two'), ['a/b.txt/c', 'a file is no folder']]);
  await expect(replaceFolder(join(place, 'site'), broken)).rejects.toThrow();
  expect(await read()).toBe('one');
  expect(await readdir(place)).toEqual(['site']);
});

it('goes on from a stop between putting the old folder aside and the new one in its place', async () => {
  await replaceFolder(join(place, 'site'), files('one'));
  await rename(join(place, 'site'), join(place, '.site.before'));
  const broken = new Map([...files('two'), ['a/b.txt/c', '']]);
  await expect(replaceFolder(join(place, 'site'), broken)).rejects.toThrow();
  expect(await read()).toBe('one');
});

it('takes away what a stop had left beside the folder, and nothing else', async () => {
  for (const name of ['.site.new-abc123', '.site.new-note', '.other.new-abc123'])
    await mkdir(join(place, name, 'a'), { recursive: true });
  await replaceFolder(join(place, 'site'), files('one'));
  expect((await readdir(place)).sort()).toEqual(['.other.new-abc123', '.site.new-note', 'site']);
});

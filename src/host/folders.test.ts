import {
  mkdir,
  mkdtemp,
  readdir,
  readFile,
  rename,
  rm,
  symlink,
  writeFile,
} from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { filledWith, replaceFolder } from './folders.ts';

let place: string;
beforeEach(async () => {
  place = await mkdtemp(join(tmpdir(), 'printlore-folders-'));
});
afterEach(() => rm(place, { recursive: true, force: true }));

const files = (text: string) => filledWith(new Map([['a/b.txt', text]]));
const read = () => readFile(join(place, 'site', 'a/b.txt'), 'utf8');

it('replaces a folder as a whole, and leaves nothing beside it', async () => {
  await replaceFolder(
    join(place, 'site'),
    filledWith(
      new Map([
        ['a/b.txt', 'one'],
        ['old.txt', ''],
      ]),
    ),
  );
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
  const broken = filledWith(
    new Map([
      ['a/b.txt', 'two'],
      ['a/b.txt/c', 'a file is no folder'],
    ]),
  );
  await expect(replaceFolder(join(place, 'site'), broken)).rejects.toThrow();
  expect(await read()).toBe('one');
  expect(await readdir(place)).toEqual(['site']);
});

it('goes on from a stop between putting the old folder aside and the new one in its place', async () => {
  await replaceFolder(join(place, 'site'), files('one'));
  await rename(join(place, 'site'), join(place, '.site.before'));
  const broken = filledWith(
    new Map([
      ['a/b.txt', 'two'],
      ['a/b.txt/c', ''],
    ]),
  );
  await expect(replaceFolder(join(place, 'site'), broken)).rejects.toThrow();
  expect(await read()).toBe('one');
});

it('takes away what a stop had left beside the folder, and nothing else', async () => {
  for (const name of ['.site.new-abc123', '.site.new-note', '.other.new-abc123'])
    await mkdir(join(place, name, 'a'), { recursive: true });
  await replaceFolder(join(place, 'site'), files('one'));
  expect((await readdir(place)).sort()).toEqual(['.other.new-abc123', '.site.new-note', 'site']);
});

it('keeps what else lies in a folder where it is asked to, and all of it where a file fails', async () => {
  const site = join(place, 'site');
  await mkdir(join(site, 'clips'), { recursive: true });
  await writeFile(join(site, 'clips', 'mine.mp4'), 'mine');
  await symlink('clips/mine.mp4', join(site, 'first.mp4'));
  await replaceFolder(site, files('one'), 'keep');
  const broken = filledWith(
    new Map([
      ['a/b.txt', 'two'],
      ['a/b.txt/c', ''],
    ]),
  );
  await expect(replaceFolder(site, broken, 'keep')).rejects.toThrow();
  expect(await read()).toBe('one');
  await replaceFolder(site, files('two'), 'keep');
  expect(await read()).toBe('two');
  expect(await readFile(join(site, 'first.mp4'), 'utf8')).toBe('mine');
  expect((await readdir(site)).sort()).toEqual(['a', 'clips', 'first.mp4']);
  expect(await readdir(place)).toEqual(['site']);
});

it('fills the folder that a link leads to', async () => {
  await mkdir(join(place, 'disk'));
  await symlink('disk', join(place, 'site'));
  await replaceFolder(join(place, 'site'), files('one'));
  expect(await readFile(join(place, 'disk', 'a/b.txt'), 'utf8')).toBe('one');
});

import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect, it } from 'vitest';
import { examinationsOf, photoNamed, photosOf } from './photos.ts';

it.each([
  ['front.jpg', { side: 'front', light: 'still', lamp: null }],
  ['BACK.HEIC', { side: 'back', light: 'still', lamp: null }],
  ['front.raking.png', { side: 'front', light: 'raking', lamp: null }],
  ['front.light-12.jpg', { side: 'front', light: 'lamp', lamp: 12 }],
])('%s is told by its name', (name, expected) => {
  expect(photoNamed(name)).toEqual({ name, ...expected });
});

it.each([
  'setup.json',
  'front.txt',
  'frontal.jpg',
  'front.light-.jpg',
  '../front.jpg',
  'front.jpg.exe',
])('%s is no picture of a copy', (name) => {
  expect(photoNamed(name)).toBeUndefined();
});

it('lists faces first and lamps in turn, and nothing of a copy without pictures', async () => {
  const root = await mkdtemp(join(tmpdir(), 'printlore-photos-'));
  const folder = join(root, 'desk', 'photos', 'hare-1');
  await mkdir(folder, { recursive: true });
  for (const name of [
    'front.light-10.jpg',
    'front.light-2.jpg',
    'back.jpg',
    'front.jpg',
    'notes.txt',
  ])
    await writeFile(join(folder, name), '');
  expect((await photosOf(root, 'hare-1')).map(({ name }) => name)).toEqual([
    'front.jpg',
    'back.jpg',
    'front.light-2.jpg',
    'front.light-10.jpg',
  ]);
  expect(await photosOf(root, 'hare-2')).toEqual([]);
  await rm(root, { recursive: true });
});

it('finds other examinations of a copy in folders of their own', async () => {
  const root = await mkdtemp(join(tmpdir(), 'printlore-photos-'));
  const folder = join(root, 'desk', 'photos', 'hare-1');
  for (const name of ['front.jpg', 'sent-in/front.jpg', 'sent-in/back.jpg', 'notes/words.txt']) {
    await mkdir(dirname(join(folder, name)), { recursive: true });
    await writeFile(join(folder, name), '');
  }
  const found = await examinationsOf(root, 'hare-1');
  expect(found.map(({ name, photos }) => [name, photos.map((one) => one.name)])).toEqual([
    ['sent-in', ['front.jpg', 'back.jpg']],
  ]);
  expect(await examinationsOf(root, 'hare-2')).toEqual([]);
  await rm(root, { recursive: true });
});

import { mkdir, mkdtemp, readdir, readFile, rm, symlink } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { PictureFault } from './fault.ts';
import { keepPhoto, PhotoThere } from './keep.ts';

let root: string;
beforeEach(async () => {
  root = await mkdtemp(join(tmpdir(), 'printlore-keep-'));
});
afterEach(() => rm(root, { recursive: true }));

const picture = async (format: 'png' | 'jpeg') =>
  new Uint8Array(
    await sharp({ create: { width: 4, height: 4, channels: 3, background: '#246' } })
      .toFormat(format)
      .toBuffer(),
  );
const folder = () => join(root, 'desk', 'photos', 'one');

it('keeps a picture byte by byte, by its role and what it truly is', async () => {
  const png = await picture('png');
  expect(await keepPhoto(root, 'one', 'front', png)).toBe('front.png');
  expect(await keepPhoto(root, 'one', 'front.light-12', await picture('jpeg'))).toBe(
    'front.light-12.jpg',
  );
  expect(new Uint8Array(await readFile(join(folder(), 'front.png')))).toEqual(png);
});

it('never writes over one that is there, whatever its kind', async () => {
  const png = await picture('png');
  await keepPhoto(root, 'one', 'front', png);
  await expect(keepPhoto(root, 'one', 'front', await picture('jpeg'))).rejects.toThrow(PhotoThere);
  expect(await readdir(folder())).toEqual(['front.png']);
});

it.each([
  ['text', new TextEncoder().encode('no picture'), 'a text'],
  ['nothing', new Uint8Array(), 'an empty file'],
])('refuses %s, and makes no folder for it', async (_, bytes, found) => {
  const kept = keepPhoto(root, 'one', 'front', bytes);
  await expect(kept).rejects.toThrow(PictureFault);
  await expect(kept).rejects.toThrow(found);
  expect(await readdir(root)).toEqual([]);
});

it.each([
  ['one', '../front'],
  ['one', 'front.light-0'],
  ['one', 'setup'],
  ['../one', 'front'],
  ['', 'front'],
])('refuses the copy %j and the role %j', async (copy, role) => {
  await expect(keepPhoto(root, copy, role, await picture('png'))).rejects.toThrow(RangeError);
});

it('follows no link out of the dossier', async () => {
  await mkdir(join(root, 'elsewhere'));
  await mkdir(join(root, 'desk', 'photos'), { recursive: true });
  await symlink(join(root, 'elsewhere'), folder());
  await expect(keepPhoto(root, 'one', 'front', await picture('png'))).rejects.toThrow(RangeError);
  expect(await readdir(join(root, 'elsewhere'))).toEqual([]);
});

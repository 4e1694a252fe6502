import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { pictureOf } from '../../bench/index.ts';
import { shownPicture, shownSamples } from './shown.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'printlore-shown-'));
  const left = { create: { width: 60, height: 40, channels: 3, background: '#204060' } } as const;
  const right = await sharp({ create: { ...left.create, width: 30, background: '#e0c080' } })
    .png()
    .toBuffer();
  await sharp(left)
    .composite([{ input: right, left: 30, top: 0 }])
    .withExif({ IFD0: { Artist: 'Nobody' }, IFD3: { GPSLatitude: '1/1 2/1 3/1' } })
    .jpeg({ quality: 95 })
    .withMetadata({ orientation: 6 })
    .toFile(join(folder, 'turned.jpg'));
});
afterAll(() => rm(folder, { recursive: true }));

it('is shown upright, as wide as asked at most, without what the camera wrote beside it', async () => {
  const bytes = await shownPicture(join(folder, 'turned.jpg'), 20, null);
  const { width, height, exif, format } = await sharp(bytes).metadata();
  expect({ width, height, exif, format }).toEqual({
    width: 20,
    height: 30,
    exif: undefined,
    format: 'jpeg',
  });
});

it('is shown in part, the part kept within the picture', async () => {
  const part = { x: 10, y: 40, width: 500, height: 500 };
  const { data, info } = await sharp(await shownPicture(join(folder, 'turned.jpg'), 900, part))
    .raw()
    .toBuffer({ resolveWithObject: true });
  expect([info.width, info.height]).toEqual([30, 20]);
  // A quarter turn puts the right half below: its red is 224, JPEG leaves a few levels.
  expect(Math.abs((data[0] as number) - 224)).toBeLessThan(6);
});

it('may be one that was measured', async () => {
  const samples = new Uint8Array(300).fill(90);
  const { width, height } = await sharp(
    await shownSamples(pictureOf(10, 10, samples), 5),
  ).metadata();
  expect([width, height]).toEqual([5, 5]);
});

it('is refused where no part is left', async () => {
  const nothing = { x: 0, y: 0, width: 0, height: 5 };
  await expect(shownPicture(join(folder, 'turned.jpg'), 9, nothing)).rejects.toThrow(RangeError);
});

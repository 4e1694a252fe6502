import { readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { expect, it } from 'vitest';
import { decodePicture } from '../host/index.ts';
import { marksOn } from './pointed.ts';

const truth: Record<
  string,
  { size: number[]; frameCornersMm: number[][]; frameCornersPx: number[][] }
> = JSON.parse(readFileSync(new URL('../../demo/photos-truth.json', import.meta.url), 'utf8'));

it('finds where a place of a card lies on a photo, as the renderer of the photo put it', async () => {
  const name = 'pictures/gb-first-1.jpg';
  const { size, frameCornersMm, frameCornersPx } = truth[name]!;
  const [left, top] = frameCornersMm[0] as [number, number];
  const [right, bottom] = frameCornersMm[2] as [number, number];
  const places = [{ boxMm: [left, top, right, bottom] as const, traits: [] }];
  const marks = marksOn(await decodePicture(`demo/dossier/${name}`), [63, 88], places) ?? [];
  const [wide = 1, high = 1] = size;
  const off = frameCornersPx.map(([x = 0, y = 0], i) => {
    const [u = 0, v = 0] = marks[0]?.[i] ?? [];
    return Math.hypot(u * wide - x, v * high - y);
  });
  // Measured 0.47 pixels of 960; allowed 1.
  expect(Math.max(...off)).toBeLessThan(1);
});

it('points at nothing where no card is seen', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'printlore-pointed-'));
  try {
    const file = join(folder, 'none.png');
    const plain = { width: 500, height: 700, channels: 3, background: '#222' } as const;
    await sharp({ create: plain }).png().toFile(file);
    const places = [{ boxMm: [1, 2, 3, 4] as const, traits: [] }];
    expect(marksOn(await decodePicture(file), [63, 88], places)).toBeUndefined();
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
});

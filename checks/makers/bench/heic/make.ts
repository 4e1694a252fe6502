// Makes checks/fixtures/bench/four-colours.heic with heif-enc (Debian's libheif-examples 1.15.1):
// npx tsx checks/makers/bench/heic/make.ts
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';

const WIDTH = 96;
const HEIGHT = 64;
/** sRGB; top left, top right, bottom left, bottom right. */
const COLOURS = [
  [180, 60, 60],
  [60, 160, 80],
  [60, 80, 180],
  [230, 230, 230],
] as const;

const samples = Buffer.alloc(WIDTH * HEIGHT * 3);
for (let y = 0; y < HEIGHT; y++)
  for (let x = 0; x < WIDTH; x++) {
    const colour = COLOURS[(x < WIDTH / 2 ? 0 : 1) + (y < HEIGHT / 2 ? 0 : 2)] ?? [0, 0, 0];
    samples.set(colour, (y * WIDTH + x) * 3);
  }

const folder = mkdtempSync(join(tmpdir(), 'printlore-heic-'));
const jpeg = join(folder, 'four-colours.jpg');
await sharp(samples, { raw: { width: WIDTH, height: HEIGHT, channels: 3 } })
  .jpeg({ quality: 100, chromaSubsampling: '4:4:4' })
  .withIccProfile('p3')
  .toFile(jpeg);
const out = join(import.meta.dirname, '..', '..', '..', 'fixtures', 'bench', 'four-colours.heic');
const { status } = spawnSync('heif-enc', ['-q', '95', '-p', 'chroma=444', jpeg, '-o', out]);
rmSync(folder, { recursive: true });
if (status !== 0) throw new Error(`heif-enc ended with ${status}`);

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, describe, expect, it } from 'vitest';
import { cardMapOf } from '../../src/bench/index.ts';
import { chance } from '../../src/maths/index.ts';
import { PRINT, patchesOf } from '../bench/cards.ts';
import { box, drawn, type Light, type Patch } from '../bench/drawn-card.ts';
import { answerTo } from './answer.ts';

const folder = mkdtempSync(join(tmpdir(), 'printlore-charted-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** A card with a chart at its right, seen at a slant. */
const MAP = cardMapOf(
  [
    [32.3, 28.2],
    [352.8, 36.9],
    [346.4, 481.7],
    [24.1, 468.6],
  ],
  [63, 88],
  { k1: 0.01, width: 600, height: 515 },
);
const luck = chance(11);
const light = (most: number): Light => [0, 0, 0].map(() => 0.05 + most * luck.uniform()) as never;
const ART = Array.from({ length: 30 }, (): Patch => {
  const [x, y] = [8 + 45 * luck.uniform(), 8 + 70 * luck.uniform()];
  const side = 1 + 4 * luck.uniform();
  return box(x, y, x + side, y + side, light(0.5));
});
const COLUMNS = 4;
const CHART = Array.from({ length: 24 }, (_, k): Patch => {
  const grey = 0.04 * 1.8 ** (k - 18);
  const [x, y] = [70 + 9 * (k % COLUMNS), 16 + 9 * Math.floor(k / COLUMNS)];
  return box(x, y, x + 8, y + 8, k < 18 ? light(0.8) : [grey, grey, grey]);
});

/** Rows of the light that red, green and blue take. */
type Camera = readonly [Light, Light, Light];
const WARM: Camera = [
  [0.8, 0.1, 0.02],
  [0.08, 0.66, 0.06],
  [0.02, 0.1, 0.42],
];
const COOL: Camera = [
  [0.5, 0.1, 0.05],
  [0.04, 0.62, 0.1],
  [0, 0.12, 0.78],
];

/** Lab under D50 of linear sRGB light, by the matrix of the sRGB colour profile (ICC, 2015; from memory, agrees with the sums of its white). */
function labOf([r, g, b]: Light): Light {
  const [x, y, z] = [
    (0.43607 * r + 0.38515 * g + 0.14307 * b) / 0.9642,
    0.22249 * r + 0.71687 * g + 0.06061 * b,
    (0.01392 * r + 0.09708 * g + 0.7141 * b) / 0.8249,
  ].map((t) => (t > 216 / 24_389 ? Math.cbrt(t) : ((24_389 / 27) * t + 16) / 116)) as [
    number,
    number,
    number,
  ];
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

/** A photograph of the card and its chart; `red` is how much more red the card's inks let through. */
async function photographed(name: string, camera: Camera, red: number): Promise<string> {
  const seen = ([r, g, b]: Light) => camera.map(([x, y, z]) => x * r + y * g + z * b) as never;
  const inks = [...patchesOf(PRINT), ...ART].map(({ outline, light: [r, g, b] }) => ({
    ...{ outline, light: seen([r * red, g, b]) },
  }));
  const patches = [...inks, ...CHART.map((one) => ({ ...one, light: seen(one.light) }))];
  const { samples, width, height } = drawn({
    map: MAP,
    ground: seen([0.4, 0.4, 0.4]),
    patches,
    noise: 0.002,
    seed: name.length,
  });
  const file = join(folder, name);
  const eight = Uint8Array.from(samples, (value) => value / 257);
  await sharp(eight, { raw: { width, height, channels: 3 } })
    .png()
    .toFile(file);
  return file;
}

describe('compare with a chart in each picture', () => {
  it('takes lamp and camera out, and finds what the inks differ in', async () => {
    const chart = join(folder, 'chart.json');
    writeFileSync(
      chart,
      JSON.stringify({
        columns: COLUMNS,
        patches: CHART.map(({ light: l }) => ({ lab: labOf(l) })),
      }),
    );
    const reference = await photographed('reference.png', WARM, 1);
    const against = async (name: string, red: number) => {
      const copy = await photographed(name, COOL, red);
      const { exit, out, err } = await answerTo([
        'compare',
        copy,
        '--with',
        reference,
        '--chart',
        chart,
        '--card',
        '63x88',
        '--json',
      ]);
      expect([exit, err]).toEqual([0, '']);
      const { findings, cautions } = JSON.parse(out);
      expect(cautions.join()).toContain('Colours were corrected by the charts');
      return findings.find(({ what }: { what: string }) =>
        what.startsWith('colour: by the charts'),
      );
    };
    const [alike, apart] = [await against('copy.png', 1), await against('redder.png', 1.2)];
    // CIEDE2000, measured 0.12 ± 1.2 and 4.2 ± 2.4; a fifth more red is 4 to 6.
    expect(alike.difference).toBeLessThan(alike.sd);
    expect(apart.difference).toBeGreaterThan(2.5);
    expect(apart.log10_lr).toBeLessThan(alike.log10_lr);
  });
});

import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { afterAll, describe, expect, it } from 'vitest';
import { answerTo } from './answer.ts';

const scan = fileURLToPath(
  new URL('../fixtures/bench/pictures/scan-bronze-300/front.jpg', import.meta.url),
);
const demo = fileURLToPath(
  new URL('../../demo/dossier/desk/photos/hare-1/setup.json', import.meta.url),
);
const folder = mkdtempSync(join(tmpdir(), 'printlore-relief-'));
afterAll(() => rmSync(folder, { recursive: true }));

function setupOf(pictures: readonly object[], more: object = {}): string {
  const file = join(folder, 'setup.json');
  writeFileSync(file, JSON.stringify({ card_mm: [63, 88], pictures, ...more }));
  return file;
}

describe('relief', () => {
  it('draws the relief of the demo’s first copy, its one dent numbered and shaded', async () => {
    const file = join(folder, 'drawn', 'relief.svg');
    const { exit, out } = await answerTo(['relief', demo, '--out', file]);
    expect(exit).toBe(0);
    expect(out.match(/^dent .*44.[56], 22\.0/gm)).toHaveLength(1);
    const svg = readFileSync(file, 'utf8');
    expect(svg.match(/>\d<\/text>/g)).toEqual(['>1</text>']);
    const image = /base64,([^"]+)"/.exec(svg)?.[1] as string;
    const { data, info } = await sharp(Buffer.from(image, 'base64'))
      .greyscale()
      .raw()
      .toBuffer({ resolveWithObject: true });
    const grey = (x: number, y: number) =>
      data[Math.floor(y / 0.25) * info.width + Math.floor(x / 0.25)] as number;
    // Lit from the upper left, the far wall of a dent of 1.5 mm is the bright one.
    expect(grey(45, 22.5)).toBeGreaterThan(grey(44, 21.5) + 40);
  }, 240_000);

  it('draws nothing where the set tells no slopes', async () => {
    const setup = setupOf([{ file: scan, lamp_mm: [300, 0, 250] }], { ball: null });
    const file = join(folder, 'none.svg');
    expect((await answerTo(['relief', setup, '--out', file])).exit).toBe(1);
    expect(existsSync(file)).toBe(false);
  });

  it('gives the outline and says what a set of too few pictures lacks', async () => {
    const setup = setupOf([{ file: scan, lamp_mm: [300, 0, 250] }], { ball: null });
    const { exit, out } = await answerTo(['relief', setup, '--json']);
    expect(exit).toBe(1);
    const { outline, defects, faults, ms } = JSON.parse(out);
    expect(outline).toHaveLength(4);
    expect(defects).toEqual([]);
    expect(faults[0]).toContain('at least 4 pictures');
    expect(Object.keys(ms)).toEqual(['decode', 'measure']);
  });

  it.each([
    [setupOf.bind(null, []), '"pictures" must be a list'],
    [setupOf.bind(null, [{}]), 'each picture must have a "file"'],
    [setupOf.bind(null, [{ file: 'none.jpg', lamp_mm: [1, 2, 3] }]), 'no such file'],
    [setupOf.bind(null, [{ file: scan, lamp_mm: [1, 2, -3] }]), '"lamp_mm" must be'],
    [setupOf.bind(null, [{ file: scan }], { ball: { radius_px: 3 } }), '"ball" must have'],
    [setupOf.bind(null, [{ file: scan }], { card_mm: [63] }), 'two sides of 10 to 500 mm'],
  ])('refuses a bad setup, %#', async (written, why) => {
    const { exit, out, err } = await answerTo(['relief', written()]);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toContain(why);
  });
});

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { answerTo } from './answer.ts';

const scan = fileURLToPath(
  new URL('../fixtures/bench/pictures/scan-bronze-300/front.jpg', import.meta.url),
);
const folder = mkdtempSync(join(tmpdir(), 'printlore-relief-'));
afterAll(() => rmSync(folder, { recursive: true }));

function setupOf(pictures: readonly object[], more: object = {}): string {
  const file = join(folder, 'setup.json');
  writeFileSync(file, JSON.stringify({ card_mm: [63, 88], pictures, ...more }));
  return file;
}

describe('relief', () => {
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

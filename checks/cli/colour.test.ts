import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { ciede2000, type Lab } from '../../src/bench/index.ts';
import { answerTo, inputPath } from './answer.ts';

const path = (name: string) =>
  fileURLToPath(new URL(`../fixtures/bench/pictures/colour-chart/${name}`, import.meta.url));
const call = ['colour', path('chart.jpg'), '--chart', path('chart.json')];

const folder = mkdtempSync(join(tmpdir(), 'chart-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** The chart of the picture as a grid of nine columns, the test patches with their places. */
function gridFile(change: (chart: { columns?: number; patches: object[] }) => void): string {
  const { patches } = JSON.parse(readFileSync(path('chart.json'), 'utf8'));
  const sought = patches.map((patch: { lab: Lab | null }) =>
    patch.lab ? { lab: patch.lab } : patch,
  );
  const chart = { columns: 9, size_mm: [180, 60], patches: sought };
  change(chart);
  const file = join(folder, 'grid.json');
  writeFileSync(file, JSON.stringify(chart));
  return file;
}

describe('colour', () => {
  it('prints the fixed parts, which agree with the colours put in', async () => {
    const { exit, out, err } = await answerTo([...call, '--json']);
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    const { patches, fit } = JSON.parse(out);
    expect(patches).toHaveLength(37);
    const truth: Lab[] = JSON.parse(readFileSync(path('truth.json'), 'utf8')).testPatches;
    const off = truth.map((lab, i) => ciede2000(patches[27 + i].lab, lab)).sort((a, b) => a - b);
    // Measured 0.41 in the middle and 0.77 at most; allowed what is asked of pictures.
    expect(off[5]).toBeLessThan(0.5);
    expect(off[9]).toBeLessThan(1.2);
    expect(fit.mean_dE00).toBeLessThan(0.5);
    expect(fit.max_dE00).toBeGreaterThan(fit.mean_dE00);
  });

  it('finds the places of a chart that is told as a grid', async () => {
    const file = gridFile(() => {});
    const { exit, out, err } = await answerTo([...call.slice(0, 3), file, '--json']);
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    const { chart, patches, fit, left_out } = JSON.parse(out);
    expect(chart.p).toBeGreaterThan(0.99);
    const told = JSON.parse(readFileSync(path('chart.json'), 'utf8')).patches;
    // Patches are 130 pixels wide; measured within 2.1 pixels, allowed 5.
    for (const [k, [x, y]] of chart.centres_px.entries())
      expect(Math.hypot(x - told[k].centre_px[0], y - told[k].centre_px[1])).toBeLessThan(5);
    expect(left_out).toEqual([]);
    expect(fit.mean_dE00).toBeLessThan(0.5);
    const truth: Lab[] = JSON.parse(readFileSync(path('truth.json'), 'utf8')).testPatches;
    const off = truth.map((lab, i) => ciede2000(patches[27 + i].lab, lab)).sort((a, b) => a - b);
    expect(off[5]).toBeLessThan(0.5);
    const words = await answerTo([...call.slice(0, 3), file]);
    expect(words.out).toContain('The chart was found, sure to >99 %');
  });

  it('asks for the columns of a grid', async () => {
    const file = gridFile((chart) => {
      chart.columns = undefined as never;
    });
    const { exit, err } = await answerTo([...call.slice(0, 3), file]);
    expect(exit).toBe(2);
    expect(err).toContain('"columns" then is the number of columns');
  });

  it('names patches that cannot be used together by their reason', async () => {
    const { patches } = JSON.parse(readFileSync(path('chart.json'), 'utf8'));
    const outside = patches.map((patch: object) => ({ ...patch, centre_px: [-900, -900] }));
    const file = join(folder, 'outside.json');
    writeFileSync(file, JSON.stringify({ patches: outside }));
    const { exit, err } = await answerTo([...call.slice(0, 3), file]);
    expect(exit).toBe(2);
    expect(err).toMatch(/^patches 0, 1, 2, .*: it does not lie wholly in the picture$/m);
    expect(err.match(/wholly in the picture/g)).toHaveLength(1);
  });

  it('shows a table of what was measured', async () => {
    const { exit, out } = await answerTo(call);
    expect(exit).toBe(0);
    expect(out).toContain('predicted by the others alone');
    expect(out.match(/^ +\d+ +\d+\.\d\d +\d\.\d\d/gm)).toHaveLength(10);
  });

  it.each([
    [['colour', path('chart.jpg')], "required option '--chart <file>'"],
    [['colour', path('chart.jpg'), '--chart', inputPath('nowhere')], 'there is no such file'],
    [['colour', path('chart.jpg'), '--chart', inputPath('notes/sheet.txt')], 'is no JSON'],
    [['colour', path('chart.jpg'), '--chart', path('truth.json')], 'a list "patches" is expected'],
    [
      ['colour', inputPath('nowhere'), '--chart', path('chart.json')],
      'found no such file; expected a picture',
    ],
  ])('%j is a wrong call', async (words, why) => {
    const { exit, out, err } = await answerTo(words);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toContain(why);
  });
});

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { ciede2000, type Lab } from '../../src/bench/index.ts';
import { answerTo, inputPath } from './answer.ts';

const path = (name: string) =>
  fileURLToPath(new URL(`../fixtures/bench/pictures/colour-chart/${name}`, import.meta.url));
const call = ['colour', path('chart.jpg'), '--chart', path('chart.json')];

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

  it('shows a table of what was measured', async () => {
    const { exit, out } = await answerTo(call);
    expect(exit).toBe(0);
    expect(out).toContain('predicted by the others alone');
    expect(out.match(/^ +\d+ +\d+\.\d\d +0\.\d\d/gm)).toHaveLength(10);
  });

  it.each([
    [['colour', path('chart.jpg')], "required option '--chart <file>'"],
    [['colour', path('chart.jpg'), '--chart', inputPath('nowhere')], 'there is no such file'],
    [['colour', path('chart.jpg'), '--chart', inputPath('notes/sheet.txt')], 'is no JSON'],
    [['colour', path('chart.jpg'), '--chart', path('truth.json')], 'a list "patches" is expected'],
    [
      ['colour', inputPath('nowhere'), '--chart', path('chart.json')],
      'cannot be read as a picture',
    ],
  ])('%j is a wrong call', async (words, why) => {
    const { exit, out, err } = await answerTo(words);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toContain(why);
  });
});

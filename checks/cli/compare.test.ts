import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { answerTo } from './answer.ts';

const demo = (name: string) =>
  fileURLToPath(new URL(`../../demo/dossier/${name}`, import.meta.url));
const CARD = ['--card', '63x88'];

describe('compare', () => {
  it('prints the fixed parts for two pictures of one specimen', async () => {
    const { exit, out, err } = await answerTo([
      ...['compare', demo('desk/photos/hare-2/front.jpg'), '--specimen', '--json', ...CARD],
      ...['--with', demo('desk/photos/hare-2/listing.jpg')],
    ]);
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    const { registered, findings, log10_lr, between, words } = JSON.parse(out);
    expect(registered).toBe(true);
    // Both show one specimen: the truth of demo/photos-truth.json.
    expect(log10_lr).toBeGreaterThan(0.5);
    expect(between).toHaveLength(2);
    expect(words).toContain('support');
    for (const finding of findings)
      expect(Object.keys(finding)).toEqual(['what', 'where_mm', 'difference', 'sd', 'log10_lr']);
  });

  it('says in words what a reference carries, without a verdict', async () => {
    const { exit, out } = await answerTo([
      ...['compare', demo('desk/photos/hare-1/front.jpg'), ...CARD],
      ...['--with', demo('pictures/gb-first-1.jpg')],
    ]);
    expect(exit).toBe(0);
    expect(out).toContain('carries little');
    expect(out).not.toMatch(/genuine|fake/i);
  });

  it('compares the print process of pieces, which lie on nothing', async () => {
    const cut = (copy: string) => demo(`desk/photos/${copy}/cut.jpg`);
    const againstCut = async (copy: string) => {
      const { exit, out } = await answerTo([
        ...['compare', cut('hare-1'), '--with', cut(copy), '--json'],
      ]);
      expect(exit).toBe(0);
      return JSON.parse(out);
    };
    const [alike, apart] = [await againstCut('hare-3'), await againstCut('hare-2')];
    expect(alike.registered).toBe(false);
    // Put in (demo/photos-truth.json): both at 150 lines an inch, and at 150 against 175.
    expect(alike.log10_lr).toBeGreaterThan(0.4);
    expect(apart.log10_lr).toBeLessThan(-0.9);
    const ruling = apart.findings.find(({ what }: { what: string }) => what.includes('ruling'));
    expect(Math.abs(ruling.difference + 25)).toBeLessThan(1);
    const { out } = await answerTo(['compare', cut('hare-1'), '--with', cut('hare-2')]);
    expect(out).toContain('screen: ruling');
  });

  it.each([
    [['compare', 'a.jpg'], 'Name what to compare with'],
    [['compare', 'a.jpg', 'b.jpg', '--with', 'c.jpg', '--specimen'], 'one picture with one'],
    [['compare', 'a.jpg', '--with', 'b.jpg', '--specimen', '--chart', 'c.json'], 'no colours'],
    [
      ['compare', 'a.jpg', '--with', 'b.jpg', '--chart', demo('desk/photos/hare-1/chart.json')],
      'columns',
    ],
    [['compare', 'nowhere.jpg', '--with', 'c.jpg'], 'nowhere.jpg'],
    [
      ['compare', demo('pictures/gb-first-1.jpg'), '--with', demo('pictures/gb-first-1.jpg')],
      'the same picture as',
    ],
    [['compare', 'a.jpg', '--with', 'b.jpg', '--card', 'large'], '63x88'],
  ])('says what is wrong with %j', async (words, expected) => {
    const { exit, out, err } = await answerTo(words);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toContain(expected);
  });
});

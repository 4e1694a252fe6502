import { describe, expect, it } from 'vitest';
import { answerTo, inputPath } from './answer.ts';

const demo = 'demo/dossier';

describe('value', () => {
  it('prints the fixed parts for every printing, raw and every grade of every service', async () => {
    const { exit, out, err } = await answerTo(['value', demo, '--json']);
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    const { currency, printings, left_out } = JSON.parse(out);
    expect(currency).toBe('EUR');
    for (const { grades } of printings) {
      expect(grades).toHaveLength(1 + 10 + 9 + 6);
      expect(grades[0]).toMatchObject({ service: null, grade: null });
      for (const { price, interval80, sales } of grades) {
        expect(interval80[0]).toBeLessThan(price);
        expect(interval80[1]).toBeGreaterThan(price);
        expect(sales).toBeGreaterThanOrEqual(0);
      }
    }
    // Counted by hand in the table: rows of asking prices.
    const asking = left_out.filter(({ why }: { why: string }) => why.includes('asking'));
    expect(asking).toHaveLength(27);
  });

  it('counts only the sales of a cell, and none after the day told', async () => {
    const early = JSON.parse((await answerTo(['value', demo, '--json', '--on', '2024-06-30'])).out);
    const total = (answer: typeof early) =>
      answer.printings
        .flatMap(({ grades }: { grades: { sales: number }[] }) => grades)
        .reduce((sum: number, { sales }: { sales: number }) => sum + sales, 0);
    expect(early.on).toBe('2024-06-30');
    expect(total(early)).toBe(early.sales.length);
    expect(early.sales.length).toBeLessThan(100);
  });

  it('tells a person the day, the odd sales and how the newest fell out', async () => {
    const { out } = await answerTo(['value', demo, '--printing', 'kr-club']);
    expect(out).toContain('as of 30 June 2026');
    expect(out).toContain('sorimae S');
    expect(out).toMatch(/\d+ of \d+ sales fell within/);
    expect(out).toMatch(/39 {2}11 May 2024 .*>99 %/);
  });

  it('asks for a day where the dossier has none, and refuses what it does not know', async () => {
    for (const wrong of [
      ['value', inputPath('bare')],
      ['value', demo, '--on', '2026-02-30'],
      ['value', demo, '--printing', 'nothing'],
    ])
      expect((await answerTo(wrong)).exit).toBe(2);
    expect((await answerTo(['value', inputPath('bare')])).err).toContain('--on');
  });
});

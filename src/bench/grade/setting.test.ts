import { describe, expect, it } from 'vitest';
import type { Defect } from '../defects.ts';
import { amountsOf } from './measured.ts';
import { type Counted, settingOf } from './setting.ts';
import { sharesOf } from './shares.ts';

const scale = { service: 'ostrel', grades: ['8', '9', '10'] };
const row = (asOf: string, printing: string, grade: string, count: number): Counted => ({
  service: 'ostrel',
  asOf,
  label: `${printing} hare`,
  printing,
  grade,
  count,
});

describe('what a grade rests on', () => {
  it('is the newest report, own labels together, entries that are no grade left out', () => {
    const population = [
      row('2025-03-31', 'gb-first', '9', 90),
      row('2025-06-30', 'gb-first', '8', 4),
      row('2025-06-30', 'gb-first', '9', 6),
      row('2025-06-30', 'gb-first', 'altered', 50),
      row('2025-06-30', 'kr-club', '10', 3),
      { ...row('2025-06-30', 'kr-club', '10', 30), service: 'sorimae' },
    ];
    const { copies, selection, limits } = settingOf(
      scale,
      ['gb-first'],
      population,
      ['refused'],
      [],
    );
    expect(copies).toEqual({ printing: 10, service: 13 });
    expect(selection.outcomes).toBe(0);
    expect(limits.find(({ grade, measure }) => grade === '10' && measure === 'centering')).toEqual({
      grade: '10',
      side: 'front',
      measure: 'centering',
      atMost: 55,
    });
    // Tilted downwards before any outcome: people send in their best.
    const untilted = sharesOf(
      [4, 6, 0],
      [
        [4, 6, 0],
        [0, 0, 3],
      ],
    );
    expect(selection.shares[0]).toBeGreaterThan(untilted[0] as number);
  });
});

const mark = (kind: Defect['kind'], p: number, over: Partial<Defect> = {}): Defect => ({
  kind,
  centreMm: [10, 10],
  boxMm: [9, 9.5, 11, 10.5],
  areaMm2: 0.4,
  lengthMm: null,
  polygonMm: [],
  p,
  sd: { centreMm: 0.05, areaMm2: 0.1, lengthMm: null },
  seenFrom: 'still',
  ...over,
});

describe('amounts of a face', () => {
  it('are sums of areas, lengths, widths or numbers, doubtful marks in part', () => {
    const amounts = amountsOf({
      side: 'front',
      looks: ['photo', 'raking'],
      centering: { wider: [56, 62], sd: [0.3, 0.3] },
      defects: [
        mark('corner-wear', 1),
        mark('corner-wear', 0.5),
        mark('scratch', 1, { lengthMm: 14 }),
        mark('dent', 1),
        mark('speck', 1),
        mark('speck', 0.25),
      ],
    });
    const mean = (measure: string) =>
      amounts
        .find((amount) => amount.measure === measure)
        ?.parts.reduce((sum, part) => sum + part.weight * part.mean, 0);
    expect(mean('centering')).toBe(62);
    expect(mean('corner-wear')).toBeCloseTo(0.6, 9);
    expect(mean('scratch')).toBe(14);
    expect(mean('dent')).toBe(2);
    expect(mean('speck')).toBeCloseTo(1.25, 9);
    expect(mean('crease')).toBe(0);
    const shown = amounts.find(({ measure }) => measure === 'scratch')?.shown;
    // A photo shows 0.3 of scratches and low light 0.9 of the rest.
    expect(shown).toBeCloseTo(0.93, 9);
  });

  it('leave centering out where none could be measured', () => {
    const amounts = amountsOf({ side: 'back', looks: ['scan'], centering: null, defects: [] });
    expect(amounts.map(({ measure }) => measure)).not.toContain('centering');
  });
});

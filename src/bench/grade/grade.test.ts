import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { totalOf, within } from './amounts.ts';
import { gradeOf } from './grade.ts';
import { selected } from './selection.ts';
import { sharesOf } from './shares.ts';
import type { Amount, Limit, Measure, Scale } from './types.ts';
import { usualLimits } from './usual-limits.ts';

// The same formulas by other ways in numpy: checks/makers/bench/grade.py.
const witness = JSON.parse(readFileSync('checks/fixtures/bench/grade.json', 'utf8'));
const scale: Scale = { service: 'bench', grades: ['1', '2', '3', '4', '5'] };
const limitsOf = (measure: Measure, most: readonly number[]): readonly Limit[] =>
  most.map((atMost, i) => ({ grade: String(i + 2), side: 'front', measure, atMost }));
const front = (measure: Measure, parts: Amount['parts'], shown = 1): Amount => ({
  side: 'front',
  measure,
  parts,
  shown,
});
const sure = (mean: number, sd = 0) => [{ weight: 1, mean, sd }];

describe('shares of grades', () => {
  it.each([0, 1, 2])('are drawn together as the urn draws them, printing %d', (i) => {
    // Both integrate over the same grid; measured 2e-14, allowed 1e-10.
    sharesOf(witness.rows[i], witness.rows).forEach((share, g) => {
      expect(Math.abs(share - witness.shares[i][g])).toBeLessThan(1e-10);
    });
  });

  it.each([0, 1, 2])('are tilted by the owner’s outcomes, case %d', (i) => {
    const { outcomes, shares, tilt } = witness.tilts[i];
    const answer = selected(witness.base, outcomes);
    // 161 places against 4,001; measured 5e-7, allowed 1e-5.
    expect(Math.abs(answer.tilt - tilt)).toBeLessThan(1e-5);
    answer.shares.forEach((share, g) => {
      expect(Math.abs(share - shares[g])).toBeLessThan(1e-5);
    });
  });
});

describe('the grade', () => {
  it('is the least of what each measure allows', () => {
    const limits = [
      ...limitsOf('centering', [75, 65, 60, 55]),
      ...limitsOf('corner-wear', [2, 0.8, 0.4, 0.1]),
      ...limitsOf('scratch', [40, 20, 8, 2]),
    ];
    const corner = [
      { weight: 0.2, mean: 0, sd: 0 },
      { weight: 0.8, mean: 0.3, sd: 0.1 },
    ];
    const amounts = [
      front('centering', sure(58, 1.5)),
      front('corner-wear', corner),
      front('scratch', sure(0), 0.6),
    ];
    gradeOf(amounts, scale, limits, witness.base).p.forEach((p, g) => {
      // Four standard errors of the witness's draws.
      expect(Math.abs(p - witness.grade.p[g])).toBeLessThan(4 * witness.grade.se);
    });
  });

  it('is the population’s where nothing was looked at', () => {
    const { p } = gradeOf([], scale, usualLimits(scale), witness.base);
    p.forEach((share, g) => {
      expect(share).toBeCloseTo(witness.base[g], 12);
    });
  });

  it('never rises with more damage, adds up to one, and is worth another look', () => {
    const mean = (p: readonly number[]) => p.reduce((sum, mass, g) => sum + mass * g, 0);
    const limits = usualLimits(scale);
    fc.assert(
      fc.property(
        fc.constantFrom<Measure>('corner-wear', 'scratch', 'dent', 'crease', 'stain'),
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (measure, a, b) => {
          const of = (size: number) =>
            gradeOf([front(measure, sure(size))], scale, limits, witness.base);
          const [less, more] = [of(Math.min(a, b)), of(Math.max(a, b))];
          expect(mean(more.p)).toBeLessThanOrEqual(mean(less.p) + 1e-9);
          expect(less.p.reduce((x, y) => x + y, 0)).toBeCloseTo(1, 9);
          for (const { gainBits } of less.looks) expect(gainBits).toBeGreaterThan(0);
        },
      ),
    );
  });

  it('names what holds it down', () => {
    const { heldBy, p } = gradeOf(
      [front('crease', sure(9, 1))],
      scale,
      usualLimits(scale),
      witness.base,
    );
    expect(heldBy[0]).toMatchObject({ side: 'front', measure: 'crease' });
    expect(p[4]).toBeLessThan(0.001);
  });

  it('asks first for the look that shows what is still open', () => {
    const seen = (['centering', 'corner-wear', 'edge-wear', 'speck', 'stain'] as const).flatMap(
      (measure) =>
        (['front', 'back'] as const).map((side) => ({
          ...front(measure, sure(measure === 'centering' ? 50 : 0)),
          side,
        })),
    );
    const { looks } = gradeOf(seen, scale, usualLimits(scale), witness.base);
    expect(looks[0]?.look).toBe('raking');
    expect(looks.map(({ look }) => look)).not.toContain('photo');
  });
});

describe('an amount', () => {
  it('of doubtful marks has the mean and variance of their sum', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            p: fc.double({ min: 0, max: 1, noNaN: true }),
            size: fc.double({ min: 0, max: 30, noNaN: true }),
            sd: fc.double({ min: 0, max: 3, noNaN: true }),
          }),
          { maxLength: 30 },
        ),
        (marks) => {
          const parts = totalOf(marks);
          const mean = parts.reduce((sum, part) => sum + part.weight * part.mean, 0);
          const square = parts.reduce((sum, x) => sum + x.weight * (x.mean ** 2 + x.sd ** 2), 0);
          const expected = marks.reduce((sum, { p, size }) => sum + p * size, 0);
          const variance = marks.reduce(
            (sum, { p, size, sd }) => sum + p * sd ** 2 + p * (1 - p) * size ** 2,
            0,
          );
          // Joining keeps both moments: rounding alone is left.
          expect(Math.abs(mean - expected)).toBeLessThan(1e-9 * (1 + expected));
          expect(Math.abs(square - mean ** 2 - variance)).toBeLessThan(1e-7 * (1 + square));
        },
      ),
    );
  });

  it('that is nothing is within a limit of nothing, and something is not', () => {
    expect(within(sure(0), 0)).toBe(1);
    expect(within(sure(5, 0.5), 0)).toBeLessThan(1e-20);
    expect(within(sure(2), 2)).toBe(0.5);
  });
});

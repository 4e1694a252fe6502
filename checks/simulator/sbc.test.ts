import { describe, expect, it } from 'vitest';
import { seeded } from './chance.ts';
import { answerOf } from './posterior.ts';
import { type Calibrated, calibrate, coverage, levelOf, REGIONS, rankOf } from './sbc.ts';
import { chiSquareTail, kolmogorovTail } from './tails.ts';

/** One printing, a month of days, three claims, each right with chance 0.6, else any day. */
function toy(believed: number): Calibrated<readonly number[]> {
  return {
    draw(seed) {
      const chance = seeded(seed);
      const day = chance.whole(0, 29);
      const data = [0, 1, 2].map(() => (chance.yes(0.6) ? day : chance.whole(0, 29)));
      return { data, days: new Map([['a', day]]) };
    },
    answer(data) {
      const weights = new Map<number, number>();
      for (let day = 0; day < 30; day++) {
        const chance = data.map((v) => (v === day ? believed : 0) + (1 - believed) / 30);
        weights.set(
          day,
          chance.reduce((product, p) => product * p, 1),
        );
      }
      return { printings: [answerOf('a', weights)] };
    },
  };
}

describe('calibration by simulation', () => {
  it('finds the ranks and levels of an exact posterior uniform', () => {
    const { ranks, levels } = calibrate(toy(0.6), 2000, 1);
    for (const found of [ranks, levels]) {
      expect(found.counts.reduce((sum, n) => sum + n, 0)).toBe(2000);
      expect(found.p).toBeGreaterThan(0.001);
      expect(found.pDistance).toBeGreaterThan(0.001);
    }
  });

  it('finds as many truths in the regions of an exact posterior as they claim', () => {
    const { levels } = calibrate(toy(0.6), 2000, 1);
    for (const mass of REGIONS) {
      const { share, error } = coverage(levels.ranks, mass);
      // Three standard errors, which chance exceeds once in 370.
      expect(Math.abs(share - mass)).toBeLessThan(3 * error);
    }
    expect(coverage([0.1, 0.4, 0.6, 0.9], 0.5)).toEqual({ share: 0.5, error: 0.25 });
  });

  it('finds out a posterior that believes its sources too much, and one too little', () => {
    // A uniform rank would pass a bound once in 500; levels tell it more plainly than ranks.
    for (const believed of [0.95, 0.25]) {
      const { ranks, levels } = calibrate(toy(believed), 2000, 1);
      expect(ranks.p).toBeLessThan(2e-3);
      expect(levels.p).toBeLessThan(2e-3);
    }
  });

  it('breaks ties within a lump at random', () => {
    expect(
      rankOf(
        [
          ['1970-01-02', 0.2],
          ['1970-01-03', 0.8],
        ],
        2,
        0.5,
      ),
    ).toBeCloseTo(0.6, 12);
    expect(
      rankOf(
        [
          ['1970-01-02', 0.2],
          ['1970-01-03', 0.8],
        ],
        9,
        0.5,
      ),
    ).toBe(1);
    expect(rankOf([], 9, 0.25)).toBe(0.25);
  });

  it('counts the days that are more probable, and breaks ties among equals at random', () => {
    const days = [
      ['1970-01-02', 0.2],
      ['1970-01-03', 0.5],
      ['1970-01-04', 0.2],
      ['1970-01-05', 0.1],
    ] as const;
    expect(levelOf(days, 2, 0.5)).toBeCloseTo(0.25, 12);
    expect(levelOf(days, 1, 0.5)).toBeCloseTo(0.7, 12);
    expect(levelOf(days, 9, 0.5)).toBe(1);
    expect(levelOf([], 9, 0.25)).toBe(0.25);
  });

  it('refuses too few dossiers for its bins', () => {
    expect(() => calibrate(toy(0.6), 99, 1)).toThrow(RangeError);
  });
});

describe('tail probabilities', () => {
  // Upper critical values of the chi-square table: NIST/SEMATECH e-Handbook 1.3.6.7.4, three
  // decimals, so the tail is right to about 1e-4 relative at these points.
  it.each([
    [1, 3.841, 0.05],
    [10, 18.307, 0.05],
    [19, 30.144, 0.05],
    [19, 36.191, 0.01],
    [19, 43.82, 0.001],
    [10, 4.865, 0.9],
  ])('agree with the table at %i degrees of freedom, %f', (freedom, value, tail) => {
    expect(Math.abs(chiSquareTail(value, freedom) / tail - 1)).toBeLessThan(1e-3);
  });

  // Large-sample critical values 1.358 / sqrt(n) and 1.628 / sqrt(n) of the usual tables.
  it('agree with the critical values of Kolmogorov at 5 and 1 %', () => {
    expect(kolmogorovTail(1.358 / 1000, 1_000_000)).toBeCloseTo(0.05, 3);
    expect(kolmogorovTail(1.628 / 1000, 1_000_000)).toBeCloseTo(0.01, 3);
  });
});

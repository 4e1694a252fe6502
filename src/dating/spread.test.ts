import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestDay, type DayWeights, fewestDays, modesOf, shortestRun } from './spread.ts';

const spread = (...pairs: readonly (readonly [day: number, p: number])[]): DayWeights => ({
  days: Int32Array.from(pairs, ([day]) => day),
  p: Float64Array.from(pairs, ([, p]) => p),
});

/** Any distribution over up to 12 days with gaps. */
const anySpread = fc
  .uniqueArray(fc.tuple(fc.integer({ min: -300, max: 300 }), fc.integer({ min: 1, max: 1000 })), {
    minLength: 1,
    maxLength: 12,
    selector: ([day]) => day,
  })
  .map((list) => {
    const total = list.reduce((sum, [, w]) => sum + w, 0);
    const sorted = [...list].sort((a, b) => a[0] - b[0]);
    return spread(...sorted.map(([day, w]) => [day, w / total] as const));
  });

describe('the best day', () => {
  it('is the likeliest, the earliest of equals', () => {
    expect(bestDay(spread([1, 0.2], [2, 0.4], [5, 0.4]))).toEqual({ day: 2, p: 0.4 });
  });
});

describe('the shortest run', () => {
  it('leaves out a far tail, and keeps a gap where it must', () => {
    const weights = spread([1, 0.03], [10, 0.5], [13, 0.46], [90, 0.01]);
    expect(shortestRun(weights, 0.95)).toMatchObject({ from: 10, to: 13 });
    expect(shortestRun(weights, 0.95).p).toBeCloseTo(0.96, 12);
    expect(shortestRun(weights, 0.98)).toMatchObject({ from: 1, to: 13 });
  });

  it('is one day where one day is enough', () => {
    expect(shortestRun(spread([7, 0.02], [8, 0.98]), 0.95)).toEqual({ from: 8, to: 8, p: 0.98 });
  });

  it('of two equally long ones holds more', () => {
    const weights = spread([1, 0.3], [2, 0.25], [3, 0.45]);
    expect(shortestRun(weights, 0.5)).toMatchObject({ from: 2, to: 3 });
  });

  it('is what trying every run finds', () => {
    fc.assert(
      fc.property(anySpread, fc.double({ min: 0.05, max: 0.97, noNaN: true }), (weights, level) => {
        const { from, to, p } = shortestRun(weights, level);
        const { days, p: each } = weights;
        let shortest = Number.POSITIVE_INFINITY;
        for (let a = 0; a < days.length; a++) {
          let held = 0;
          for (let b = a; b < days.length; b++) {
            held += each[b]!;
            // 1e-12: sums taken in another order differ by rounding.
            if (held >= level + 1e-12) shortest = Math.min(shortest, days[b]! - days[a]!);
          }
        }
        const held = each.reduce(
          (sum, q, j) => (days[j]! >= from && days[j]! <= to ? sum + q : sum),
          0,
        );
        expect(p).toBeCloseTo(held, 10);
        expect(p).toBeGreaterThan(level - 1e-12);
        expect(to - from).toBeLessThanOrEqual(shortest);
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});

describe('the fewest days', () => {
  it('are the likeliest ones, ascending', () => {
    const { days, p } = fewestDays(spread([1, 0.1], [2, 0.3], [3, 0.05], [9, 0.55]), 0.8);
    expect([...days]).toEqual([2, 9]);
    expect([...p]).toEqual([0.3, 0.55]);
  });

  it('hold the level, and not without the least of them', () => {
    fc.assert(
      fc.property(
        anySpread,
        fc.double({ min: 0.05, max: 0.999, noNaN: true }),
        (weights, level) => {
          const { p, days } = fewestDays(weights, level);
          const held = p.reduce((sum, q) => sum + q, 0);
          expect(held).toBeGreaterThan(level - 1e-12);
          expect(held - Math.min(...p)).toBeLessThan(level + 1e-12);
          expect([...days]).toEqual([...days].sort((a, b) => a - b));
        },
      ),
      { seed: 2, numRuns: 300 },
    );
  });
});

describe('peaks', () => {
  it('are none where there is one', () => {
    expect(modesOf(spread([1, 0.4], [5, 0.3], [11, 0.3]))).toEqual([]);
  });

  it('are told apart more than ten days off, the likeliest first', () => {
    const peaks = modesOf(spread([1, 0.2], [3, 0.1], [14, 0.6], [40, 0.1]));
    expect(peaks.map(({ from, to }) => [from, to])).toEqual([
      [14, 14],
      [1, 3],
      [40, 40],
    ]);
    expect(peaks[1]!.p).toBeCloseTo(0.3, 12);
  });

  it('leave out what holds less than a twentieth', () => {
    expect(modesOf(spread([1, 0.57], [30, 0.39], [80, 0.04])).map(({ from }) => from)).toEqual([
      1, 30,
    ]);
  });
});

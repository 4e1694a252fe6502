import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayOf, weekdayOf } from '../evidence/index.ts';
import { layCells } from './cells.ts';

interface Support {
  readonly points: Set<number>;
  readonly near: number[];
  readonly cuts: Set<number>;
}

/** The cells of each event, as a list. */
function cellsOf(supports: readonly Support[], first: number, last: number) {
  const { cellStart, cellLo, cellHi, cellWeekday, cellWeekdays } = layCells(supports, first, last);
  return supports.map((_, e) =>
    Array.from({ length: cellStart[e + 1]! - cellStart[e]! }, (_, j) => {
      const k = cellStart[e]! + j;
      return {
        lo: cellLo[k]!,
        hi: cellHi[k]!,
        weekday: cellWeekday[k]!,
        weekdays: [...cellWeekdays.subarray(7 * k, 7 * k + 7)],
      };
    }),
  );
}

const range = fc
  .tuple(fc.integer({ min: -3000, max: 12_000 }), fc.integer({ min: 0, max: 5000 }))
  .map(([first, length]) => ({ first, last: first + length }));
const days = fc.array(fc.integer({ min: -3100, max: 18_000 }), { maxLength: 25 });
const support = fc.tuple(days, days, days).map(
  ([single, close, cuts]): Support => ({
    points: new Set(single),
    near: [...close].sort((a, b) => a - b),
    cuts: new Set(cuts),
  }),
);

describe('the cells of an event', () => {
  it('hold each day of the range once, with its weekday', () => {
    fc.assert(
      fc.property(range, fc.array(support, { maxLength: 3 }), ({ first, last }, supports) => {
        cellsOf(supports, first, last).forEach((cells, e) => {
          const singles = new Set(cells.filter((c) => c.lo === c.hi).map((c) => c.lo));
          const held = new Int32Array(last - first + 1);
          for (const { lo, hi, weekdays } of cells) {
            const counted = new Array<number>(7).fill(0);
            for (let day = lo; day <= hi; day++) {
              if (lo !== hi && singles.has(day)) continue;
              held[day - first]!++;
              counted[weekdayOf(day) - 1]!++;
            }
            expect(weekdays).toEqual(counted);
          }
          expect(held.every((n) => n === 1)).toBe(true);
          for (const day of supports[e]!.points)
            if (day >= first && day <= last) expect(singles.has(day)).toBe(true);
        });
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it('are in order, and say which weekday a single day is', () => {
    const point = dayOf(1999, 3, 5);
    const sup = { points: new Set([point]), near: [point], cuts: new Set<number>() };
    const [cells] = cellsOf([sup], dayOf(1999, 1, 1), dayOf(1999, 12, 31)) as [
      ReturnType<typeof cellsOf>[number],
    ];
    expect(cells.map((c) => c.lo)).toEqual(cells.map((c) => c.lo).sort((a, b) => a - b));
    // 5 March 1999 was a Friday; the rest of that March has three more of them.
    expect(cells.find((c) => c.lo === point)!.weekday).toBe(4);
    const march = cells.find((c) => c.lo === dayOf(1999, 3, 1))!;
    expect(march).toMatchObject({ weekday: -1, weekdays: [5, 5, 5, 4, 3, 4, 4] });
  });

  it('are months near the evidence and at least years away from it', () => {
    const point = dayOf(1999, 3, 5);
    const sup = { points: new Set<number>(), near: [point], cuts: new Set<number>() };
    const [cells] = cellsOf([sup], dayOf(1985, 1, 1), dayOf(2010, 12, 31)) as [
      ReturnType<typeof cellsOf>[number],
    ];
    for (const { lo, hi } of cells) {
      // docs/methods/dating.md: months near the evidence; 200 days is near.
      if (hi >= point - 200 && lo <= point + 200) expect(hi - lo + 1).toBeLessThanOrEqual(31);
    }
    expect(cells.filter((c) => c.hi - c.lo > 360).length).toBeGreaterThan(3);
    expect(cells.length).toBeLessThan(70);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayOf, weekdayOf } from '../evidence/index.ts';
import { cellsOf } from './cells.ts';

/** Every day of the range with the number of cells that hold it, as cells are described. */
function coverage(cells: ReturnType<typeof cellsOf>, first: number, last: number): Int32Array {
  const singles = new Set(cells.lo.filter((lo, k) => lo === cells.hi[k]));
  const held = new Int32Array(last - first + 1);
  cells.lo.forEach((lo, k) => {
    for (let day = lo; day <= cells.hi[k]!; day++)
      if (lo === cells.hi[k] || !singles.has(day)) held[day - first]!++;
  });
  return held;
}

const range = fc
  .tuple(fc.integer({ min: 0, max: 12_000 }), fc.integer({ min: 0, max: 5000 }))
  .map(([first, length]) => ({ first, last: first + length }));

describe('the cells of an event', () => {
  it('hold each day of the range once, with its weekday', () => {
    const points = fc.array(fc.integer({ min: -100, max: 18_000 }), { maxLength: 25 });
    fc.assert(
      fc.property(range, points, points, ({ first, last }, single, close) => {
        const near = [...close].sort((a, b) => a - b);
        const cells = cellsOf(new Set(single), near, first, last);
        expect(coverage(cells, first, last).every((n) => n === 1)).toBe(true);
        const inside = new Set(single.filter((day) => day >= first && day <= last));
        for (const day of inside)
          expect(cells.lo.some((lo, k) => lo === day && cells.hi[k] === day)).toBe(true);
        const counted = cells.weekdays.reduce((a, b) => a + b, 0);
        expect(counted).toBe(last - first + 1);
        expect(cells.weekdays.every((n) => n >= 0)).toBe(true);
        expect([...cells.lo]).toEqual([...cells.lo].sort((a, b) => a - b));
      }),
      { seed: 7, numRuns: 100 },
    );
  });

  it('know how many days of each weekday they hold', () => {
    const [first, last] = [dayOf(1999, 1, 1), dayOf(1999, 12, 31)];
    const point = dayOf(1999, 3, 5);
    const cells = cellsOf(new Set([point]), [point], first, last);
    const march = cells.lo.indexOf(dayOf(1999, 3, 1));
    // March 1999 began on a Monday; its first Friday is a cell of its own.
    expect(cells.weekdays.slice(march * 7, march * 7 + 7)).toEqual([5, 5, 5, 4, 3, 4, 4]);
    expect(weekdayOf(point)).toBe(5);
    const own = cells.lo.indexOf(point);
    expect(cells.weekdays.slice(own * 7, own * 7 + 7)).toEqual([0, 0, 0, 0, 1, 0, 0]);
  });

  it('are months near the evidence and years away from it', () => {
    const near = [dayOf(1999, 3, 5)];
    const cells = cellsOf(new Set(), near, dayOf(1985, 1, 1), dayOf(2010, 12, 31));
    const lengths = cells.lo.map((lo, k) => cells.hi[k]! - lo + 1);
    expect(Math.max(...lengths)).toBe(366);
    expect(lengths.filter((n) => n <= 31).length).toBeGreaterThanOrEqual(12);
  });
});

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { dayOf } from '../evidence/index.ts';
import { layCells, sliceOf } from './cells.ts';
import { exactEntries } from './entries.ts';
import { calendarOf, fewDays, firstOfMonth, swapped, yearSlip, yearsOn } from './kernels.ts';
import {
  DAY_AFTER,
  DAY_BEFORE,
  FEW_DAYS,
  FIRST_OF_MONTH,
  N_READINGS,
  RIGHT,
  SWAPPED,
  YEAR_OFF,
} from './readings.ts';

const first = dayOf(1994, 1, 1);
const last = dayOf(2005, 12, 31);
const calendar = calendarOf(first - 800, last + 800);
const value = fc.oneof(
  fc.integer({ min: first, max: last }),
  fc
    .tuple(fc.integer({ min: 1994, max: 2005 }), fc.integer({ min: 1, max: 12 }))
    .map(([year, month]) => dayOf(year, month, 1)),
  fc.constantFrom(dayOf(1996, 2, 29), dayOf(2001, 2, 28), dayOf(1999, 12, 31)),
);

/** The table of docs/methods/dating.md, for a value `v` and the day `d`. */
function byDefinition(v: number, d: number): Float64Array {
  const out = new Float64Array(N_READINGS);
  if (v === d) out[RIGHT] = 1;
  if (v === d - 1) out[DAY_BEFORE] = 1;
  if (v === d + 1) out[DAY_AFTER] = 1;
  out[FEW_DAYS] = fewDays(v - d);
  if (swapped(calendar, d) === v) out[SWAPPED] = 1;
  if (firstOfMonth(calendar, d) === v) out[FIRST_OF_MONTH] = 1;
  const [back, on] = [yearSlip(calendar, d, -1), yearSlip(calendar, d, 1)];
  if (yearsOn(calendar, d, -1) === v) out[YEAR_OFF] = back;
  if (yearsOn(calendar, d, 1) === v) out[YEAR_OFF] = on;
  if (v === d) out[YEAR_OFF] = 1 - back - on;
  return out;
}

it('lays out each reading of a day once, wherever the day may lie', () => {
  fc.assert(
    fc.property(value, fc.array(value, { maxLength: 8 }), (v, others) => {
      const days = [v, ...others].flatMap((d) => [
        d - 1,
        d,
        d + 1,
        swapped(calendar, d),
        yearsOn(calendar, d, 1),
        yearsOn(calendar, d, -1),
      ]);
      const support = { points: new Set(days), near: [v], cuts: new Set<number>() };
      const cells = sliceOf(layCells([support], first, last), 0);
      const found = new Map<number, Float64Array>();
      exactEntries(v, cells, calendar, 1, {
        add: (k, reading, coefficient) => {
          const at = found.get(k) ?? new Float64Array(N_READINGS);
          at[reading]! += coefficient;
          found.set(k, at);
        },
      });
      for (let k = 0; k < cells.count; k++) {
        if (cells.lo[k] !== cells.hi[k]) continue;
        const none = new Float64Array(N_READINGS);
        expect(found.get(k) ?? none).toEqual(byDefinition(v, cells.lo[k]!));
      }
    }),
    { seed: 11, numRuns: 300 },
  );
});

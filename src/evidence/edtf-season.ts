import { dayOf } from './day.ts';
import type { DayRange } from './edtf.ts';

/** First month and number of months of the parts of a year that ISO 8601-2 numbers 21 to 41. */
const SEASONS: Readonly<Record<number, readonly [first: number, months: number]>> = {
  21: [3, 3],
  22: [6, 3],
  23: [9, 3],
  24: [12, 3],
  25: [3, 3],
  26: [6, 3],
  27: [9, 3],
  28: [12, 3],
  29: [9, 3],
  30: [12, 3],
  31: [3, 3],
  32: [6, 3],
  33: [1, 3],
  34: [4, 3],
  35: [7, 3],
  36: [10, 3],
  37: [1, 4],
  38: [5, 4],
  39: [9, 4],
  40: [1, 6],
  41: [7, 6],
};

/**
 * The days of a season, quarter, third or half of a year. The standard gives seasons no months:
 * three whole months are a convention, and a season over New Year means either of the two that
 * touch the year.
 */
export function seasonOf(
  year: number,
  season: number,
): { readonly level: 1 | 2; readonly ranges: readonly DayRange[] } {
  const span = SEASONS[season];
  if (span === undefined) throw new RangeError(`season must be 21 to 41, not ${season}`);
  const [first, months] = span;
  const run = (y: number) => ({ first: dayOf(y, first, 1), last: dayAfter(y, first + months) - 1 });
  const ranges = first === 12 ? [run(year - 1), run(year)] : [run(year)];
  return { level: season <= 24 ? 1 : 2, ranges };
}

/** First day of a month that may lie in the next year. */
function dayAfter(year: number, month: number): number {
  return month > 12 ? dayOf(year + 1, month - 12, 1) : dayOf(year, month, 1);
}

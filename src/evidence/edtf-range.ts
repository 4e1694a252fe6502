import { civilOf, dayOf, isoOf } from './day.ts';
import { daysOfMonth } from './edtf-calendar.ts';

/**
 * The plainest EDTF that means a run of days and no other: `YYYY` for a whole year, `YYYY-MM` for a
 * whole month, else a day or an interval of whole years, whole months or days; infinite ends are
 * open. Throws RangeError where `last` is before `first`, a number is no whole day, or a year is
 * not 0 to 9999.
 */
export function edtfOfRange(first: number, last: number): string {
  if (!(first <= last)) throw new RangeError(`last day ${last} is before the first, ${first}`);
  const length = Math.max(lengthOfStart(first), lengthOfEnd(last));
  const from = first === Number.NEGATIVE_INFINITY ? '..' : checked(first).slice(0, length);
  const to = last === Number.POSITIVE_INFINITY ? '..' : checked(last).slice(0, length);
  return from === to && from !== '..' ? from : `${from}/${to}`;
}

/** Letters that say a start without loss: 4 for 1 January, 7 for the first of a month, else 10. */
function lengthOfStart(day: number): number {
  if (day === Number.NEGATIVE_INFINITY) return 4;
  const text = checked(day);
  return text.endsWith('-01-01') ? 4 : text.endsWith('-01') ? 7 : 10;
}

/** Letters that say an end without loss. */
function lengthOfEnd(day: number): number {
  if (day === Number.POSITIVE_INFINITY) return 4;
  const { year, month, dayOfMonth } = civilOf(day);
  if (checked(day).endsWith('-12-31')) return 4;
  return dayOfMonth === daysOfMonth(year, month) ? 7 : 10;
}

function checked(day: number): string {
  if (!Number.isInteger(day)) throw new RangeError(`a day must be a whole number, not ${day}`);
  if (day < dayOf(0, 1, 1) || day > dayOf(9999, 12, 31)) {
    throw new RangeError(`the year must be 0 to 9999, not that of day ${day}`);
  }
  return isoOf(day);
}

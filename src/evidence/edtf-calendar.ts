const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Days of a month, 1 to 12, of the proleptic Gregorian calendar; NaN for another month. */
export function daysOfMonth(year: number, month: number): number {
  if (month === 2 && year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)) return 29;
  return MONTH_DAYS[month - 1] ?? Number.NaN;
}

/** What is expected of a date, in words. */
export const EXPECTED_DATE =
  'a date of ISO 8601-2 (EDTF), such as 1996-03-04, 1996-03, 1996~, 1996-03/1996-05 or [1996-03-04,1996-04-03]';

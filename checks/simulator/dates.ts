import { civilOf, dayOf, type EdtfDate, isoOf } from '../../src/evidence/index.ts';

export type Precision = 'day' | 'month' | 'month-xx' | 'year' | 'interval';
export const PRECISIONS: readonly Precision[] = ['day', 'month', 'month-xx', 'year', 'interval'];

const two = (n: number) => String(n).padStart(2, '0');

/** Last day of a month; month may run on past 12. */
function monthEnd(year: number, month: number): number {
  return month === 12 ? dayOf(year + 1, 1, 1) - 1 : dayOf(year, month + 1, 1) - 1;
}

/**
 * A day written in EDTF at a precision, with `mark` (`~`, `?`, `%` or nothing) behind it. An
 * interval runs from `before` days before the day to `after` days behind it.
 */
export function written(
  day: number,
  precision: Precision,
  mark: '' | '~' | '?' | '%' = '',
  before = 3,
  after = 3,
): EdtfDate {
  const { year, month } = civilOf(day);
  const flags = {
    approximate: mark === '~' || mark === '%',
    uncertain: mark === '?' || mark === '%',
  };
  const level = mark === '' ? 0 : 1;
  const whole = { first: dayOf(year, month, 1), last: monthEnd(year, month) };
  switch (precision) {
    case 'day':
      return {
        text: isoOf(day) + mark,
        level,
        form: 'day',
        ranges: [{ first: day, last: day }],
        ...flags,
      };
    case 'month':
      return {
        text: `${year}-${two(month)}${mark}`,
        level,
        form: 'month',
        ranges: [whole],
        ...flags,
      };
    case 'month-xx':
      return {
        text: `${year}-${two(month)}-XX`,
        level: 1,
        form: 'month',
        ranges: [whole],
        approximate: false,
        uncertain: false,
      };
    case 'year': {
      const ranges = [{ first: dayOf(year, 1, 1), last: dayOf(year, 12, 31) }];
      return { text: `${year}${mark}`, level, form: 'year', ranges, ...flags };
    }
    case 'interval': {
      const [first, last] = [day - before, day + after];
      const ranges = [{ first, last }];
      const text = `${isoOf(first)}/${isoOf(last)}`;
      return { text, level: 0, form: 'interval', ranges, approximate: false, uncertain: false };
    }
  }
}

/** Whether a date, read with its own precision, holds a day. */
export function holds(date: EdtfDate, day: number): boolean {
  return date.ranges.some((range) => range.first <= day && day <= range.last);
}

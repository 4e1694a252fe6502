import { dayOf } from './day.ts';
import type { DayRange, EdtfDate } from './edtf.ts';
import { daysOfMonth, EXPECTED_DATE } from './edtf-calendar.ts';
import { seasonOf } from './edtf-season.ts';

/** One date without interval or set. */
export interface Part {
  readonly level: 0 | 1 | 2;
  readonly form: EdtfDate['form'];
  readonly ranges: readonly DayRange[];
  readonly approximate: boolean;
  readonly uncertain: boolean;
  /** Some digits are `X`. */
  readonly masked: boolean;
}

const DATE =
  /^([?~%]?)(-?[\dX]{4})([?~%]?)(?:-([?~%]?)([\dX]{2})([?~%]?)(?:-([?~%]?)([\dX]{2})([?~%]?))?)?$/;

const GREATEST_YEAR = 1e12;

/** Reads one date; in words what was expected where it is none. */
export function partOf(text: string): Part | string {
  if (text.startsWith('Y')) return longYear(text);
  const significant = /^(-?\d{4})S(\d+)$/.exec(text);
  if (significant) return yearOfDigits(Number(significant[1]), 0, Number(significant[2]), 2);
  const match = DATE.exec(text);
  if (match === null || /^-0000/.test(match[2]!)) return EXPECTED_DATE;
  const marks = marksOf(match);
  if (typeof marks === 'string') return marks;
  const [year, month, day] = [match[2]!, match[5], match[8]];
  const dated = daysOf(year, month, day);
  if (typeof dated === 'string') return dated;
  const level = Math.max(marks.level, dated.level) as 0 | 1 | 2;
  return { ...marks, ...dated, level };
}

/** Uncertain and approximate, from the marks before and behind each part of the date. */
function marksOf(match: RegExpExecArray) {
  const pairs = [
    [match[1]!, match[3]!],
    [match[4] ?? '', match[6] ?? ''],
    [match[7] ?? '', match[9] ?? ''],
  ];
  if (pairs.some(([before, behind]) => before !== '' && behind !== '')) {
    return 'one mark a part: ? (uncertain), ~ (approximate) or % (both)';
  }
  const all = pairs.flat().join('');
  const end = match[8] !== undefined ? match[9] : match[5] !== undefined ? match[6] : match[3];
  const whole = all === end;
  return {
    level: (all === '' ? 0 : whole ? 1 : 2) as 0 | 1 | 2,
    approximate: /[~%]/.test(all),
    uncertain: /[?%]/.test(all),
  };
}

type Dated = Pick<Part, 'level' | 'form' | 'ranges' | 'masked'>;

function daysOf(year: string, month?: string, day?: string): Dated | string {
  if (month !== undefined && /^(2[1-9]|3\d|4[01])$/.test(month)) {
    if (day !== undefined || /X/.test(year)) return EXPECTED_DATE;
    return { ...seasonOf(Number(year), Number(month)), form: 'season', masked: false };
  }
  const masked = /X/.test(year + (month ?? '') + (day ?? ''));
  const level = masked ? levelOfMask(year, month, day) : year.startsWith('-') ? 1 : 0;
  const ranges = runsOf(year, month ?? 'XX', day ?? 'XX');
  if (typeof ranges === 'string') return ranges;
  return { level, form: formOf(year, month ?? 'XX', day ?? 'XX'), ranges, masked };
}

/** Level 1 leaves whole parts at the end open, or the last one or two digits of a year alone. */
function levelOfMask(year: string, month?: string, day?: string): 1 | 2 {
  if (month === undefined) return /^-?\d\d(\dX|XX)$/.test(year) ? 1 : 2;
  if (/X/.test(year)) return 2;
  if (month === 'XX') return day === undefined || day === 'XX' ? 1 : 2;
  return /X/.test(month) || day !== 'XX' ? 2 : 1;
}

function formOf(year: string, month: string, day: string): EdtfDate['form'] {
  if (/^\d\d$/.test(day)) return 'day';
  if (day !== 'XX' || /^(\dX|X\d)$/.test(month)) return 'interval';
  if (month !== 'XX') return 'month';
  return /X/.test(year) ? 'years' : 'year';
}

/** All numbers of at most `high` and at least `low` that a part with unspecified digits can mean. */
function numbersOf(part: string, low: number, high: number): number[] {
  const sign = part.startsWith('-') ? -1 : 1;
  let values = [0];
  for (const letter of part.replace('-', '')) {
    const choices = letter === 'X' ? [0, 1, 2, 3, 4, 5, 6, 7, 8, 9] : [Number(letter)];
    values = values.flatMap((value) => choices.map((digit) => value * 10 + digit));
  }
  return values.filter((value) => value >= low && value <= high).map((value) => value * sign);
}

/** The runs of days of a date with digits left open; in words what is wrong where there is none. */
function runsOf(year: string, month: string, day: string): DayRange[] | string {
  const years = numbersOf(year, 0, 9999).sort((a, b) => a - b);
  const months = numbersOf(month, 1, 12);
  if (months.length === 0) return 'a month from 01 to 12, or a season from 21 to 41';
  const wholeYear = month === 'XX' && day === 'XX';
  if (wholeYear) return years.map((y) => ({ first: dayOf(y, 1, 1), last: dayOf(y, 12, 31) }));
  const days = day === 'XX' ? [] : numbersOf(day, 1, 31);
  const runs = years.flatMap((y) =>
    months.flatMap((m) => {
      if (day === 'XX') return { first: dayOf(y, m, 1), last: dayOf(y, m, daysOfMonth(y, m)) };
      const possible = days.filter((d) => d <= daysOfMonth(y, m));
      if (possible.length === 0) return [];
      return { first: dayOf(y, m, possible[0]!), last: dayOf(y, m, possible.at(-1)!) };
    }),
  );
  return runs.length > 0 ? runs : `a day that there is: ${year}-${month} has no day ${day}`;
}

function longYear(text: string): Part | string {
  const match = /^Y(-?\d+)(?:E(\d+))?(?:S(\d+))?$/.exec(text);
  if (match === null) return EXPECTED_DATE;
  const exponent = Number(match[2] ?? 0);
  const plain = match[2] === undefined;
  if (plain && match[1]!.replace('-', '').length < 5) return 'more than four digits after Y';
  const level = plain && match[3] === undefined ? 1 : 2;
  const significant = match[3] === undefined ? undefined : Number(match[3]);
  return yearOfDigits(Number(match[1]), exponent, significant, level);
}

/** A year by its digits, of which the first `significant` ones are certain. */
function yearOfDigits(
  stem: number,
  exponent: number,
  significant: number | undefined,
  level: 1 | 2,
): Part | string {
  const size = Math.abs(stem) * 10 ** exponent;
  if (!(size <= GREATEST_YEAR)) return 'a year of at most 1,000,000,000,000';
  const length = Math.max(4, String(size).length);
  if (significant !== undefined && (significant < 1 || significant > length)) {
    return `between 1 and ${length} significant digits`;
  }
  const unit = significant === undefined ? 1 : 10 ** (length - significant);
  const low = Math.floor(size / unit) * unit;
  const [from, to] = stem < 0 ? [-(low + unit - 1), -low] : [low, low + unit - 1];
  const ranges = [{ first: dayOf(from, 1, 1), last: dayOf(to, 12, 31) }];
  const form = unit > 1 ? 'years' : 'year';
  return { level, form, ranges, approximate: false, uncertain: false, masked: false };
}

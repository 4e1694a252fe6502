import { civilOf, dayFrom } from './day.ts';
import { parseEdtf } from './edtf-parse.ts';
import { edtfOfRange } from './edtf-range.ts';

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

const SEASONS: Readonly<Record<string, string>> = {
  '21': 'spring',
  '22': 'summer',
  '23': 'autumn',
  '24': 'winter',
};

/** The English name of a month, 1 to 12; `short` leaves its first three letters. */
export function monthName(month: number, short = false): string {
  const name = MONTHS[month - 1] ?? '';
  return short ? name.slice(0, 3) : name;
}

/** A day as a person says it: `19 November 2003`; `short` shortens the month. */
export function sayDay(day: number, short = false): string {
  const { year, month, dayOfMonth } = civilOf(day);
  return `${dayOfMonth} ${monthName(month, short)} ${year}`;
}

/**
 * A run of days, both ends included, as a person says it: `4 to 19 May 1995`, `May 1995`,
 * `January to March 1996`, `1996 to 1998`. Throws `RangeError` as `edtfOfRange` does.
 */
export function sayRun(first: number, last: number, short = false): string {
  return endsOf(first, last, short).join(' to ');
}

/** The same after *it came out*: `on 4 May 1995`, `in May 1995`, `between 4 and 19 May 1995`. */
export function sayWhen(first: number, last: number): string {
  const ends = endsOf(first, last, false);
  if (ends.length > 1) return `between ${ends.join(' and ')}`;
  return first === last ? `on ${ends[0]}` : `in ${ends[0]}`;
}

/** The ends of a run in words, what both share said once; one where a month or year says it all. */
function endsOf(first: number, last: number, short: boolean): readonly string[] {
  const [from = '', to] = edtfOfRange(first, last).split('/');
  if (to === undefined) return [sayPlain(from, short)];
  const words = sayPlain(from, short).split(' ');
  const sameYear = from.length > 4 && from.slice(0, 4) === to.slice(0, 4);
  const sameMonth = from.length > 7 && from.slice(0, 7) === to.slice(0, 7);
  const start = words.slice(0, words.length - (sameMonth ? 2 : sameYear ? 1 : 0));
  return [start.join(' '), sayPlain(to, short)];
}

/**
 * A date in EDTF as a person says it: `1993-09~` is *about September 1993*; `short` shortens the
 * months. What it has no words for comes back as written; whether it is valid is for `parseEdtf`.
 */
export function sayEdtf(text: string, short = false): string {
  const value = text.trim();
  if (/^[[{].*[\]}]$/.test(value)) {
    const parts = value.slice(1, -1).split(',');
    const words = parts.map((part) => sayPart(part, short));
    return words.join(value.startsWith('{') ? ' and ' : ' or ');
  }
  const [from, to, ...rest] = value.split('/');
  if (from === undefined || to === undefined || rest.length > 0) return sayPart(value, short);
  if (isOpen(from)) return isOpen(to) ? 'any day' : `until ${sayPart(to, short)}`;
  if (isOpen(to)) return `from ${sayPart(from, short)} on`;
  const ends = /[~?%X]/.test(value) ? undefined : daysOf(value);
  const words = ends ? endsOf(...ends, short) : [from, to].map((part) => sayPart(part, short));
  return words.length > 1 ? `between ${words.join(' and ')}` : (words[0] ?? '');
}

function isOpen(end: string): boolean {
  return end === '' || end === '..';
}

/** First and last day of what a date means, where it is one run with two ends. */
function daysOf(text: string): readonly [number, number] | undefined {
  const reading = parseEdtf(text);
  const range = reading.ok && reading.date.ranges.length === 1 ? reading.date.ranges[0] : undefined;
  if (!range || !Number.isFinite(range.first) || !Number.isFinite(range.last)) return undefined;
  return [range.first, range.last];
}

function sayPart(part: string, short: boolean): string {
  const text = part.trim();
  const [from = '', to] = text.split('..');
  if (to !== undefined) {
    if (from === '') return `until ${sayPart(to, short)}`;
    if (to === '') return `from ${sayPart(from, short)} on`;
    const ends = daysOf(`[${text}]`);
    return ends ? sayRun(...ends, short) : text;
  }
  const said = sayPlain(text.replace(/[~?%]/g, ''), short);
  const [sign] = /[~?%]/.exec(text) ?? [''];
  if (sign === '~') return `about ${said}`;
  if (sign === '?') return `perhaps ${said}`;
  return sign === '%' ? `perhaps about ${said}` : said;
}

function sayPlain(plain: string, short: boolean): string {
  const [, year = '', month = '', day = ''] =
    /^(-?[\dX]{4})(?:-([\dX]{2}))?(?:-([\dX]{2}))?$/.exec(plain) ?? [];
  if (year === '') return plain;
  if (year.includes('X')) return sayVagueYear(year);
  if (month === '' || (month === 'XX' && (day === '' || day === 'XX'))) return year;
  if (SEASONS[month] && day === '') return `${SEASONS[month]} ${year}`;
  const isMonth = /^(0[1-9]|1[0-2])$/.test(month);
  if (isMonth && (day === '' || day === 'XX')) return `${monthName(Number(month), short)} ${year}`;
  if (isMonth && /^\d\d$/.test(day)) return sayDay(dayFrom(plain), short);
  const ends = daysOf(plain);
  return ends ? sayRun(...ends, short) : plain;
}

function sayVagueYear(year: string): string {
  if (/^\d{3}X$/.test(year)) return `the ${year.slice(0, 3)}0s`;
  return /^\d\dXX$/.test(year) ? `the years ${year.slice(0, 2)}00 to ${year.slice(0, 2)}99` : year;
}

/** A list in a sentence: `a, b and c`. */
export function sayList(items: readonly string[], last = 'and'): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;
}

/** A doubt as it is printed after ±: half the width of a 95 % interval, never rounded down to nothing. */
export function sayDoubt(sd: number, digits: number): string {
  return Math.max(1.96 * sd, 10 ** -digits).toFixed(digits);
}

import { dayOf } from './day.ts';
import type { DayRange, EdtfDate } from './edtf.ts';
import { daysOfMonth, EXPECTED_DATE } from './edtf-calendar.ts';
import { type Part, partOf } from './edtf-part.ts';

/** A date, or in words what was expected in its place. */
export type EdtfReading =
  | { readonly ok: true; readonly date: EdtfDate }
  | { readonly ok: false; readonly expected: string };

/**
 * Reads a date of the Extended Date/Time Format (ISO 8601-2:2019): levels 0 and 1, of level 2
 * seasons of a hemisphere, sets, qualified parts, unspecified digits and significant digits
 * (`loc:edtf`). A time of day is checked and dropped; the day is the one that the clock there
 * showed. More than 1,000 separate runs of days (`XXXX-12-XX`) are given as the one run that holds
 * them. Months of the seasons are a convention of readers: winter of a year means either winter.
 */
export function parseEdtf(text: string): EdtfReading {
  return plainDate(text) ?? anyDate(text);
}

function digits(text: string, from: number, to: number): number {
  let value = 0;
  for (let i = from; i < to; i++) {
    const digit = text.charCodeAt(i) - 48;
    if (digit < 0 || digit > 9) return -1;
    value = value * 10 + digit;
  }
  return value;
}

/** `YYYY-MM-DD`, `YYYY-MM` and `YYYY`, which nearly all dates are, without any pattern. */
function plainDate(text: string): EdtfReading | undefined {
  const { length } = text;
  if (length !== 10 && length !== 7 && length !== 4) return undefined;
  const year = digits(text, 0, 4);
  if (year < 0) return undefined;
  if (length === 4) return found(text, 'year', dayOf(year, 1, 1), dayOf(year, 12, 31));
  const month = digits(text, 5, 7);
  if (text.charCodeAt(4) !== 45 || month < 1 || month > 12) return undefined;
  const last = daysOfMonth(year, month);
  if (length === 7) return found(text, 'month', dayOf(year, month, 1), dayOf(year, month, last));
  const day = digits(text, 8, 10);
  if (text.charCodeAt(7) !== 45 || day < 1 || day > last) return undefined;
  const number = dayOf(year, month, day);
  return found(text, 'day', number, number);
}

function found(text: string, form: EdtfDate['form'], first: number, last: number): EdtfReading {
  const ranges = [{ first, last }];
  return {
    ok: true,
    date: { text, level: 0, form, ranges, approximate: false, uncertain: false },
  };
}

function anyDate(text: string): EdtfReading {
  if (text.length > 2000) return { ok: false, expected: 'a date of at most 2,000 characters' };
  const outcome = text.startsWith('[') || text.startsWith('{') ? setOf(text) : lineOf(text);
  if (typeof outcome === 'string') return { ok: false, expected: outcome };
  const { level, form, approximate, uncertain } = outcome;
  const ranges = joined(outcome.ranges);
  return { ok: true, date: { text, level, form, ranges, approximate, uncertain } };
}

/** An interval, or one date with or without a time of day. */
function lineOf(text: string): Part | string {
  const slash = text.indexOf('/');
  if (slash >= 0) return intervalOf(text.slice(0, slash), text.slice(slash + 1));
  const time =
    /^(\d{4}-\d\d-\d\d)T([01]\d|2[0-3]):[0-5]\d:[0-5]\d(?:Z|[+-](?:0\d|1[0-4])(?::[0-5]\d)?)?$/.exec(
      text,
    );
  return partOf(time?.[1] ?? text);
}

function intervalOf(from: string, to: string): Part | string {
  const open = { '': true, '..': true };
  const openStart = Object.hasOwn(open, from);
  const openEnd = Object.hasOwn(open, to);
  if (openStart && openEnd && from + to !== '....') return EXPECTED_DATE;
  const start = openStart ? undefined : partOf(from);
  const end = openEnd ? undefined : partOf(to);
  if (typeof start === 'string') return start;
  if (typeof end === 'string') return end;
  const first = start?.ranges[0]?.first ?? Number.NEGATIVE_INFINITY;
  const last = end?.ranges.at(-1)?.last ?? Number.POSITIVE_INFINITY;
  if (last < first) return 'an interval that ends on or after its start';
  const level = (part: Part | undefined) => (part === undefined ? 1 : part.masked ? 2 : part.level);
  return {
    level: Math.max(level(start), level(end)) as 0 | 1 | 2,
    form: 'interval',
    ranges: [{ first, last }],
    approximate: start?.approximate === true || end?.approximate === true,
    uncertain: start?.uncertain === true || end?.uncertain === true,
    masked: false,
  };
}

/** `[…]`, one of the members, or `{…}`, all of them; `..` runs between or beyond members. */
function setOf(text: string): Part | string {
  const closing = text.startsWith('[') ? ']' : '}';
  if (!text.endsWith(closing) || text.length < 3) return `a set that ends with ${closing}`;
  const ranges: DayRange[] = [];
  let approximate = false;
  let uncertain = false;
  for (const member of text.slice(1, -1).split(',')) {
    const part = memberOf(member);
    if (typeof part === 'string') return part;
    ranges.push(...part.ranges);
    approximate ||= part.approximate;
    uncertain ||= part.uncertain;
  }
  const form = closing === ']' ? 'set' : 'lists';
  return { level: 2, form, ranges, approximate, uncertain, masked: false };
}

function memberOf(member: string): Part | string {
  const dots = member.indexOf('..');
  if (dots < 0) return partOf(member);
  const from = member.slice(0, dots);
  const to = member.slice(dots + 2);
  if (from === '' && to === '') return EXPECTED_DATE;
  return intervalOf(from === '' ? '..' : from, to === '' ? '..' : to);
}

/** Ascending and disjoint; neighbours and overlaps become one. */
function joined(ranges: readonly DayRange[]): DayRange[] {
  if (ranges.length === 1) return [ranges[0]!];
  const sorted = [...ranges].sort((a, b) => a.first - b.first);
  const result: { first: number; last: number }[] = [];
  for (const { first, last } of sorted) {
    const top = result.at(-1);
    if (top !== undefined && first <= top.last + 1) top.last = Math.max(top.last, last);
    else result.push({ first, last });
  }
  if (result.length <= 1000) return result;
  return [{ first: result[0]!.first, last: result.at(-1)!.last }];
}

import { dayOf } from '../../day.ts';

/** What a date phrase says of one moment; what it does not say is missing. */
export interface Part {
  readonly year?: number;
  readonly month?: number;
  readonly day?: number;
  /** EDTF code of a season (21–24), quarter (33–36) or half-year (40–41). */
  readonly code?: number;
  /** First year of a decade. */
  readonly decade?: number;
  readonly third?: 'early' | 'mid' | 'late';
}

const LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Days of a month; February has 29 where the year is a leap year or not known. */
export function monthLength(month: number, year?: number): number {
  if (month !== 2) return LENGTHS[month - 1] ?? 0;
  const leap = year === undefined || (year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0));
  return leap ? 29 : 28;
}

/** Whether the month has such a day. */
export function isDay(day: number, month: number, year?: number): boolean {
  return month >= 1 && month <= 12 && day >= 1 && day <= monthLength(month, year);
}

/** The year that two digits stand for: 50 to 99 are 19.., 00 to 49 are 20... */
export function fullYear(two: number): number {
  return two >= 50 ? 1900 + two : 2000 + two;
}

const pad = (n: number, width = 2) => String(n).padStart(width, '0');

function thirdOf(part: Part): [string, string] {
  const { year = 0, month, third = 'early' } = part;
  const step = third === 'early' ? 0 : third === 'mid' ? 1 : 2;
  if (part.decade !== undefined) {
    const [first, last] = [
      [0, 3],
      [4, 6],
      [7, 9],
    ][step] as [number, number];
    return [pad(part.decade + first, 4), pad(part.decade + last, 4)];
  }
  if (month !== undefined) {
    const last = step === 2 ? monthLength(month, year) : 10 * (step + 1);
    const stem = `${pad(year, 4)}-${pad(month)}-`;
    return [stem + pad(10 * step + 1), stem + pad(last)];
  }
  return [`${pad(year, 4)}-${pad(4 * step + 1)}`, `${pad(year, 4)}-${pad(4 * step + 4)}`];
}

/**
 * The two ends of a part in EDTF; both are the same unless it is an early, middle or late third
 * (`docs/methods/notes.md` states the thirds).
 */
export function endsOf(part: Part): [string, string] {
  if (part.third !== undefined && part.code === undefined && part.day === undefined) {
    return thirdOf(part);
  }
  let text: string;
  if (part.decade !== undefined) text = `${pad(part.decade / 10, 3)}X`;
  else if (part.code !== undefined) text = `${pad(part.year ?? 0, 4)}-${part.code}`;
  else {
    text = pad(part.year ?? 0, 4);
    if (part.month !== undefined) text += `-${pad(part.month)}`;
    if (part.month !== undefined && part.day !== undefined) text += `-${pad(part.day)}`;
  }
  return [text, text];
}

/** First day of a part, for comparing two of them; a missing year counts as year 1. */
export function beginOf(part: Part): number {
  if (part.decade !== undefined) return dayOf(part.decade, 1, 1);
  const year = part.year ?? 1;
  const code = part.code ?? 0;
  const byCode = code >= 40 ? (code - 40) * 6 + 1 : code >= 33 ? (code - 33) * 3 + 1 : 0;
  const bySeason = code >= 21 && code <= 24 ? (code - 21) * 3 + 1 : 0;
  return dayOf(year, part.month ?? Math.max(byCode, bySeason, 1), part.day ?? 1);
}

/** Whether the part has a year, as itself or by its decade. */
export function hasYear(part: Part): boolean {
  return part.year !== undefined || part.decade !== undefined;
}

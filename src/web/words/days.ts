import { civilOf, dayOf } from '../../evidence/index.ts';

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

/** The day number of an ISO day, for drawing. Throws a `RangeError` where it is no day. */
export function dayFrom(iso: string): number {
  const [, sign, year, month, day] = /^(-?)(\d{4,})-(\d\d)-(\d\d)$/.exec(iso) ?? [];
  if (!year || !month || !day) throw new RangeError(`dayFrom requires YYYY-MM-DD, got ${iso}`);
  return dayOf(Number(`${sign ?? ''}${year}`), Number(month), Number(day));
}

/** A day as a person says it: `19 November 2003`; `short` shortens the month. */
export function sayDay(iso: string, short = false): string {
  const { year, month, dayOfMonth } = civilOf(dayFrom(iso));
  return `${dayOfMonth} ${monthName(month, short)} ${year}`;
}

/**
 * A window as a person says it: `3 to 17 Apr 1994`, `Apr to Jul 1994`, `1997`. It is rounded to what
 * a person would say: to months beyond three months, and when `short` to years beyond three years.
 */
export function sayWindow(from: string, to: string, short = true): string {
  if (from === to) return sayDay(from, short);
  const a = civilOf(dayFrom(from));
  const b = civilOf(dayFrom(to));
  const months = a.dayOfMonth <= 3 && dayFrom(to) - dayFrom(from) > 24 && endsMonth(to);
  const long = dayFrom(to) - dayFrom(from) > 92;
  if (a.month === 1 && b.month === 12 && (months || (a.dayOfMonth <= 7 && b.dayOfMonth >= 25))) {
    return a.year === b.year ? String(a.year) : `${a.year} to ${b.year}`;
  }
  const name = (month: number) => monthName(month, short);
  if (short && b.year - a.year > 2) return `${a.year} to ${b.year}`;
  if (months || long) {
    if (a.year !== b.year) return `${name(a.month)} ${a.year} to ${name(b.month)} ${b.year}`;
    return a.month === b.month
      ? `${name(a.month)} ${a.year}`
      : `${name(a.month)} to ${name(b.month)} ${a.year}`;
  }
  if (a.year !== b.year) return `${sayDay(from, short)} to ${sayDay(to, short)}`;
  return a.month === b.month
    ? `${a.dayOfMonth} to ${b.dayOfMonth} ${name(b.month)} ${b.year}`
    : `${a.dayOfMonth} ${name(a.month)} to ${b.dayOfMonth} ${name(b.month)} ${b.year}`;
}

function endsMonth(iso: string): boolean {
  return civilOf(dayFrom(iso) + 3).month !== civilOf(dayFrom(iso)).month;
}

function monthName(month: number, short: boolean): string {
  const name = MONTHS[month - 1] ?? '';
  return short ? name.slice(0, 3) : name;
}

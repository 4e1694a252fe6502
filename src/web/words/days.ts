import { civilOf, dayFrom, monthName, sayDay, sayRun } from '../../evidence/index.ts';

/**
 * A window as a person says it: `3 to 17 Apr 1994`, `Apr to Jul 1994`, `1997`. It is rounded to what
 * a person would say: to months beyond three months, and when `short` to years beyond three years.
 */
export function sayWindow(from: string, to: string, short = true): string {
  if (from === to) return sayDay(dayFrom(from), short);
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
  return sayRun(dayFrom(from), dayFrom(to), short);
}

function endsMonth(iso: string): boolean {
  return civilOf(dayFrom(iso) + 3).month !== civilOf(dayFrom(iso)).month;
}

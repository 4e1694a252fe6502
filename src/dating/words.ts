import { civilOf } from '../evidence/index.ts';

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

/** A day as a person says it: 19 November 2003. */
export function sayDay(day: number): string {
  const { year, month, dayOfMonth } = civilOf(day);
  return `${dayOfMonth} ${MONTHS[month - 1]} ${year}`;
}

/** A run of days as a person says it. */
export function sayRun(from: number, to: number): string {
  if (from === to) return sayDay(from);
  const a = civilOf(from);
  const b = civilOf(to);
  if (a.year === b.year && a.month === b.month) {
    return `between ${a.dayOfMonth} and ${b.dayOfMonth} ${MONTHS[a.month - 1]} ${a.year}`;
  }
  return `between ${sayDay(from)} and ${sayDay(to)}`;
}

/** A stretch of days as a person says it: 1 day, 3 weeks, 2 months. */
export function sayLength(days: number): string {
  const n = Math.abs(Math.round(days));
  if (n <= 1) return '1 day';
  if (n < 21) return `${n} days`;
  if (n < 84) return `about ${Math.round(n / 7)} weeks`;
  if (n < 700) return `about ${Math.round(n / 30.44)} months`;
  return `about ${Math.round(n / 365.25)} years`;
}

/** Names joined as in a sentence: A, B and C. */
export function sayList(names: readonly string[]): string {
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

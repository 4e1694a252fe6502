import { civilOf, dayOf } from '../evidence/index.ts';

/** A calendar table over a range of days, so that hot loops need no division. */
export interface Calendar {
  readonly first: number;
  readonly year: Int16Array;
  readonly month: Uint8Array;
  readonly dayOfMonth: Uint8Array;
}

/** The calendar table for the days from `first` to `last`. */
export function calendarOf(first: number, last: number): Calendar {
  const n = last - first + 1;
  const out = {
    first,
    year: new Int16Array(n),
    month: new Uint8Array(n),
    dayOfMonth: new Uint8Array(n),
  };
  let { year, month, dayOfMonth } = civilOf(first);
  let next = dayOf(year, month + 1, 1);
  for (let j = 0; j < n; j++) {
    if (first + j === next) {
      dayOfMonth = 1;
      month = month === 12 ? 1 : month + 1;
      if (month === 1) year++;
      next = dayOf(year, month + 1, 1);
    }
    out.year[j] = year;
    out.month[j] = month;
    out.dayOfMonth[j] = dayOfMonth++;
  }
  return out;
}

/** The day with day and month swapped, or the day itself where that is no other date. */
export function swapped(calendar: Calendar, day: number): number {
  const j = day - calendar.first;
  const m = calendar.month[j]!;
  const d = calendar.dayOfMonth[j]!;
  return d > 12 || d === m ? day : dayOf(calendar.year[j]!, d, m);
}

/** The same day of another year; 29 February becomes 28 February. */
export function yearsOn(calendar: Calendar, day: number, years: number): number {
  const j = day - calendar.first;
  const m = calendar.month[j]!;
  const d = calendar.dayOfMonth[j]!;
  return dayOf(calendar.year[j]! + years, m, m === 2 && d === 29 ? 28 : d);
}

/** The first day of a day's month. */
export function firstOfMonth(calendar: Calendar, day: number): number {
  return day - calendar.dayOfMonth[day - calendar.first]! + 1;
}

const REACH = 21;
const FALL = 0.78;
/** A slip of a few days falls off from zero and is late more often than early. Judgement. */
const LATE = 0.62;
const KERNEL_SUM = (FALL ** 2 * (1 - FALL ** (REACH - 1))) / (1 - FALL);

/** Probability that a slip of a few days is of exactly so many days, stated less true. */
export function fewDays(delta: number): number {
  const size = Math.abs(delta);
  if (size < 2 || size > REACH) return 0;
  return ((delta > 0 ? LATE : 1 - LATE) * FALL ** size) / KERNEL_SUM;
}

export const FEW_DAYS_REACH = REACH;

/** Share of those that miss another moment by a day among those that miss it by days. Judgement. */
const BY_A_DAY = 0.55;

/** Probability that another moment, missed by days, is missed by exactly so many, stated less true. */
export function nearMoment(delta: number): number {
  return Math.abs(delta) === 1 ? BY_A_DAY / 2 : (1 - BY_A_DAY) * fewDays(delta);
}

/** How far a year is mistaken on a day: about New Year it is, in summer hardly. Judgement. */
export function yearSlip(calendar: Calendar, day: number, years: number): number {
  const m = calendar.month[day - calendar.first]!;
  const towards = years < 0 ? m <= 2 : m >= 11;
  if (towards) return m === 1 || m === 12 ? 0.8 : 0.4;
  return m === 1 || m === 12 || m === 2 || m === 11 ? 0.1 : 0.06;
}

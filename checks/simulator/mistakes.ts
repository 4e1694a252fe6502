import { civilOf, type Day, dayOf } from '../../src/evidence/index.ts';
import type { Chance } from './chance.ts';
import type { Habits, Mistake, Release } from './types.ts';

/** What a mistake may take its day from. */
export interface Surroundings {
  /** Other releases of the same product. */
  readonly siblings: readonly Release[];
  /** Releases in the next rows of a table by market and day. */
  readonly neighbours: readonly Release[];
}

/** Day and month changed places; the same day where that gives no other date. */
export function swapped(day: number): number {
  const { year, month, dayOfMonth } = civilOf(day);
  return dayOfMonth <= 12 ? dayOf(year, dayOfMonth, month) : day;
}

/** January dated in the year just over, December in the year to come; else the same day. */
export function yearOff(day: number): number {
  const { year, month, dayOfMonth } = civilOf(day);
  if (month === 1) return dayOf(year - 1, 1, dayOfMonth);
  return month === 12 ? dayOf(year + 1, 12, dayOfMonth) : day;
}

export function firstOfMonth(day: number): number {
  const { year, month } = civilOf(day);
  return dayOf(year, month, 1);
}

/** The day that a source states for a release when it errs in a given way. */
export function mistaken(
  chance: Chance,
  how: Mistake,
  release: Release,
  source: Habits,
  around: Surroundings,
): number {
  const day = release.day;
  const sign = chance.yes(0.5) ? 1 : -1;
  switch (how) {
    case 'next-day':
      return day + (chance.yes(0.6) ? 1 : -1);
    case 'few-days':
      return day + (chance.yes(0.75) ? 1 : -1) * chance.whole(1, 7);
    case 'swapped':
      return swapped(day);
    case 'first-of-month':
      return firstOfMonth(day);
    case 'year-off':
      return yearOff(day);
    case 'other-moment':
      return day + source.lag + Math.round(chance.normal(0, source.spread));
    case 'row-shift':
      return around.neighbours.length > 0 ? chance.pick(around.neighbours).day : day;
    case 'filled-in':
      return source.fill;
    case 'sibling':
      return siblingDay(chance, around.siblings) ?? day;
    case 'noise-near':
      return day + sign * (1 + Math.round(15 * chance.gamma(1)));
    case 'noise-far':
      return day + sign * (10 + Math.round(250 * chance.gamma(0.8)));
  }
}

/** The day of the same product elsewhere, oftenest where it came out first. */
function siblingDay(chance: Chance, siblings: readonly Release[]): number | undefined {
  if (siblings.length === 0) return undefined;
  if (chance.yes(0.4)) return chance.pick(siblings).day;
  return Math.min(...siblings.map((one) => one.day));
}

/** A typing error in a day: a digit off, two digits changed round, off by a few; never the same. */
export function slipped(chance: Chance, day: number): Day {
  for (;;) {
    const other = slipOnce(chance, day);
    if (other !== undefined && other !== day) return other;
  }
}

function slipOnce(chance: Chance, day: number): Day | undefined {
  const { year, month, dayOfMonth } = civilOf(day);
  const way = chance.weighted([3, 2, 1.5, 1, 1]);
  if (way === 0) return valid(year, month, digitOff(chance, dayOfMonth));
  if (way === 1) return (day + (chance.yes(0.5) ? 1 : -1) * chance.whole(1, 3)) as Day;
  if (way === 2) return valid(year, month, (dayOfMonth % 10) * 10 + Math.floor(dayOfMonth / 10));
  if (way === 3) return valid(year, digitOff(chance, month), dayOfMonth);
  return valid(year + (chance.yes(0.5) ? 1 : -1), month, dayOfMonth);
}

function digitOff(chance: Chance, n: number): number {
  const tens = Math.floor(n / 10);
  return chance.yes(0.7) ? tens * 10 + chance.whole(0, 9) : chance.whole(0, 3) * 10 + (n % 10);
}

function valid(year: number, month: number, dayOfMonth: number): Day | undefined {
  if (month < 1 || month > 12 || dayOfMonth < 1 || dayOfMonth > 31) return undefined;
  const day = dayOf(year, month, dayOfMonth);
  return civilOf(day).month === month ? day : undefined;
}

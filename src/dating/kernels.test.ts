import { describe, expect, it } from 'vitest';
import { civilOf, dayOf, isoOf } from '../evidence/index.ts';
import {
  calendarOf,
  FEW_DAYS_REACH,
  fewDays,
  firstOfMonth,
  swapped,
  yearSlip,
  yearsOn,
} from './kernels.ts';

// Over the leap day of 2000 and the missing one of 1900, so that both rules of the century count.
const calendar = calendarOf(dayOf(1899, 11, 3), dayOf(2001, 2, 7));
const at = (iso: string) => {
  const [y, m, d] = iso.split('-').map(Number);
  return dayOf(y!, m!, d!);
};

describe('a calendar', () => {
  it('holds what counting in eras gives, day for day', () => {
    for (let j = 0; j < calendar.year.length; j++) {
      const { year, month, dayOfMonth } = civilOf(calendar.first + j);
      expect([calendar.year[j], calendar.month[j], calendar.dayOfMonth[j]]).toEqual([
        year,
        month,
        dayOfMonth,
      ]);
    }
  });

  it('holds one day where it begins and ends on it', () => {
    const one = calendarOf(at('1996-02-29'), at('1996-02-29'));
    expect([[...one.year], [...one.month], [...one.dayOfMonth]]).toEqual([[1996], [2], [29]]);
  });
});

describe('mistakes with a calendar', () => {
  it.each([
    ['1996-04-03', '1996-03-04'],
    ['1996-12-01', '1996-01-12'],
    ['1996-04-13', '1996-04-13'],
    ['1996-05-05', '1996-05-05'],
    ['2000-02-11', '2000-11-02'],
  ])('%s with day and month swapped is %s', (day, other) => {
    expect(isoOf(swapped(calendar, at(day)))).toBe(other);
  });

  it('swapping twice is nothing', () => {
    for (let day = at('1995-01-01'); day <= at('1996-12-31'); day++)
      expect(swapped(calendar, swapped(calendar, day))).toBe(day);
  });

  it.each([
    ['1996-02-29', 1, '1997-02-28'],
    ['1996-02-29', -1, '1995-02-28'],
    ['1997-02-28', -1, '1996-02-28'],
    ['1999-12-31', 1, '2000-12-31'],
    ['1901-03-01', -1, '1900-03-01'],
  ])('%s, %i years on, is %s', (day, years, other) => {
    expect(isoOf(yearsOn(calendar, at(day), years))).toBe(other);
  });

  it.each([
    ['1996-02-29', '1996-02-01'],
    ['1996-03-01', '1996-03-01'],
  ])('the month of %s begins on %s', (day, first) => {
    expect(isoOf(firstOfMonth(calendar, at(day)))).toBe(first);
  });

  // docs/methods/dating.md: 0.8 in January for the year before and December for the year after,
  // 0.4 in February and November, 0.1 the other way in these months, 0.06 else.
  it.each([
    ['1996-01-15', 0.8, 0.1],
    ['1996-02-15', 0.4, 0.1],
    ['1996-06-15', 0.06, 0.06],
    ['1996-11-15', 0.1, 0.4],
    ['1996-12-15', 0.1, 0.8],
  ])('the year of %s is mistaken for the one before and after with %f and %f', (day, back, on) => {
    expect(yearSlip(calendar, at(day), -1)).toBe(back);
    expect(yearSlip(calendar, at(day), 1)).toBe(on);
  });
});

describe('a slip of a few days', () => {
  const sizes = Array.from({ length: 2 * FEW_DAYS_REACH + 9 }, (_, j) => j - FEW_DAYS_REACH - 4);

  it('has probabilities that add up to one, 0.62 of it late', () => {
    const sum = (list: readonly number[]) => list.reduce((all, d) => all + fewDays(d), 0);
    expect(sum(sizes)).toBeCloseTo(1, 12);
    expect(sum(sizes.filter((d) => d > 0))).toBeCloseTo(0.62, 12);
  });

  it('is of 2 to 21 days and falls by 0.78 a day', () => {
    for (const d of [0, 1, -1, 22, -22]) expect(fewDays(d)).toBe(0);
    for (let d = 3; d <= 21; d++) {
      expect(fewDays(d) / fewDays(d - 1)).toBeCloseTo(0.78, 12);
      expect(fewDays(-d) / fewDays(1 - d)).toBeCloseTo(0.78, 12);
    }
  });
});

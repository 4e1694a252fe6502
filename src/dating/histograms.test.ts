import { describe, expect, it } from 'vitest';
import { civilOf, DATE_PROPERTIES, dayOf } from '../evidence/index.ts';
import {
  BINS,
  binOf,
  binWidths,
  histOf,
  histPrior,
  signedBin,
  unlistedMass,
} from './histograms.ts';

const yearOf = (day: number) => civilOf(day).year;
const VALUE = dayOf(1999, 3, 5);

describe('signed log2 bins', () => {
  it('are as wide as the days that fall in them', () => {
    const counts = new Float64Array(BINS);
    for (let delta = -8191; delta <= 8191; delta++) counts[signedBin(delta)]!++;
    const widths = binWidths(histOf('announced'));
    // The outermost bins are open; 8191 days fill them to the edge but for the last.
    for (const bin of [0, 1, 2, 3, 7, 13, 15, 16, 21, 27]) expect(counts[bin]).toBe(widths[bin]);
  });

  it('ascend with the distance and tell before from after', () => {
    for (let d = 2; d < 9000; d++) {
      expect(signedBin(d) - signedBin(d - 1)).toBeGreaterThanOrEqual(0);
      expect(signedBin(d)).toBeLessThanOrEqual(14);
      expect(signedBin(-d)).toBe(signedBin(d) + 14);
    }
  });
});

describe('the bin of a day', () => {
  it.each(DATE_PROPERTIES)('of %s is one of the table, with room for it', (property) => {
    const widths = binWidths(histOf(property));
    for (const [lo, hi] of [
      [VALUE, VALUE],
      [VALUE, VALUE + 30],
    ] as const) {
      for (let day = VALUE - 9000; day <= VALUE + 9000; day += 13) {
        const bin = binOf(property, lo, hi, day, yearOf);
        expect(Number.isInteger(bin) && bin >= 0 && bin < BINS).toBe(true);
        expect(widths[bin]).toBeGreaterThan(0);
      }
    }
  });

  it.each(DATE_PROPERTIES.filter((p) => p !== 'label-year' && p !== 'copyright-year'))(
    'of %s is found for a value that is open on one side',
    (property) => {
      for (const [lo, hi] of [
        [Number.NEGATIVE_INFINITY, VALUE],
        [VALUE, Number.POSITIVE_INFINITY],
      ] as const) {
        const bin = binOf(property, lo, hi, VALUE + 40, yearOf);
        expect(Number.isInteger(bin) && bin >= 0 && bin < BINS).toBe(true);
      }
    },
  );

  it('is 0 within the stated days, and the same so far before and after the span', () => {
    const of = (day: number) => binOf('on-sale', VALUE, VALUE + 30, day, yearOf);
    for (const day of [VALUE, VALUE + 11, VALUE + 30]) expect(of(day)).toBe(0);
    expect(of(VALUE + 35)).toBe(signedBin(-5));
    expect(of(VALUE - 5)).toBe(signedBin(5));
  });

  it('of a cover is a week of its lead', () => {
    const of = (lead: number) => binOf('cover-date', VALUE, VALUE, VALUE - lead, yearOf);
    expect(of(13) - of(0)).toBe(1);
    expect(of(14) - of(0)).toBe(2);
    expect(of(5000)).toBe(of(-5000));
  });

  it('of a label is the year that it is ahead by', () => {
    const of = (year: number) =>
      binOf('label-year', dayOf(year, 1, 1), dayOf(year, 12, 31), VALUE, yearOf);
    expect([1996, 1997, 1998, 1999, 2000, 2001, 2002].map(of)).toEqual([0, 1, 2, 3, 4, 5, 6]);
    expect([1995, 2003, 1960].map(of)).toEqual([7, 7, 7]);
  });
});

describe('prior counts', () => {
  it.each(DATE_PROPERTIES.filter((p) => p !== 'unlisted-on'))(
    'of %s are positive somewhere',
    (p) => {
      const prior = histPrior(histOf(p));
      expect(prior.every((m) => m >= 0)).toBe(true);
      expect(prior.reduce((a, b) => a + b, 0)).toBeGreaterThan(1);
    },
  );

  // docs/methods/dating.md: noise has no mass at the day itself.
  it('of noise leave out the day itself', () => {
    expect(histPrior(histOf('on-sale'))[0]).toBe(0);
  });

  it('of a source that does not list it: 0.5 up to a month, 0.25 to half a year, then 0.12', () => {
    const mass = unlistedMass();
    const outFor = (days: number) => mass[binOf('unlisted-on', VALUE, VALUE, VALUE - days, yearOf)];
    expect([outFor(1), outFor(31)]).toEqual([0.5, 0.5]);
    expect([outFor(32), outFor(180)]).toEqual([0.25, 0.25]);
    expect([outFor(256), outFor(2000)]).toEqual([0.12, 0.12]);
    expect([outFor(-1), outFor(-2000)]).toEqual([1, 1]);
  });
});

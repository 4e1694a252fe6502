import { readFileSync } from 'node:fs';
import { parse as parseCsv } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DayRange, dayOf, edtfOfRange, isoOf, parseEdtf } from './index.ts';

/**
 * Examples of the Library of Congress specification (2019-02-04) and ISO 8601-2:2019; the source is
 * named in checks/fixtures/README.md.
 */
const examples: Record<string, string>[] = parseCsv(
  readFileSync(new URL('../../checks/fixtures/edtf_examples.csv', import.meta.url)),
  { columns: true },
);
const valid = examples.filter((row) => row.level !== 'invalid');
const invalid = examples.filter((row) => row.level === 'invalid');

function rangesOf(text: string): readonly DayRange[] {
  const reading = parseEdtf(text);
  if (!reading.ok) throw new Error(`${text}: expected ${reading.expected}`);
  return reading.date.ranges;
}

function boundOf(day: number): string {
  return Number.isFinite(day) ? isoOf(day) : day < 0 ? '-inf' : '+inf';
}

const run = (text: string) => rangesOf(text).map((r) => `${boundOf(r.first)} ${boundOf(r.last)}`);

describe('parseEdtf against the published examples', () => {
  it('has all of them', () => {
    expect([valid.length, invalid.length]).toEqual([82, 28]);
  });

  it.each(valid.map((row) => [row.edtf, row]))('reads %s', (text, row) => {
    const reading = parseEdtf(text as string);
    expect(reading).toMatchObject({ ok: true, date: { text, level: Number(row.level) } });
    if (!reading.ok) return;
    const { ranges } = reading.date;
    const [lower, upper] = [row.expected_lower, row.expected_upper];
    // An unknown bound is as wide as an open one.
    if (lower !== '') expect(boundOf(ranges[0]!.first)).toBe(lower === 'unknown' ? '-inf' : lower);
    if (upper !== '')
      expect(boundOf(ranges.at(-1)!.last)).toBe(upper === 'unknown' ? '+inf' : upper);
    for (let i = 1; i < ranges.length; i++) {
      expect(ranges[i]!.first).toBeGreaterThan(ranges[i - 1]!.last + 1);
    }
  });

  it.each(invalid.map((row) => [row.edtf, row.meaning]))('refuses “%s”, %s', (text) => {
    const reading = parseEdtf(text as string);
    expect(reading.ok).toBe(false);
    if (!reading.ok) expect(reading.expected).toMatch(/\w{3}/);
  });
});

describe('parseEdtf', () => {
  it.each([
    ['1996-03-04', 'day', 0],
    ['1996-03-XX', 'month', 1],
    ['1996-03', 'month', 0],
    ['1996-XX-XX', 'year', 1],
    ['1996-XX', 'year', 1],
    ['1996', 'year', 0],
    ['199X', 'years', 1],
    ['1996-24', 'season', 1],
    ['1996-03-1X', 'interval', 2],
    ['1996/1998', 'interval', 0],
    ['[1996-03-04,1996-04-03]', 'set', 2],
    ['{1996,1998}', 'lists', 2],
    ['156X-12-25', 'day', 2],
    ['Y12345', 'year', 1],
  ])('%s has form %s at level %d', (text, form, level) => {
    expect(parseEdtf(text)).toMatchObject({ ok: true, date: { form, level } });
  });

  it.each([
    ['1996-03-04', false, false],
    ['1996-03~', true, false],
    ['1996?', false, true],
    ['1996%', true, true],
    ['1996-~03-04', true, false],
    ['1996~/1998?', true, true],
    ['[1996~,1998]', true, false],
  ])('%s: approximate %s, uncertain %s', (text, approximate, uncertain) => {
    expect(parseEdtf(text)).toMatchObject({ ok: true, date: { approximate, uncertain } });
  });

  it('keeps the days of a set apart and joins neighbours', () => {
    expect(run('[1996-03-04,1996-04-03]')).toEqual([
      '1996-03-04 1996-03-04',
      '1996-04-03 1996-04-03',
    ]);
    expect(run('[1996-03-05,1996-03-04]')).toEqual(['1996-03-04 1996-03-05']);
  });

  it('takes a winter as either winter that touches the year', () => {
    expect(run('2010-24')).toEqual(['2009-12-01 2010-02-28', '2010-12-01 2011-02-28']);
  });

  it('leaves out days that a month does not have', () => {
    expect(run('1999-XX-31')).toHaveLength(7);
    expect(run('199X-02-29')).toEqual(['1992-02-29 1992-02-29', '1996-02-29 1996-02-29']);
    expect(parseEdtf('1999-02-3X').ok).toBe(false);
  });

  it('gives countless runs as the one that holds them', () => {
    expect(run('XXXX-XX-25')).toEqual(['0000-01-25 9999-12-25']);
  });

  it('says which day there is not', () => {
    expect(parseEdtf('2005-02-29')).toEqual({
      ok: false,
      expected: 'a day that there is: 2005-02 has no day 29',
    });
    expect(parseEdtf('1996-05/1996-04')).toMatchObject({
      expected: 'an interval that ends on or after its start',
    });
  });

  it.each([
    '[]',
    '[..]',
    '/',
    '../',
    '?1996?',
    'Y99999999999999',
    '1950S9',
    '1996-24-01',
    'Y1E9999',
  ])('refuses %s', (text) => expect(parseEdtf(text).ok).toBe(false));

  it('answers any text', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[\dXYES.,/[\]{}?~%T:-]{0,24}$/), (text) => {
        const reading = parseEdtf(text);
        if (!reading.ok) return reading.expected.length > 0;
        return reading.date.ranges.every((r) => r.first <= r.last);
      }),
    );
  });
});

describe('edtfOfRange', () => {
  const day = fc.integer({ min: dayOf(0, 1, 1), max: dayOf(9999, 12, 31) });

  it.each([
    ['1996-03-04', '1996-03-04', '1996-03-04'],
    ['1996-02-01', '1996-02-29', '1996-02'],
    ['1996-02-01', '1996-02-28', '1996-02-01/1996-02-28'],
    ['1996-01-01', '1996-12-31', '1996'],
    ['1996-01-01', '1998-12-31', '1996/1998'],
    ['1996-01-01', '1996-03-31', '1996-01/1996-03'],
  ])('%s to %s is %s', (from, to, text) => {
    expect(edtfOfRange(rangesOf(from)[0]!.first, rangesOf(to)[0]!.last)).toBe(text);
  });

  it('leaves open what is infinite', () => {
    expect(edtfOfRange(dayOf(1996, 1, 1), Infinity)).toBe('1996/..');
    expect(edtfOfRange(-Infinity, dayOf(1996, 3, 31))).toBe('../1996-03');
    expect(edtfOfRange(-Infinity, Infinity)).toBe('../..');
  });

  it('means the very days that it was made of', () => {
    fc.assert(
      fc.property(day, fc.integer({ min: 0, max: 800 }), (first, length) => {
        const last = Math.min(first + length, dayOf(9999, 12, 31));
        expect(rangesOf(edtfOfRange(first, last))).toEqual([{ first, last }]);
      }),
    );
  });

  it('refuses what is no run of days', () => {
    expect(() => edtfOfRange(2, 1)).toThrow(RangeError);
    expect(() => edtfOfRange(0.5, 1)).toThrow(RangeError);
    expect(() => edtfOfRange(0, dayOf(10000, 1, 1))).toThrow(RangeError);
  });
});

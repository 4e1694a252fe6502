import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inMeasure, readValue, sayValue } from './value.ts';
import { editsBetween, keyOf } from './words.ts';

const numberIn = (text: string) => {
  const reading = readValue(text);
  if (!reading.ok || reading.value.is !== 'number') throw new Error(`${text} is no number`);
  return reading.value;
};

describe('a value of a trait', () => {
  it.each([
    ['1.79±0.05 g', 1.79, 0.05, 'mass'],
    ['1790 ± 50 mg', 1.79, 0.05, 'mass'],
    ['2.48 +/- 0.01 in', 62.992, 0.254, 'length'],
    ['6,3±0,05 cm', 63, 0.5, 'length'],
    ['69±1 l/cm', 175.26, 2.54, 'ruling'],
    ['-15±2°', -15, 2, 'angle'],
    ['85±3 gsm', 85, 3, 'gsm'],
  ])('%s', (text, value, tolerance, measure) => {
    const number = numberIn(text);
    // Measured 1e-14, allowed 1e-9: products of decimal fractions.
    expect(Math.abs(number.value - value)).toBeLessThan(1e-9);
    expect(Math.abs((number.tolerance ?? 0) - tolerance)).toBeLessThan(1e-9);
    expect(number.measure).toBe(measure);
  });

  it('measured on a copy has no tolerance, but the rounding of its last place', () => {
    expect(numberIn('1.77 g')).toMatchObject({ value: 1.77, tolerance: null, rounding: 0.005 });
    expect(numberIn('2.5 cm').rounding).toBeCloseTo(0.5, 12);
  });

  it('that is a word or absent stays what it is', () => {
    expect(readValue('tide’s bell')).toEqual({
      ok: true,
      value: { is: 'word', word: 'tide’s bell' },
    });
    expect(readValue(' none ')).toEqual({ ok: true, value: { is: 'none' } });
    expect(readValue('KS-31')).toMatchObject({ ok: true, value: { is: 'word' } });
  });

  it.each(['1.8±0 g', '1.8±-1 g', '1.8±', '± g', '1.8±0.1±0.2 g', '?', '…'])(
    '%s is a fault',
    (text) => {
      expect(readValue(text)).toMatchObject({
        ok: false,
        expected: expect.stringContaining('1.79±0.05 g'),
      });
    },
  );

  it('that is a bare number takes the measure of its trait', () => {
    const reading = readValue('1.77');
    if (!reading.ok) throw new Error(reading.expected);
    expect(inMeasure(reading.value, 'mass')).toMatchObject({
      is: 'number',
      value: 1.77,
      measure: 'mass',
    });
    expect(inMeasure({ is: 'word', word: '31/60' }, 'mass')).toEqual({ is: 'word', word: '31/60' });
  });

  it('is said in its own unit', () => {
    expect(sayValue(numberIn('6.3±0.05 cm'))).toBe('63±0.5\u00a0mm');
    expect(sayValue({ is: 'word', word: 'pale' })).toBe('pale');
  });
});

describe('words', () => {
  it('are compared without case, accents, quotes and dashes', () => {
    expect(keyOf('  Tide’s—BELL ')).toBe(keyOf("tide's bell"));
    expect(keyOf('Maré')).toBe('mare');
    expect(keyOf('밀물종 토끼')).toBe('밀물종 토끼');
    expect(keyOf('★')).not.toBe('');
  });

  it.each([
    // Worked by hand in the manner of `damerau:1964`: a swap of neighbours is one edit.
    ['bell', 'bell', 0],
    ['bell', 'ball', 1],
    ['bell', 'blel', 1],
    ['bell', 'bel', 1],
    ['ca', 'abc', 3],
    ['', 'abc', 3],
  ])('%s and %s are %i edits apart', (one, other, edits) => {
    expect(editsBetween(one, other)).toBe(edits);
  });

  it('are as far from each other either way, and never farther than the longer is long', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 12 }), fc.string({ maxLength: 12 }), (one, other) => {
        const edits = editsBetween(one, other);
        expect(editsBetween(other, one)).toBe(edits);
        expect(edits).toBeLessThanOrEqual(Math.max([...one].length, [...other].length));
      }),
      { seed: 3 },
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keyOf } from './normal.ts';

describe('values that are the same', () => {
  it.each([
    ['Foil', ' FOIL '],
    ['１４', '14'],
    ['matt  foil', 'Matt\u00a0Foil'],
    ['Ärger', 'a\u0308rger'],
    ['ﬁrst', 'First'],
  ])('%j and %j', (a, b) => expect(keyOf(a)).toBe(keyOf(b)));

  it('does not take one number for another', () => {
    expect(keyOf('14')).not.toBe(keyOf('014'));
    expect(keyOf('none')).not.toBe(keyOf(''));
  });

  it('is stable', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme' }), (s) => keyOf(keyOf(s)) === keyOf(s)));
  });
});

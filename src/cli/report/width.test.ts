import { describe, expect, it } from 'vitest';
import { padded, widthOf, wrapped } from './width.ts';

// Widths by Unicode Standard Annex 11: Hangul, kana and ideographs are wide, marks take nothing.
describe('widthOf', () => {
  it.each([
    ['foil', 4],
    ['파도', 4],
    ['きり雨', 6],
    ['霧', 2],
    ['Ｎｏ．', 6],
    ['ﾊﾝｶｸ', 4],
    ['é', 1],
    ['e\u0301', 1],
    ['Käki', 4],
    ['A\u200Bb', 2],
    ['', 0],
  ])('%s takes %d columns', (text, width) => {
    expect(widthOf(text)).toBe(width);
  });
});

describe('padded', () => {
  it('fills up to the width that is seen', () => {
    expect(padded('파도', 6)).toBe('파도  ');
    expect(padded('파도', 6, 'right')).toBe('  파도');
    expect(padded('longer', 3)).toBe('longer');
  });
});

describe('wrapped', () => {
  it('breaks between words', () => {
    expect(wrapped('one two three', 7)).toEqual(['one two', 'three']);
  });

  it('breaks a word that is too long, and never a wide letter', () => {
    expect(wrapped('파도소리', 5)).toEqual(['파도', '소리']);
    expect(wrapped('a abcdefgh', 4)).toEqual(['a', 'abcd', 'efgh']);
  });

  it('keeps a number and its per cent together', () => {
    expect(wrapped('right 12 %', 8)).toEqual(['right', '12 %']);
  });

  it('gives one empty line for nothing', () => {
    expect(wrapped('', 5)).toEqual(['']);
  });
});

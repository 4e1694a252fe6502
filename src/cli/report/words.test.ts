import { describe, expect, it } from 'vitest';
import { counted, dateInWords, dayInWords, percent, runInWords } from './words.ts';

describe('days in words', () => {
  it.each([
    ['1996-03-04', '1996-03-04', '4 Mar 1996'],
    ['1996-03-04', '1996-03-09', '4 – 9 Mar 1996'],
    ['1996-03-28', '1996-04-03', '28 Mar – 3 Apr 1996'],
    ['1996-12-28', '1997-01-03', '28 Dec 1996 – 3 Jan 1997'],
    ['1996-02-01', '1996-02-29', 'Feb 1996'],
    ['1997-02-01', '1997-02-28', 'Feb 1997'],
    ['1996-12-01', '1996-12-31', 'Dec 1996'],
    ['1996-02-01', '1996-02-28', '1 – 28 Feb 1996'],
    ['1996-01-01', '1996-12-31', '1 Jan – 31 Dec 1996'],
  ])('%s to %s is %s', (first, last, words) => {
    expect(runInWords(first, last)).toBe(words);
  });

  it('writes one day', () => {
    expect(dayInWords('1999-11-30')).toBe('30 Nov 1999');
  });
});

describe('dateInWords', () => {
  it.each([
    ['1997-05-16', '16 May 1997'],
    ['1999-10', 'Oct 1999'],
    ['1999', '1999'],
    ['[1998-03-04,1998-04-03]', '4 Mar 1998 or 3 Apr 1998'],
    ['1999-21', '1999-21'],
    ['1999-10~', 'about Oct 1999'],
    ['1999%', 'about 1999?'],
    ['[1998-03-04?,1998-04-03?]', '4 Mar 1998? or 3 Apr 1998?'],
    ['1996-03/1996-05', '1996-03/1996-05'],
    ['[..1996-03-04]', '[..1996-03-04]'],
  ])('%s is %s', (edtf, words) => {
    expect(dateInWords(edtf)).toBe(words);
  });
});

describe('percent', () => {
  it.each([
    [1, '>99 %'],
    [0.9999, '>99 %'],
    [0.994, '99 %'],
    [0.5, '50 %'],
    [0.0049, '<1 %'],
    [0, '<1 %'],
  ])('%d is %s', (p, words) => {
    expect(percent(p)).toBe(words);
  });
});

it('counts in words', () => {
  expect([counted(1, 'slip'), counted(0, 'slip')]).toEqual(['1 slip', '0 slips']);
});

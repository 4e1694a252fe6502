import { describe, expect, it } from 'vitest';
import { dayFrom } from './day.ts';
import { sayDay, sayEdtf, sayList, sayRun, sayWhen } from './spoken.ts';

describe('days and runs of days as a person says them', () => {
  it.each([
    ['1996-03-04', '1996-03-04', '4 Mar 1996', 'on 4 March 1996'],
    ['1996-05-03', '1996-05-20', '3 to 20 May 1996', 'between 3 and 20 May 1996'],
    ['1996-03-28', '1996-04-03', '28 Mar to 3 Apr 1996', 'between 28 March and 3 April 1996'],
    [
      '1996-12-28',
      '1997-01-03',
      '28 Dec 1996 to 3 Jan 1997',
      'between 28 December 1996 and 3 January 1997',
    ],
    ['1996-02-01', '1996-02-29', 'Feb 1996', 'in February 1996'],
    ['1997-02-01', '1997-02-28', 'Feb 1997', 'in February 1997'],
    ['1996-02-01', '1996-02-28', '1 to 28 Feb 1996', 'between 1 and 28 February 1996'],
    ['1996-01-01', '1996-03-31', 'Jan to Mar 1996', 'between January and March 1996'],
    ['1996-11-01', '1997-02-28', 'Nov 1996 to Feb 1997', 'between November 1996 and February 1997'],
    ['1996-01-01', '1996-12-31', '1996', 'in 1996'],
    ['1996-01-01', '1998-12-31', '1996 to 1998', 'between 1996 and 1998'],
  ])('%s to %s is %s', (first, last, run, when) => {
    expect(sayRun(dayFrom(first), dayFrom(last), true)).toBe(run);
    expect(sayWhen(dayFrom(first), dayFrom(last))).toBe(when);
  });

  it('say a month in full or short, and refuse what is no day', () => {
    expect(sayDay(dayFrom('2003-11-19'))).toBe('19 November 2003');
    expect(sayDay(dayFrom('2003-11-19'), true)).toBe('19 Nov 2003');
    expect(() => dayFrom('2003-11')).toThrow(RangeError);
  });
});

describe('sayEdtf', () => {
  it.each([
    ['1996-05-03', '3 May 1996'],
    ['1996-05', 'May 1996'],
    ['1996', '1996'],
    ['1993-09~', 'about September 1993'],
    ['1993?', 'perhaps 1993'],
    ['1999-10%', 'perhaps about October 1999'],
    ['1996-05-XX', 'May 1996'],
    ['2002-05-0X', '1 to 9 May 2002'],
    ['199X', 'the 1990s'],
    ['19XX', 'the years 1900 to 1999'],
    ['1996-21', 'spring 1996'],
    ['../1996-05', 'until May 1996'],
    ['1996/..', 'from 1996 on'],
    ['1994-03/1994-05-02', 'between 1 March and 2 May 1994'],
    ['2007-06/2007-08', 'between June and August 2007'],
    ['1994-03~/1994-05', 'between about March 1994 and May 1994'],
    ['[1996-03-04,1996-04-03]', '4 March 1996 or 3 April 1996'],
    ['[1995-05-08..1995-05-14]', '8 to 14 May 1995'],
    ['[..1996-03-04]', 'until 4 March 1996'],
    ['1996-13', '1996-13'],
    ['soon', 'soon'],
  ])('%s means %s', (value, words) => {
    expect(sayEdtf(value)).toBe(words);
  });

  it('shortens months where room is scarce', () => {
    expect(['1999-10~', '[1998-03-04?,1998-04-03?]'].map((text) => sayEdtf(text, true))).toEqual([
      'about Oct 1999',
      'perhaps 4 Mar 1998 or perhaps 3 Apr 1998',
    ]);
  });
});

it('sayList joins as in a sentence', () => {
  expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map((list) => sayList(list, 'or'))).toEqual([
    '',
    'a',
    'a or b',
    'a, b or c',
  ]);
});

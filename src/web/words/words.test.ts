import { describe, expect, it } from 'vitest';
import {
  count,
  idOf,
  outOfHundred,
  sayBits,
  sayDated,
  sayElse,
  sayHeld,
  sayP,
  sayStated,
  sayWindow,
  stretches,
} from './index.ts';

describe('windows as a person says them', () => {
  it.each([
    ['1994-04-03', '1994-04-03', '3 Apr 1994'],
    ['1994-04-03', '1994-04-17', '3 to 17 Apr 1994'],
    ['1994-04-20', '1994-05-03', '20 Apr to 3 May 1994'],
    ['1993-12-20', '1994-01-03', '20 Dec 1993 to 3 Jan 1994'],
    ['1994-04-01', '1994-07-31', 'Apr to Jul 1994'],
    ['1997-01-01', '1997-12-31', '1997'],
    ['1993-11-05', '1994-06-03', 'Nov 1993 to Jun 1994'],
    ['1998-01-01', '2007-03-16', '1998 to 2007'],
  ])('%s to %s is %s', (from, to, words) => {
    expect(sayWindow(from, to)).toBe(words);
  });
});

describe('numbers', () => {
  it('never claim a certainty that they do not have', () => {
    expect([1, 0.9999, 0.97, 0.004, 0].map(sayP)).toEqual([
      '> 0.99',
      '> 0.99',
      '0.97',
      '< 0.01',
      '< 0.01',
    ]);
    expect(outOfHundred(0.9999)).toBe('more than 99 of 100');
  });

  it('agree with their nouns', () => {
    expect([count(1, 'claim'), count(2, 'claim')]).toEqual(['1 claim', '2 claims']);
    expect([sayBits(0.31), sayBits(2.3)]).toEqual(['0.31 bit', '2.30 bits']);
  });
});

describe('ids', () => {
  it('are made of any words, never one that is taken', () => {
    expect(idOf('Pudełko – Está!', new Set())).toBe('pude-ko-esta');
    expect(idOf('같은', new Set(['x']))).toBe('x-2');
    expect(idOf('__proto__', new Set())).toBe('proto');
  });
});

describe('why', () => {
  it('marks the words between asterisks and leaves a lone asterisk alone', () => {
    expect(stretches('It says *so*, 5 * 3.')).toEqual([
      { text: 'It says ', marked: false },
      { text: 'so', marked: true },
      { text: ', 5 * 3.', marked: false },
    ]);
  });
});

describe('the answer for a printing', () => {
  const dated = {
    id: 'a',
    best: '1996-05-03',
    edtf: '1996-05-03',
    p_best: 0.8,
    interval95: ['1996-05-01', '1996-05-20'] as [string, string],
    p_interval: 0.96,
    days: [
      ['1996-05-03', 0.8],
      ['1996-05-10', 0.2],
    ] as [string, number][],
    modes: [],
    together: [],
    claims: [],
    why: '',
  };

  it('is a day, a window, a bound or nothing, and never a guess', () => {
    expect(sayDated({ ...dated, state: 'day' })).toMatchObject({ main: '3 May 1996', sub: '0.80' });
    expect(sayDated({ ...dated, state: 'window' }).main).toBe('1 to 20 May 1996');
    const bounded = { ...dated, interval95: null, edtf: '../1996-05', state: 'bounded' as const };
    expect(sayDated(bounded)).toMatchObject({ main: 'until May 1996', p: null });
    expect(sayDated({ ...dated, state: 'open' }).main).toBe('not known');
    expect(sayDated(undefined).main).toBe('not dated yet');
  });

  it('names the second likeliest day', () => {
    expect(sayElse({ ...dated, state: 'day' })).toBe('else most likely 10 May 1996 (0.20)');
  });
});

describe('a stated weekday habit', () => {
  it.each([
    [
      { market: 'KR', channel: 'retail', weekdays: 'friday', from: '1999', to: '2003' },
      'Fridays in South Korea, retail, 1999 to 2003',
    ],
    [{ market: 'FI', weekdays: 'Tuesday|friday' }, 'Tuesdays or Fridays in Finland'],
    [{ weekdays: 'friday', from: '1999-04' }, 'Fridays in every market, from April 1999 on'],
    [{ market: 'GB', weekdays: 'friday', to: '2003' }, 'Fridays in United Kingdom, until 2003'],
  ])('%j is %s', (cells, words) => {
    expect(sayStated(cells)).toBe(words);
  });
});

describe('copies held', () => {
  it('are sure where it is known which printing they are', () => {
    expect(sayHeld({ copies: 1, perhaps: 0 })).toBe('you hold a copy');
    expect(sayHeld({ copies: 3, perhaps: 0 })).toBe('you hold 3 copies');
    expect(sayHeld({ copies: 0, perhaps: 1 })).toBe('you may hold a copy');
    expect(sayHeld({ copies: 1, perhaps: 2 })).toBe('you hold a copy, perhaps 3');
  });
});

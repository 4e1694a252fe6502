import { describe, expect, it } from 'vitest';
import { wordsReader } from './listing.ts';
import type { TraitRow } from './types.ts';

const row = (of: string, trait: string, word: string): TraitRow => ({
  ...{ of: [of], trait, value: { is: 'word', word }, sees: 'eye', region: '', publish: true },
});
const read = wordsReader(
  {
    printings: [
      { id: 'gb', language: 'en', number: '31', finish: 'plain', wave: '1', product: 'box' },
      {
        id: 'kr',
        language: 'ko',
        number: 'A7',
        finish: 'holofoil',
        wave: '2',
        printed_name: '밀물종 토끼',
      },
    ],
    counterfeits: [],
    traits: [
      row('gb', 'line 3', 'tide’s bell'),
      row('kr', 'stamp', 'red'),
      row('gb', 'stamp', 'blue'),
    ],
    about: new Map(),
    others: [],
  },
  new Map([['box', 'Starter Box']]),
);
const told = (text: string) =>
  Object.fromEntries(
    read(text, 'listing').map(({ trait, value }) => [trait, value.is === 'word' ? value.word : '']),
  );

describe('a listing’s words', () => {
  it('are read for the words of traits', () => {
    expect(told('KOREAN card A7, 2nd hand, second wave, Holofoil!')).toEqual({
      ...{ language: 'ko', number: 'A7', wave: '2', finish: 'holofoil' },
    });
    expect(told('“Tide’s Bell” from the starter box')).toEqual({
      'line 3': 'tide’s bell',
      product: 'box',
    });
    expect(told('주사위골 부록 밀물종 토끼, 상태 좋음')).toEqual({ printed_name: '밀물종 토끼' });
  });

  it('count where they are short only beside the name of their trait', () => {
    expect(told('red stamp, blue sleeve')).toEqual({ stamp: 'red' });
    expect(told('a red card')).toEqual({});
  });

  it('say nothing where they name two values of one trait', () => {
    expect(told('31 or A7? English or Korean')).toEqual({});
  });
});

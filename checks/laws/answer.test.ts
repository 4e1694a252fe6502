// What every answer promises, whatever the evidence: days that add up, a best day and an interval
// that are what the days say, no number that is none.
import { describe, expect, it } from 'vitest';
import { date } from '../../src/dating/index.ts';
import { simulate } from '../simulator/index.ts';
import { deepFreeze, dossier } from './dossier.ts';
import { unsound } from './sound.ts';

const coarse = dossier({
  printings: ['a', 'b', 'c'],
  sources: ['s', 't'],
  said: [
    ['a', 's', '1999'],
    ['b', 's', '1999-05'],
    ['c', 't', '199X'],
    ['a', 't', '1998/1999'],
    ['c', 's', '1997-21'],
  ],
});
const properties = dossier({
  printings: ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i'],
  sources: ['s'],
  said: [
    ['a', 's', '1999-03-05', 'announced'],
    ['b', 's', '1999-05', 'cover-date'],
    ['c', 's', '1999', 'label-year'],
    ['d', 's', '1999', 'copyright-year'],
    ['e', 's', '1999-03-05', 'printed-on'],
    ['f', 's', '1999-03-05', 'seen-by'],
    ['g', 's', '1999-03-05', 'not-before'],
    ['h', 's', '1999-03-05', 'unlisted-on'],
    ['i', 's', '1999-03-05', 'distributed-until'],
  ],
});
const loose = dossier({
  printings: [
    { id: 'a', product: 'box' },
    { id: 'b', product: 'box', market: 'FI' },
    { id: 'c', product: 'tin' },
    { id: 'd', product: 'bag' },
    'e',
    'f',
    'g',
  ],
  sources: ['s', 't'],
  said: [
    ['box:', 's', '1999-03-05'],
    ['a|c', 't', '1999-03-05'],
    ['c', 's', '1999-06-11/1999-11-06'],
    ['f', 't', '{1999-06-11,1999-11-06}'],
    ['g', 's', '[1999-03-04,1999-04-03]'],
    ['e', 's', '../1999-03-05'],
    ['d', 's', '1999-06-11?'],
    ['b', 't', '1999-03~'],
  ],
});

describe.each([
  ['twelve printings', simulate({ seed: 31, printings: 12, claims: 80, difficulty: 'medium' })],
  ['only coarse claims', { evidence: coarse }],
  ['every property once', { evidence: properties }],
  ['claims about one of several, products, sets and open intervals', { evidence: loose }],
])('%s', (_, { evidence }) => {
  it('gets a sound answer', () => {
    expect(unsound(date(deepFreeze(evidence), { effort: 'first' }), evidence)).toEqual([]);
  });
});

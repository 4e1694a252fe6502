import { describe, expect, it } from 'vitest';
import type { Amount, Measure } from '../grade/types.ts';
import { compareWithWords } from './described.ts';
import { findWords } from './find-words.ts';
import { USUAL_WORDS } from './words.ts';

const found = (text: string) => findWords(text, USUAL_WORDS).map(({ words }) => words);
const amount = (measure: Measure, mean: number, sd: number, shown = 1): Amount => ({
  side: 'front',
  measure,
  parts: [{ weight: 1, mean, sd }],
  shown,
});

describe('condition words', () => {
  it.each([
    ['FIRST wave, Near Mint, smoke-free home', ['Near Mint']],
    ['peppermint tin, minted', []],
    ['not mint but near mint', ['near mint']],
    ['no creases, no scratches', ['no creases', 'no scratches']],
    ['極美品です', ['極美品']],
    ['상태 좋음', ['상태 좋음']],
    ['cantos perfeitos, um risquinho leve no verso', ['cantos perfeitos', 'risquinho']],
    ['Ｎｅａｒ ｍｉｎｔ', ['Ｎｅａｒ ｍｉｎｔ']],
  ])('of “%s”', (text, words) => {
    expect(found(text)).toEqual(words);
  });

  it('are placed where they stand', () => {
    const text = 'İ 😀 near mint.';
    const [phrase] = findWords(text, USUAL_WORDS);
    expect(text.slice(phrase?.from, phrase?.to)).toBe('near mint');
  });
});

describe('a listing beside what was measured', () => {
  it('disagrees, agrees or stays open, and says what could not be seen', () => {
    const amounts = [
      amount('dent', 1.9, 0.1),
      amount('scratch', 3, 1),
      amount('crease', 0, 0, 0.3),
      amount('corner-wear', 0.62, 0.2),
    ];
    const { compared, unseen, silent } = compareWithWords('Near mint.', USUAL_WORDS, amounts);
    const says = Object.fromEntries(compared.map((one) => [one.measure, one.says]));
    expect(says).toEqual({
      dent: 'disagrees',
      scratch: 'agrees',
      crease: 'open',
      'corner-wear': 'open',
    });
    expect(compared[0]).toMatchObject({ words: 'Near mint', from: 0, to: 9, side: 'front' });
    expect(unseen).toContainEqual({ side: 'front', measure: 'crease' });
    expect(unseen).toContainEqual({ side: 'back', measure: 'dent' });
    expect(silent).toBe(false);
  });

  it('says beside a promise what the listing admits', () => {
    const text = 'near mint, one small scratch';
    const { compared } = compareWithWords(text, USUAL_WORDS, [amount('scratch', 40, 2)]);
    expect(compared).toMatchObject([{ says: 'disagrees', named: ['small scratch'] }]);
  });

  it('compares words once that title and text both say', () => {
    const text = 'Near mint hare, foil. Near Mint, sharp corners.';
    const amounts = [amount('corner-wear', 3, 0.1)];
    const { compared } = compareWithWords(text, USUAL_WORDS, amounts);
    expect(compared.map(({ words }) => words)).toEqual(['Near mint', 'sharp corners']);
  });

  it('that promises nothing is silent', () => {
    expect(compareWithWords('A card.', USUAL_WORDS, []).silent).toBe(true);
  });
});

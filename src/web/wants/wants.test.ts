import { describe, expect, it } from 'vitest';
import type { Wanted } from '../../contract/index.ts';
import { draftOf, noWantStep, wantStep, wrongWant } from './draft.ts';

const cells = { printing: 'kr-club', service: '', grade: '', max_price: '280.00', currency: 'EUR' };
const want: Wanted = {
  ...{ row: 2, cells: { ...cells, note: 'With the letter.', mine: 'kept' }, printing: 'kr-club' },
  ...{ service: null, grade: null, most: 280, price: null, pUnder: null },
};

describe('a want as it is typed', () => {
  it('says what is wrong with it', () => {
    const empty = draftOf(undefined, 'EUR');
    expect(wrongWant(empty)).toMatch(/printing/);
    expect(wrongWant({ ...empty, printing: 'a', grade: '9' })).toMatch(/service/);
    expect(wrongWant({ ...empty, printing: 'a', max_price: 'low' })).toMatch(/number/);
    expect(wrongWant({ ...empty, printing: 'a', max_price: '9', currency: '€' })).toMatch(
      /letters/,
    );
    expect(wrongWant({ ...empty, printing: 'a' })).toBe('');
  });

  it('changes its row alone, and keeps columns that it does not know', () => {
    const draft = { ...draftOf(want, 'EUR'), max_price: '250,5' };
    expect(wantStep(draft, want, 'it').changes).toEqual([
      {
        ...{ file: 'desk/wants.csv', op: 'replace', row: 2, before: want.cells },
        after: { ...want.cells, max_price: '250.5' },
      },
    ]);
    expect(noWantStep(want, 'it').changes[0]).toMatchObject({ op: 'remove', before: want.cells });
  });

  it('has no currency without a price', () => {
    const draft = { ...draftOf(undefined, 'EUR'), printing: 'kr-club' };
    expect(wantStep(draft, undefined, 'it').changes[0]?.after).toMatchObject({ currency: '' });
  });
});

import { describe, expect, it } from 'vitest';
import type { ClaimRow, DossierAnswer } from '../../contract/index.ts';
import { patched } from '../wire/patch.ts';
import { again } from './again.ts';
import { addition, draftOf, missing, replacement, withdraw } from './changes.ts';
import { readDate } from './readDate.ts';

const cells = {
  printing: 'a',
  source: 'shop',
  property: 'on-sale',
  value: '1996-05-03',
  colour: 'red',
};
const claim: ClaimRow = {
  printings: ['a'],
  source: 'shop',
  property: 'on-sale',
  value: '1996-05-03',
  row: 2,
  cells,
};
const dossier = {
  version: 1,
  sources: [
    {
      id: 'shop',
      kind: 'store-listing',
      cites: [],
      row: 2,
      cells: { id: 'shop', title: 'The shop' },
    },
  ],
  claims: [claim, { ...claim, row: 3, value: '1996', cells: { ...cells, value: '1996' } }],
} as unknown as DossierAnswer;

describe('a claim in the form', () => {
  const draft = { ...draftOf(undefined, 'a'), source: 'The shop', value: '1996-05-04' };

  it('is added for a known source without making it anew', () => {
    const step = addition(draft, dossier);
    expect(step.label).toBe('Add a claim of The shop');
    expect(step.changes).toEqual([
      {
        file: 'claims.csv',
        op: 'add',
        after: expect.objectContaining({ source: 'shop', printing: 'a' }),
      },
    ]);
  });

  it('brings a new source along', () => {
    const step = addition({ ...draft, source: 'Shop', kind: 'forum' }, dossier);
    expect(step.changes.map(({ file, after }) => [file, after?.id ?? after?.source])).toEqual([
      ['sources.csv', 'shop-2'],
      ['claims.csv', 'shop-2'],
    ]);
  });

  it('keeps the columns that it does not know, and sends the row as it was seen', () => {
    const step = replacement({ ...draftOf(claim, ''), value: '1996-05-05' }, claim, dossier);
    expect(step.changes[0]).toMatchObject({
      op: 'replace',
      row: 2,
      before: cells,
      after: { colour: 'red', value: '1996-05-05' },
    });
    expect(withdraw(claim, 'The shop').changes[0]).toMatchObject({ op: 'remove', before: cells });
  });

  it('says what is missing', () => {
    expect(missing(draftOf(undefined, 'a'))).toBe('Say who states it.');
    expect(missing({ ...draft, value: ' ' })).toBe('Say what it states.');
    expect(missing({ ...draft, printings: [] })).toBe('Say of which printing.');
    expect(missing(draft)).toBe('');
  });

  it('says what a date means while it is typed, and what is wrong with it', () => {
    expect(readDate('1993-09~')).toEqual({ says: 'It means about September 1993.', wrong: '' });
    expect(readDate('1993-13').wrong).toMatch(/^The date is not one: /);
  });
});

describe('the page before the server has answered', () => {
  it('shows an added, a changed and a withdrawn claim', () => {
    const step = addition({ ...draftOf(undefined, 'a'), source: 'Shop', value: '1997' }, dossier);
    const added = patched(dossier, step.changes);
    expect(added.claims.at(-1)).toMatchObject({ row: 4, source: 'shop-2', value: '1997' });
    expect(added.sources).toHaveLength(2);
    const gone = patched(dossier, withdraw(claim, '').changes);
    expect(gone.claims.map(({ row, value }) => [row, value])).toEqual([[2, '1996']]);
    expect(dossier.claims).toHaveLength(2);
  });
});

describe('a step that met an edit', () => {
  it('is made again from what the row holds now, or added where it is gone', () => {
    const step = replacement({ ...draftOf(claim, ''), value: '1999' }, claim, dossier);
    const change = step.changes[0]!;
    const now = { ...cells, value: '1998' };
    const met = { change, reason: 'gone' as const, message: '' };
    expect(again(step, [{ ...met, now }]).changes[0]).toMatchObject({ op: 'replace', before: now });
    expect(again(step, [met]).changes[0]).toMatchObject({ op: 'add', after: { value: '1999' } });
    expect(
      again(withdraw(claim, ''), [{ ...met, change: withdraw(claim, '').changes[0]! }]).changes,
    ).toEqual([]);
  });
});

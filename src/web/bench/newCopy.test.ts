import { expect, it } from 'vitest';
import { freeId, rolesOf, stepFor, wrongWith } from './newCopy.ts';

it.each([
  [
    ['IMG_1.jpg', 'IMG_2.jpg'],
    ['front', 'back'],
  ],
  [
    ['card-back.png', 'IMG_7.heic'],
    ['back', 'front'],
  ],
  [
    ['a.jpg', 'b.jpg', 'c.jpg'],
    ['front', 'back', 'front.raking'],
  ],
  [
    ['a.jpg', 'b.jpg', 'c.jpg', 'd.jpg'],
    ['front', 'back', 'front.light-1', 'front.light-2'],
  ],
  [
    ['front.light-2.jpg', 'front.light-1.jpg', 'front.jpg', 'back.raking.jpg', 'listing.jpg'],
    ['front.light-2', 'front.light-1', 'front', 'back.raking', 'listing'],
  ],
  [
    ['front.jpg', 'front-2.jpg'],
    ['front', 'back'],
  ],
])('of the pictures %j it takes the roles %j', (names, roles) => {
  expect(rolesOf(names)).toEqual(roles);
});

it('gives no role twice, nor one that is taken', () => {
  expect(rolesOf(['a.jpg'], ['front', 'back'])).toEqual(['front.raking']);
  const many = rolesOf(Array.from({ length: 14 }, (_, k) => `${k}.jpg`));
  expect(many.slice(10)).toEqual(['', '', '', '']);
  expect(new Set(many.slice(0, 10)).size).toBe(10);
});

const DRAFT = {
  ...{ id: 'copy-2', printing: '', status: 'arrived', listing: ' near mint\n' },
  ...{ days: '', from: '' },
};

it('makes the row of the copy, and its deadline where one is given', () => {
  expect(freeId(['copy-1', 'copy-3'])).toBe('copy-2');
  expect(stepFor(DRAFT).changes).toEqual([
    {
      file: 'desk/copies.csv',
      op: 'add',
      after: { id: 'copy-2', printing: '', status: 'arrived', listing: 'near mint' },
    },
  ]);
  const { changes } = stepFor({ ...DRAFT, days: '14', from: '2026-06-18' });
  expect(changes[1]).toMatchObject({
    file: 'desk/deadlines.csv',
    after: { copy: 'copy-2', against: 'seller', days: '14', starts_on: '2026-06-18' },
  });
});

it.each([
  [{}, ''],
  [{ id: 'Copy 2' }, 'An id is'],
  [{ id: 'hare-1' }, 'already'],
  [{ days: 'two' }, 'whole number'],
  [{ days: '14' }, 'from which day'],
  [{ days: '14', from: '2026-06-18' }, ''],
])('of %j it says %j', (change, words) => {
  const said = wrongWith({ ...DRAFT, ...change }, ['hare-1']);
  expect(words === '' ? said : said.includes(words)).toBe(words === '' ? '' : true);
});

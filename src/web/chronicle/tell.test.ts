import { expect, it } from 'vitest';
import type { Book } from '../view/index.ts';
import { addressOf, filled, groupsBy, pageTitle, placeOf } from './tell.ts';

const book = {
  printings: new Map([['gb-first', {}]]),
  sources: new Map([['a/b', {}]]),
} as unknown as Book;

it('leads to the screen on which a lack is mended, where there is one', () => {
  expect(addressOf('picture', 'gb-first', book)).toBe('/printings/gb-first');
  expect(addressOf('locator', 'a/b', book)).toBe('/sources/a%2Fb');
  expect(addressOf('price', 'gb-first', book)).toBe('/prices/gb-first');
  expect(addressOf('count', 'ostrel', book)).toBe('/population');
  expect(addressOf('story', 'index', book)).toBeNull();
  expect(addressOf('answer', 'c-1', book)).toBeNull();
});

it('fills the empty cell and no other', () => {
  const cells = { id: 'list', citation: '' };
  const entry = { of: 'list', found: '', file: 'sources.csv', row: 4, column: 'citation', cells };
  expect(filled(entry, ' A list, 1999 ')?.changes).toEqual([
    {
      ...{ file: 'sources.csv', op: 'replace', row: 4, before: cells },
      after: { id: 'list', citation: 'A list, 1999' },
    },
  ]);
  expect(filled({ ...entry, column: null }, 'x')).toBeNull();
});

it('puts like things together in the order in which they come', () => {
  expect(groupsBy(['name b', 'price', 'name a'], (word) => word.slice(0, 4))).toEqual([
    ['name', ['name b', 'name a']],
    ['pric', ['price']],
  ]);
});

it('says where something stands and what a page is', () => {
  expect(placeOf({ file: 'story/a.md', row: 3, column: null })).toBe('story/a.md, line 3');
  expect(placeOf({ file: 'sales.csv', row: null, column: 'price' })).toBe('sales.csv, price');
  expect(['index.html', 'corrections.html'].map(pageTitle)).toEqual(['Overview', 'Corrections']);
});

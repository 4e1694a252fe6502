import { describe, expect, it } from 'vitest';
import { type DossierTable, leavingOf, staysIn, withoutStays } from '../../src/chronicle/index.ts';

/** A table from a header and rows with `;` between cells; every column is one of words. */
function table(file: string, header: string, ...rows: string[]): DossierTable {
  const columns = header.split(';');
  return {
    file,
    columns,
    words: new Set(columns),
    rows: rows.map((row, at) => ({
      row: at + 2,
      cells: Object.fromEntries(row.split(';').map((cell, i) => [columns[i], cell])),
    })),
  };
}

const tables = [
  table('sources.csv', 'id;title;cites;publish', 'a;A list;b|c;yes', 'b;Letters;;no', 'c;Other;;'),
  table('claims.csv', 'source;value;note', 'a;1994;', 'b;1995;Told by Reed Sallow.'),
  table(
    'traits.csv',
    'of;trait;value;publish',
    'x;glow;dull;no',
    'y;Glow;bright;yes',
    'x;foil;none;',
  ),
  table('sales.csv', 'printing;certificate;price', 'x;40697439;33.50'),
  table('sightings.csv', 'printing;certificate;where', 'x;40697439;a film', 'x;;slab 271834 again'),
  table('searches.csv', 'where;cost', 'library;12.00 GBP'),
  table(
    'pictures.csv',
    'file;of;role;rights;publish;by',
    'pictures/1.jpg;x;reference;own;yes;Reed Marl',
    'pictures/2.jpg;x;reference;;yes;',
    'pictures/3.jpg;x;reference;own;no;',
    'desk/photos/k/front.jpg;k;arrival;own;yes;owner',
    'desk/photos/k/back.jpg;k;arrival;own;;owner',
    'pictures/4.jpg;b;illustration;own;yes;',
  ),
  table(
    'corrections.csv',
    'id;from;credit;says',
    'c1;Ann Fell;Ann Fell;Wrong.',
    'c2;Bo Tarn;none;Call me on 0113 496 0123.',
  ),
  table('desk/copies.csv', 'id;certificate', 'k;271834'),
  table('desk/parcels.csv', 'id;seller', 'p;millrace-cards'),
];
const texts = new Map([
  [
    'story/index.md',
    '# X\n\nBought from millrace-cards for 12.00 GBP; the glow is dull.\nSee [it](source:b), bo tarn says.',
  ],
]);
const ground = { tables, documents: ['desk/charges.json'], texts, marks: [] };
const hidden = leavingOf(ground, { prices: false });
const place = (file: string, what: string, leaves: boolean, among = hidden) =>
  among.flatMap((one) =>
    one.file === file && one.what === what && one.leaves === leaves ? [one.row] : [],
  );

describe('what leaves', () => {
  it('is told of texts by line: names, prices, traits and sources that stay', () => {
    expect(place('story/index.md', 'name', true)).toEqual([3, 4]);
    expect(place('story/index.md', 'price', true)).toEqual([3]);
    expect(place('story/index.md', 'trait', true)).toEqual([3]);
    expect(place('story/index.md', 'source', true)).toEqual([4]);
  });

  it('is told of cells, with row and column', () => {
    expect(hidden).toContainEqual(
      expect.objectContaining({
        file: 'corrections.csv',
        row: 3,
        column: 'says',
        what: 'telephone',
        found: '0113 496 0123',
        leaves: true,
      }),
    );
    expect(place('sightings.csv', 'certificate', true)).toEqual([3]);
  });

  it('names pictures with rights, and says which show a copy of the desk', () => {
    expect(place('pictures.csv', 'picture', true)).toEqual([2]);
    expect(place('pictures.csv', 'holding', true)).toEqual([5]);
    expect(place('pictures.csv', 'name', true)).toEqual([2]);
  });

  it('counts prices only where they are shown', () => {
    expect(place('sales.csv', 'price', true)).toEqual([]);
    const open = leavingOf(ground, { prices: true });
    expect(place('sales.csv', 'price', true, open)).toEqual([null]);
    expect(place('story/index.md', 'price', true, open)).toEqual([]);
    expect(place('sales.csv', 'certificate', false, open)).toEqual([null]);
  });
});

describe('what stays', () => {
  it('is the desk, whole', () => {
    for (const file of ['desk/copies.csv', 'desk/parcels.csv', 'desk/charges.json'])
      expect(place(file, 'holding', false)).toEqual([null]);
  });

  it('is a trait on every row once one marks it', () => {
    expect(place('traits.csv', 'trait', false)).toEqual([2, 3]);
  });

  it('is a source with its claims, its pictures and what cites it', () => {
    expect(place('sources.csv', 'source', false)).toEqual([2, 3]);
    expect(place('claims.csv', 'source', false)).toEqual([3]);
    expect(place('pictures.csv', 'picture', false)).toEqual([3, 4, 6, 7]);
  });

  it('is not in the tables that are left', () => {
    const left = withoutStays(tables, staysIn(ground, { prices: false }));
    const file = (name: string) =>
      left.find((one) => one.file === name)?.rows.map((row) => row.cells);
    expect(left.map((one) => one.file).filter((name) => /^desk|^sales/.test(name))).toEqual([]);
    expect(file('sources.csv')?.map(({ id, cites }) => [id, cites])).toEqual([
      ['a', 'c'],
      ['c', ''],
    ]);
    expect(file('traits.csv')?.map(({ trait }) => trait)).toEqual(['foil']);
    expect(file('searches.csv')).toEqual([{ where: 'library', cost: '' }]);
    expect(file('corrections.csv')?.map((row) => row['from'])).toEqual(['', '']);
    expect(JSON.stringify(left)).not.toMatch(/Reed Sallow|40697439|Bo Tarn/);
  });
});

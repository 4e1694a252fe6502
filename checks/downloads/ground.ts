import {
  type DossierTable,
  type FrozenClaim,
  historyOf,
  type Revision,
  type ToldRevision,
} from '../../src/chronicle/index.ts';

const claim = (source: string, value: string, home = false): FrozenClaim => ({
  key: `${source}.on-sale.x`,
  source,
  property: 'on-sale',
  about: 'x',
  value,
  locator: 'p. 1',
  pRight: null,
  home,
});

function revision(number: number, best: string, claims: readonly FrozenClaim[]): Revision {
  const rests = { unit: null, asOf: null, claims: claims.map(({ key }) => key), printing: 'x' };
  const value = { best, edtf: best, p: 0.5 + number / 10, interval: null, pInterval: 1 };
  return {
    format: 1,
    number,
    day: `2026-0${number}-15`,
    sha512: `${number}0123456789abcdef`.repeat(8).slice(0, 128),
    files: { 'claims.csv': String(number) },
    madeWith: 'Printlore 0.1.0',
    figures: [{ ...rests, name: 'release.x', value: { is: 'release', state: 'day', ...value } }],
    claims,
  };
}

const REVISIONS: readonly Revision[] = [
  revision(1, '1995-05-01', [claim('a', '1995-05-01')]),
  revision(2, '1995-05-13', [
    claim('a', '1995-05-13'),
    claim('b & <c>', '1995-05-13'),
    claim('hidden', '1995-05-13', true),
  ]),
];

/** Two revisions: a claim is added, one misread is mended, and one stays at home. */
export const HISTORY: readonly ToldRevision[] = historyOf(
  { sources: new Set(['a', 'b & <c>']), prices: false },
  REVISIONS,
);

/** A title with the signs that markup uses, a direction mark and a picture sign. */
export const TITLE = 'Hare & “Bell” <1> \u200f🐇';

const table = (file: string, cells: readonly Record<string, string>[]): DossierTable => ({
  file,
  columns: Object.keys(cells[0] ?? {}),
  words: new Set(),
  rows: cells.map((one, at) => ({ row: at + 2, cells: one })),
});

/** Cells with commas, quotation marks and line breaks. */
export const TABLES: readonly DossierTable[] = [
  table('claims.csv', [
    { printing: 'x', source: 'a', property: 'on-sale', value: '1995-05-01', quote: 'May “95”' },
    {
      printing: 'x',
      source: 'n',
      property: 'on-sale',
      value: '1995',
      quote: 'one, "two"\r\nthree',
    },
  ]),
  table('sources.csv', [
    { id: 'a', title: 'A page', kind: 'forum', url: 'https://a.example/1', accessed: '2026-02-11' },
    { id: 'n', title: '', kind: 'correspondence', url: '', accessed: '2026' },
  ]),
  table('traits.csv', [{ of: 'x', trait: 'stamp', value: 'red', region: '6.3 8.8 12.6 17.6' }]),
];

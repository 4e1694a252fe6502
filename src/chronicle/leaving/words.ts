import { harmfulIn } from './patterns/harmful.ts';
import { cellOf, creditOf, heldSources, heldTraits, rowsIn } from './stays.ts';
import type { Harm, LeavingGround, Shown } from './types.ts';

/** Something in a text that could harm. */
export interface Told {
  readonly what: Harm;
  readonly found: string;
  readonly why: string;
}

/** Finds in a text what could harm. */
export type WordsReader = (text: string) => readonly Told[];

/** Shorter names are found in too many words that are none. */
const SHORTEST = 4;
const CURRENCIES = ['EUR', 'USD', 'GBP', 'JPY', 'KRW', 'BRL', 'PLN'];

/**
 * A reader of free texts: addresses of every kind by their form; names, purchases, slabs and traits
 * by what the dossier itself keeps at home; prices by their currency unless they are shown. A name
 * that the dossier does not know as one is not found.
 */
export function wordsReader(ground: LeavingGround, shown: Shown): WordsReader {
  const known = knownWords(ground);
  const sayers = [traitsIn(ground), citesIn(ground), ...(shown.prices ? [] : [pricesIn(ground)])];
  return (text) => [
    ...harmfulIn(text).map(({ what, text: found }) => ({ what, found, why: FORMS[what] })),
    ...known.flatMap(({ pattern, ...told }) => (pattern.test(text) ? [told] : [])),
    ...sayers.flatMap((say) => say(text)),
  ];
}

const FORMS = {
  'e-mail': 'It has the form of an e-mail address.',
  telephone: 'It has the form of a telephone number.',
  address: 'It has the form of an address.',
};

/** Where the dossier keeps words that are no business of others. */
const KEPT: readonly (readonly [file: string, column: string, what: Harm, why: string])[] = [
  ['desk/parcels.csv', 'seller', 'name', 'It is a seller of your desk.'],
  ['desk/parcels.csv', 'purchase_no', 'holding', 'It is the number of a purchase of yours.'],
  ['desk/parcels.csv', 'tracking', 'holding', 'It is the number of a parcel of yours.'],
  ['desk/events.csv', 'with', 'name', 'Your desk’s events name it.'],
  ['desk/copies.csv', 'certificate', 'certificate', 'It is the certificate of a copy of yours.'],
  ['desk/copies.csv', 'serial', 'holding', 'It is the serial number of a copy of yours.'],
  ['corrections.csv', 'from', 'name', 'The reader has not agreed to be named.'],
];

/** Parts that somebody played, no names. */
const PARTS = new Set([
  'none',
  'owner',
  'seller',
  'buyer',
  'carrier',
  'service',
  'customs',
  'post',
]);

function knownWords(ground: LeavingGround): readonly (Told & { readonly pattern: RegExp })[] {
  const known = publicNames(ground);
  return KEPT.flatMap(([file, column, what, why]) => {
    const rows = rowsIn(ground, file).filter((row) => creditOf(cellOf(row, 'credit')) === null);
    const names = new Set(rows.map((row) => cellOf(row, column)));
    return [...names]
      .filter((name) => name.length >= SHORTEST && !PARTS.has(name) && !known.has(name))
      .filter((name) => column !== 'from' || /[\p{Lu}\p{Lo}\d@]/u.test(name))
      .map((found) => ({ what, found, why, pattern: wordPattern(found) }));
  });
}

/** Titles of services and sources, which are named in any case. */
function publicNames(ground: LeavingGround): ReadonlySet<string> {
  const rows = ['services.csv', 'sources.csv'].flatMap((file) => rowsIn(ground, file));
  return new Set(rows.flatMap((row) => [cellOf(row, 'title'), cellOf(row, 'id')]));
}

/** The words by themselves, in any letters' size. */
function wordPattern(words: string): RegExp {
  const escaped = words.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);
  return new RegExp(String.raw`(?<![\p{L}\p{N}])${escaped}(?![\p{L}\p{N}])`, 'iu');
}

/** A text that names a trait that stays, and what it is. */
function traitsIn(ground: LeavingGround): WordsReader {
  const held = heldTraits(rowsIn(ground, 'traits.csv')).flatMap((row) => {
    const [trait, value] = [cellOf(row, 'trait'), cellOf(row, 'value')];
    const first = /[\p{L}\p{N}]+/u.exec(value)?.[0];
    if (trait === '' || first === undefined || value === 'none') return [];
    return [{ found: `${trait}: ${value}`, patterns: [wordPattern(trait), wordPattern(first)] }];
  });
  const why = 'The trait is marked to stay, and this tells it.';
  return (text) =>
    held
      .filter(({ patterns }) => patterns.every((pattern) => pattern.test(text)))
      .map(({ found }) => ({ what: 'trait', found, why }));
}

function citesIn(ground: LeavingGround): WordsReader {
  const home = [...heldSources(ground)];
  const why = 'The source is marked to stay, and this cites it.';
  return (text) =>
    home
      .filter((id) => text.includes(`](source:${id})`))
      .map((found) => ({ what: 'source', found, why }));
}

function pricesIn({ tables }: LeavingGround): WordsReader {
  const used = tables.flatMap(({ rows }) => rows.map((row) => cellOf(row, 'currency')));
  const codes = [...new Set([...CURRENCIES, ...used.filter((code) => /^[A-Z]{3}$/.test(code))])];
  const amount = String.raw`\d[\d.,]*`;
  const code = `(?:${codes.join('|')})`;
  const pattern = new RegExp(
    String.raw`(?<![\p{L}\p{N}])(?:${amount}\s?(?:${code}(?![\p{L}])|[€£¥₩])|(?:${code}\s|R?\$|[€£¥₩])\s?${amount})`,
    'gu',
  );
  const why = 'No prices are shown, and this tells one.';
  return (text) => [...text.matchAll(pattern)].map(([found]) => ({ what: 'price', found, why }));
}

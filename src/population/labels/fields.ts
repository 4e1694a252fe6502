import { nameOfCode, type Printing, type Product } from '../../catalogue/index.ts';
import { type Evidence, FINISHES } from '../../evidence/index.ts';
import { bareNumber, levelled, wordsOf } from './words.ts';
import { type Years, yearsOf } from './years.ts';

/** What of a printing a label may tell in words. */
export const WORD_FIELDS = [
  'place',
  'product',
  'finish',
  'edition',
  'wave',
  'art',
  'called',
] as const;
export type WordField = (typeof WORD_FIELDS)[number];

/** A record with what is made for each of the fields. */
export function byField<F extends string, T>(
  fields: readonly F[],
  make: (field: F) => T,
): Record<F, T> {
  return Object.fromEntries(fields.map((field) => [field, make(field)])) as Record<F, T>;
}

/** One value of a field, and the words that may stand for it, levelled. */
export interface FieldValue {
  readonly words: ReadonlySet<string>;
  /** Printings that have it. */
  readonly count: number;
  /** Known to be none, or nothing out of the ordinary: labels are mostly silent of it. */
  readonly usual: boolean;
}

/** The printings of a dossier as labels may tell them. */
export interface Told {
  readonly ids: readonly string[];
  /** By field: the values, and each printing's value by its index, -1 where it is not known. */
  readonly values: Readonly<Record<WordField, readonly FieldValue[]>>;
  readonly of: Readonly<Record<WordField, Int32Array>>;
  /** Numbers, bare; empty: known to have none; undefined: not known. */
  readonly numbers: readonly (string | undefined)[];
  readonly years: readonly Years[];
  /** Words that name the subject: they tell no printing from another. */
  readonly subject: ReadonlySet<string>;
}

const USUAL = /^(|none|plain|base|regular|normal|standard|1|1st|first)$/;

/** Takes a dossier's printings apart into what labels may say of them. */
export function toldOf(evidence: Evidence): Told {
  const { printings } = evidence;
  const products = new Map(evidence.products.map((product) => [product.id, product]));
  const tables = byField(WORD_FIELDS, (field) => {
    const texts = printings.map((printing) => textOf(field, printing));
    return valuesOf(field, texts, products);
  });
  return {
    ids: printings.map(({ id }) => id),
    values: byField(WORD_FIELDS, (field) => tables[field].values),
    of: byField(WORD_FIELDS, (field) => tables[field].of),
    numbers: printings.map(({ number }) =>
      number === undefined ? undefined : number === 'none' ? '' : bareNumber(number),
    ),
    years: yearsOf(evidence),
    subject: subjectOf(printings),
  };
}

/** A printing's value as text; undefined where it is not known. */
function textOf(field: WordField, printing: Printing): string | undefined {
  if (field === 'place') {
    const { language, market } = printing;
    if (language === undefined && market === undefined) return undefined;
    return `${language ?? ''}|${market ?? ''}`;
  }
  if (field === 'called') return printing.also_called;
  const text = printing[field];
  return text === 'none' ? '' : text;
}

function valuesOf(
  field: WordField,
  texts: readonly (string | undefined)[],
  products: ReadonlyMap<string, Product>,
): { values: FieldValue[]; of: Int32Array } {
  const index = new Map<string, number>();
  const counts: number[] = [];
  const of = Int32Array.from(texts, (text) => {
    if (text === undefined) return -1;
    const at = index.get(text) ?? index.size;
    index.set(text, at);
    counts[at] = (counts[at] ?? 0) + 1;
    return at;
  });
  const values = [...index].map(([text, at]) => ({
    words: new Set(wordsFor(field, text, products)),
    count: counts[at] as number,
    usual: isUsual(field, text),
  }));
  return { values, of };
}

function isUsual(field: WordField, text: string): boolean {
  if (field === 'product') return false;
  return field === 'place' ? /^en(-|\||$)/.test(text) : USUAL.test(levelled(text));
}

function wordsFor(
  field: WordField,
  text: string,
  products: ReadonlyMap<string, Product>,
): readonly string[] {
  if (text === '') return [];
  if (field === 'place') return placeWords(text);
  if (field === 'product') return productWords(text, products.get(text));
  if (field === 'wave') return waveWords(text);
  if (field === 'finish') return finishWords(text);
  return wordsOf(text).filter((word) => word.length > 1);
}

/** A language and a market by their names in English and in themselves, and by their codes. */
function placeWords(text: string): string[] {
  const [tag = '', market = ''] = text.split('|');
  const [language = ''] = tag.split('-');
  const own = /^[a-z]{2,3}$/.test(language)
    ? new Intl.DisplayNames(language, { type: 'language', fallback: 'none' }).of(language)
    : undefined;
  const names = [nameOfCode(language, 'language'), own ?? '', nameOfCode(market, 'region')];
  const codes = [language, market].filter((code) => /^[A-Za-z]{2,3}$/.test(code));
  return [...names.flatMap(wordsOf), ...codes.map(levelled), ...(PEOPLE[market] ?? [])];
}

/** Words for a market that its name does not begin with. */
const PEOPLE: Readonly<Record<string, readonly string[]>> = {
  GB: ['uk', 'british', 'english'],
  US: ['usa', 'american', 'english'],
  NL: ['dutch'],
  DE: ['german'],
  FR: ['french'],
  ES: ['spanish'],
  PL: ['polish'],
  FI: ['finnish'],
};

function productWords(id: string, product: Product | undefined): string[] {
  const { title = '', series = '', issue = '', kind = '' } = product ?? {};
  const words = [title, series, issue, kind, id].flatMap(wordsOf);
  return words.filter((word) => word.length > 1 || /\d/.test(word));
}

const ORDINALS = [
  '',
  '1st first i',
  '2nd second ii',
  '3rd third iii',
  '4th fourth iv',
  '5th fifth v',
];

function waveWords(text: string): string[] {
  const number = /\d+/.exec(text)?.[0];
  if (number === undefined) return wordsOf(text);
  const ordinals = (ORDINALS[Number(number)] ?? '').split(' ');
  const again = Number(number) > 1 ? ['reprint', 'repr', 'later'] : ['initial', 'original'];
  return [...ordinals, ...again, `w${number}`, `wave${number}`, `p${number}`].filter(Boolean);
}

/** A finish by its own words and by what collectors of many languages call it. */
function finishWords(text: string): string[] {
  const own = wordsOf(text);
  const joined = own.join('');
  const known = FINISHES.flatMap(([name, row]) => {
    const phrases = Object.values(row).flatMap((words) => words.split('|'));
    const isIt = levelled(name) === levelled(text) || phrases.some((p) => levelled(p) === joined);
    return isIt ? phrases.filter((phrase) => !phrase.includes(' ')).flatMap(wordsOf) : [];
  });
  return [...own, joined, ...known];
}

function subjectOf(printings: readonly Printing[]): Set<string> {
  const texts = printings.flatMap(({ subject = '', printed_name = '', reading = '' }) => [
    subject,
    printed_name,
    reading,
  ]);
  return new Set([...new Set(texts)].flatMap(wordsOf));
}

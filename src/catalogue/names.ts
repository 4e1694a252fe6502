import type { Printing } from './types.ts';

/** What a printing is called: `title` tells most, `detail` tells it from its neighbours. */
export interface Name {
  readonly title: string;
  readonly detail: string;
  /** In a sentence or a list: the title, and only what tells it from the rest of the dossier. */
  readonly short: string;
}

/** The columns of a printing that names are made of; an empty text is not known either. */
export type NamedBy = Partial<Omit<Printing, 'id'>>;

/** Columns that are named only where they tell printings of one title apart. */
const FINER = ['edition', 'wave', 'art', 'market'] as const;
/** Columns that are named only where nothing else tells printings apart. */
const LAST = ['channel', 'printed_name', 'printed_in', 'rarity'] as const;
const SHORT = ['market', 'edition', 'wave', 'art', 'number', 'finish', ...LAST] as const;
type Column = (typeof SHORT)[number];

/** What names are put together with in one language; places and products come in as words. */
export interface NameWords {
  /** For the names of languages and markets. */
  readonly locale: string;
  readonly title: (place: string, what: string) => string;
  /** What it is called in a sentence, of a language. */
  readonly short: (language: string, what: string) => string;
  /** One of which nothing but the place is known. */
  readonly printing: (place: string) => string;
  /** One of which nothing but the id is known. */
  readonly unnamed: (id: string) => string;
  readonly noNumber: string;
  readonly plain: string;
  readonly wave: (wave: string) => string;
}

/** Names in English. */
export const ENGLISH_NAMES: NameWords = {
  locale: 'en',
  title: (place, what) => [place, what].filter(Boolean).join(', '),
  short: (language, what) => `${language} ${what.replace(/^The /, '')}`,
  printing: (place) => `${place} printing`,
  unnamed: (id) => `printing ${id}`,
  noNumber: 'no number',
  plain: 'plain',
  wave: (wave) => `wave ${wave}`,
};

/** The name of a language or market; the code itself where it has no name. */
export function nameOfCode(code: string, type: 'language' | 'region', locale = 'en'): string {
  const shape = type === 'language' ? /^[a-z]{2,3}(-[A-Za-z0-9]+)*$/ : /^[A-Z]{2}$/;
  if (!shape.test(code)) return code;
  return displayNames(type, locale).of(code) ?? code;
}

const known = new Map<string, Intl.DisplayNames>();

/** Kept once made: making one takes longer than naming a dossier. */
function displayNames(type: 'language' | 'region', locale: string): Intl.DisplayNames {
  const key = `${type} ${locale}`;
  const names = known.get(key) ?? new Intl.DisplayNames(locale, { type, fallback: 'code' });
  known.set(key, names);
  return names;
}

/** The language alone, without its region: the market tells that; a script is part of the name. */
function languageName(tag: string, locale: string): string {
  const [language = tag, second = ''] = tag.split('-');
  const code = second.length === 4 ? `${language}-${second}` : language;
  return nameOfCode(code, 'language', locale);
}

/** A row that is to be named, and the title of its product where that has one. */
export interface ToName {
  readonly id: string;
  readonly cells: NamedBy;
  readonly productTitle?: string | undefined;
}

/**
 * What each printing of a dossier is called. No two share a name; an id is part of one only where
 * nothing else tells two printings apart, or nothing is known of one.
 */
export function namesOf(
  rows: readonly ToName[],
  words: NameWords = ENGLISH_NAMES,
): ReadonlyMap<string, Name> {
  const say = saying(words);
  const titled = rows.map(
    (row): Titled => ({ ...row, ...headOf(row, words), details: [], parts: [] }),
  );
  for (const kin of groupsBy(titled, ({ title }) => title)) {
    const finer = FINER.filter((column) => groupsBy(kin, say(column)).length > 1);
    for (const row of kin) row.details.push(...detailOf(row, finer, say));
    for (const same of groupsBy(kin, detailText))
      tellApart(same, LAST, say, ({ details }) => details);
    tellApart(kin, SHORT, say, ({ parts }) => parts);
  }
  const oneTitle = groupsBy(titled, (row) => `${row.title}\n${detailText(row)}`);
  for (const same of oneTitle)
    if (same.length > 1) for (const row of same) row.details.push(row.id);
  const oneShort = groupsBy(titled, shortText);
  for (const same of oneShort) if (same.length > 1) for (const row of same) row.parts.push(row.id);
  return new Map(
    titled.map((row) => {
      const name = { title: row.title, detail: detailText(row), short: shortText(row) };
      return [row.id, name];
    }),
  );
}

/** What a printing is called that stands alone, as one that is being entered. */
export function nameOf(row: ToName): Name {
  const { title, words } = headOf(row, ENGLISH_NAMES);
  const detail = detailOf(row, ['edition', 'wave', 'art'], saying(ENGLISH_NAMES)).join(', ');
  return { title, detail, short: words };
}

interface Head {
  readonly title: string;
  readonly words: string;
}

/** A row with the parts of its name so far. */
interface Titled extends ToName, Head {
  readonly details: string[];
  readonly parts: string[];
}

function detailText({ details }: Titled): string {
  return details.join(', ');
}

function shortText({ words, parts }: Titled): string {
  return parts.length > 0 ? `${words} (${parts.join(', ')})` : words;
}

function headOf({ id, cells, productTitle }: ToName, words: NameWords): Head {
  const language = said(cells.language) && languageName(said(cells.language), words.locale);
  const place = language || nameOfCode(said(cells.market), 'region', words.locale);
  const what =
    productTitle || said(cells.product) || said(cells.edition) || said(cells.printed_name);
  const title = words.title(place, what);
  if (title === '') return { title: id, words: words.unnamed(id) };
  if (what === '') return { title, words: words.printing(place) };
  return { title, words: language ? words.short(language, what) : what.replace(/^The /, '') };
}

function detailOf(row: ToName, finer: readonly Column[], say: Saying): string[] {
  const { cells, productTitle } = row;
  const inTitle: readonly string[] = [
    productTitle || said(cells.product) ? '' : 'edition',
    said(cells.language) ? '' : 'market',
  ];
  return (['number', 'finish', ...finer] as const)
    .filter((column) => !inTitle.includes(column))
    .map((column) => say(column)(row))
    .filter(Boolean);
}

/** Adds to the name of each row what tells it from the others, column by column. */
function tellApart(
  rows: readonly Titled[],
  columns: readonly Column[],
  say: Saying,
  partsOf: (row: Titled) => string[],
): void {
  const [column, ...rest] = columns;
  if (rows.length < 2 || column === undefined) return;
  const groups = groupsBy(rows, say(column));
  for (const group of groups) {
    if (groups.length > 1) {
      for (const row of group) partsOf(row).push(...[say(column)(row)].filter(Boolean));
    }
    tellApart(group, rest, say, partsOf);
  }
}

/** Says one column of a row. */
type Saying = (column: Column) => (row: ToName) => string;

function saying(words: NameWords): Saying {
  return (column) =>
    ({ cells }) =>
      sayCell(column, cells[column], words);
}

function sayCell(column: Column, cell: string | undefined, words: NameWords): string {
  if (cell === 'none' && column === 'number') return words.noNumber;
  if (cell === 'none' && column === 'finish') return words.plain;
  const text = said(cell);
  if (column === 'wave' && /^\d+$/.test(text)) return words.wave(text);
  if (column === 'market') return nameOfCode(text, 'region', words.locale);
  return column === 'finish' && text === 'plain' ? words.plain : text;
}

function said(cell: string | undefined): string {
  return cell === undefined || cell === 'none' ? '' : cell;
}

function groupsBy<T>(rows: readonly T[], key: (row: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const row of rows) {
    const group = groups.get(key(row));
    if (group) group.push(row);
    else groups.set(key(row), [row]);
  }
  return [...groups.values()];
}

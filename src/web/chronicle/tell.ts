import type { WireLack, WireLeaving } from '../../contract/index.ts';
import { type Book, shortName, sourceName } from '../view/index.ts';
import type { Step } from '../wire/index.ts';

type Entry = WireLack['entries'][number];

/** Where in the workbench a lack is mended, by its kind; none where it is mended in a file alone. */
const SCREEN: Readonly<Record<string, 'printings' | 'sources' | 'prices' | 'population'>> = {
  picture: 'printings',
  rights: 'printings',
  story: 'printings',
  locator: 'sources',
  citation: 'sources',
  read: 'sources',
  count: 'population',
  price: 'prices',
};

/** The address of the screen on which an entry is mended; null where there is none. */
export function addressOf(lack: string, of: string, book: Book): string | null {
  const screen = SCREEN[lack];
  if (screen === 'population') return '/population';
  const known = screen === 'sources' ? book.sources.has(of) : book.printings.has(of);
  return screen && known ? `/${screen}/${encodeURIComponent(of)}` : null;
}

/** What an entry concerns, in the words of the other screens. */
export function nameOf(lack: string, of: string, book: Book): string {
  if (of === 'index' && lack !== 'answer') return 'The whole account';
  return SCREEN[lack] === 'sources' ? sourceName(book, of) : shortName(book, of);
}

/** How a lack is mended that no cell of a table mends. */
export const HOW: Readonly<Record<string, string>> = {
  link: 'Mend the link in the text.',
  picture:
    'Lay the file in pictures/ and give it a row in pictures.csv, with the right by which it may be shown; or lay a copy on the bench, and let its picture leave.',
  story:
    'Write the file in CommonMark. “printlore publish” with the dossier alone prints drafts to begin with.',
  count: 'Paste the newest report there.',
  price: 'Add sales to sales.csv, or publish without prices.',
};

/** What is asked for in the cell that mends a lack. */
export const ASKS: Readonly<Record<string, string>> = {
  answer: 'Answer',
  rights: 'By what right it may be shown',
  locator: 'Where it stands',
  citation: 'Citation',
  accessed: 'Day it was read',
};

/** The step that fills an empty cell. */
export function filled({ file, row, column, cells, of }: Entry, words: string): Step | null {
  if (row === null || column === null || cells === null) return null;
  const after = { ...cells, [column]: words.trim() };
  return {
    label: `Fill ${column} of ${of} in ${file}`,
    changes: [{ file, op: 'replace', row, before: cells, after }],
  };
}

/** Where something stands in the dossier. */
export function placeOf({ file, row, column }: Pick<WireLeaving, 'file' | 'row' | 'column'>) {
  const line = file.endsWith('.md') ? 'line' : 'row';
  return [file, row === null ? '' : `${line} ${row}`, column ?? ''].filter(Boolean).join(', ');
}

/** Things by one of their words, each word in the order in which it first comes. */
export function groupsBy<T>(things: readonly T[], word: (thing: T) => string) {
  const groups = new Map<string, T[]>();
  for (const thing of things) {
    const group = groups.get(word(thing));
    if (group) group.push(thing);
    else groups.set(word(thing), [thing]);
  }
  return [...groups];
}

/** What the pages are called that are no printing's. */
export function pageTitle(path: string): string {
  const stem = path.replace(/^.*\//, '').replace(/\.html$/, '');
  const known = { index: 'Overview', tell: 'Telling them apart' }[stem];
  return known ?? `${stem[0]?.toUpperCase() ?? ''}${stem.slice(1).replaceAll('-', ' ')}`;
}

/** The languages of a publication, by their own names. */
export const LANGUAGES = { en: 'English', pt: 'Português', ja: '日本語', ko: '한국어' } as const;

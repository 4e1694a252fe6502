import { byField, type Told, WORD_FIELDS, type WordField } from './fields.ts';
import type { LabelWords, Lexicon } from './lexicon.ts';
import { bareNumber } from './words.ts';

/** How a label and a value go together. */
export const LEVEL = { agrees: 0, near: 1, silent: 2, differs: 3 } as const;
export const LEVELS = 4;

/** All that is compared, words first. */
export const FIELDS = [...WORD_FIELDS, 'number', 'year'] as const;
export type Field = (typeof FIELDS)[number];

/** What one label says, for every value of every field: levels by value index. */
export interface Levels {
  readonly words: Readonly<Record<WordField, Uint8Array>>;
  /** By the position of a number in `numbers`. */
  readonly number: Uint8Array;
  readonly saidNumber: boolean;
  /** The year on the label; undefined where it bears none. */
  readonly year: number | undefined;
  /** Words, two at most, that stand for nothing in the dossier. */
  readonly strange: number;
}

/** The different numbers of a dossier. */
export interface Numbers {
  readonly list: readonly string[];
  readonly index: ReadonlyMap<string, number>;
  /** By printing: position of its number, -1 where it is not known. */
  readonly of: Int32Array;
}

/** The numbers that stand on the printings, each once. */
export function numbersOf(told: Told): Numbers {
  const index = new Map<string, number>();
  const of = Int32Array.from(told.numbers, (number) => {
    if (number === undefined) return -1;
    if (!index.has(number)) index.set(number, index.size);
    return index.get(number) as number;
  });
  return { list: [...index.keys()], index, of };
}

/** What a label says against every value that a printing of the dossier can have. */
export function levelsOf(
  label: LabelWords,
  lexicon: Lexicon,
  told: Told,
  numbers: Numbers,
): Levels {
  const year = yearIn(label.words, told);
  const number = numberLevels(label, lexicon, numbers, year);
  const words = byField(WORD_FIELDS, (field) => wordLevels(label, lexicon, told, field));
  return { words, ...number, year, strange: strangeIn(label, lexicon, told) };
}

/** Words under this mean nothing; those on half of the labels are the service's own furniture. */
const MEANT = 0.4;

function strangeIn(label: LabelWords, lexicon: Lexicon, told: Told): number {
  const strange = label.at.filter((at) => {
    const word = lexicon.words[at] as string;
    if (/\d/.test(word) || word.length < 2 || told.subject.has(word)) return false;
    if ((lexicon.often[at] as number) > lexicon.most / 2) return false;
    return !WORD_FIELDS.some((field) => lexicon.of[field][at]?.some(({ p }) => p >= MEANT));
  });
  return Math.min(2, strange.length);
}

/** A word that all values share tells none of them apart; its weight falls to this. */
const FAINT = 0.05;

function wordLevels(label: LabelWords, lexicon: Lexicon, told: Told, field: WordField): Uint8Array {
  const size = told.values[field].length;
  const score = new Float64Array(size);
  const meanings = lexicon.of[field];
  let best = 0;
  for (const at of label.at) {
    const list = meanings[at] as Lexicon['of'][WordField][number];
    if (list.length === 0) continue;
    const telling = Math.max(
      FAINT,
      Math.log((size + 1) / (list.length + 0.5)) / Math.log(size + 1),
    );
    for (const { value, p } of list) {
      score[value] = (score[value] as number) + p * telling;
      if ((score[value] as number) > best) best = score[value] as number;
    }
  }
  const levels = new Uint8Array(size);
  for (let value = 0; value < size; value++) levels[value] = levelAt(score[value] as number, best);
  return levels;
}

function levelAt(score: number, best: number): number {
  if (best < 0.12) return LEVEL.silent;
  if (score >= 0.85 * best) return LEVEL.agrees;
  return score >= 0.5 * best ? LEVEL.near : LEVEL.differs;
}

/** The year on a label: four digits, else two that stand for a year of the dossier. */
function yearIn(words: readonly string[], told: Told): number | undefined {
  for (const word of words) if (/^(19|20)\d\d$/.test(word)) return Number(word);
  for (const word of words) {
    const two = /^(\d\d)(?:\D.*)?$/u.exec(word)?.[1];
    if (two === undefined) continue;
    const year = Number(two) + (Number(two) > 50 ? 1900 : 2000);
    const isOne = told.years.some(({ release, others }) => release === year || others.has(year));
    if (isOne && !told.numbers.includes(two)) return year;
  }
  return undefined;
}

const NONE_WORDS = new Set(['nno', 'unnumbered', 'nn']);

function numberLevels(
  label: LabelWords,
  lexicon: Lexicon,
  numbers: Numbers,
  year: number | undefined,
): { number: Uint8Array; saidNumber: boolean } {
  const { list, index } = numbers;
  const said = new Set<number>();
  let other = false;
  const { words } = label;
  for (let i = 0; i < words.length; i++) {
    const word = words[i] as string;
    const joined = bareNumber(`${word}${words[i + 1] ?? ''}`);
    const pair = index.get(joined);
    if (pair !== undefined && joined !== '' && !/^\d+$/.test(joined)) said.add(pair);
    if (!/\d/.test(word) || Number(word) === year) continue;
    const alone = index.get(bareNumber(word));
    if (alone !== undefined) said.add(alone);
    else if (!explained(word, label, lexicon)) other = true;
  }
  const level = new Uint8Array(list.length).fill(
    said.size > 0 || other ? LEVEL.differs : LEVEL.silent,
  );
  for (const at of said) level[at] = LEVEL.agrees;
  if (said.size === 0 && other) markNear(level, label, list);
  const none = index.get('');
  if (none !== undefined) {
    const stated = words.some((word) => NONE_WORDS.has(word));
    level[none] = stated ? LEVEL.agrees : said.size > 0 || other ? LEVEL.differs : LEVEL.silent;
  }
  return { number: level, saidNumber: said.size > 0 || other };
}

/** A word with digits that belongs to the product's title, as the issue of a periodical does. */
function explained(word: string, label: LabelWords, lexicon: Lexicon): boolean {
  const at = label.at.find((place) => lexicon.words[place] === word);
  return at !== undefined && (lexicon.of.product[at]?.length ?? 0) > 0;
}

/** Numbers that are one slip of the pen from what is said, or its digits alone. */
function markNear(level: Uint8Array, label: LabelWords, list: readonly string[]): void {
  const words = label.words.filter((word) => /\d/.test(word)).map(bareNumber);
  list.forEach((number, at) => {
    if (number !== '' && words.some((word) => isNear(word, number))) level[at] = LEVEL.near;
  });
}

function isNear(a: string, b: string): boolean {
  const digits = (text: string) => text.replace(/\D/g, '');
  if (a.length !== b.length && digits(a) === digits(b) && digits(a) !== '') return true;
  if (Math.abs(a.length - b.length) > 1 || Math.max(a.length, b.length) < 2) return false;
  let same = 0;
  while (same < a.length && same < b.length && a[same] === b[same]) same += 1;
  const rest = (text: string, by: number) => text.slice(same + by);
  if (rest(a, 1) === rest(b, 1) || rest(a, 1) === rest(b, 0) || rest(a, 0) === rest(b, 1))
    return true;
  return (
    a.length === b.length &&
    a[same] === b[same + 1] &&
    a[same + 1] === b[same] &&
    rest(a, 2) === rest(b, 2)
  );
}

/** How a year on a label goes with the years of a printing. */
export function yearLevel(said: number | undefined, years: Told['years'][number]): number {
  if (said === undefined || years.release === undefined) return LEVEL.silent;
  if (said === years.release || years.others.has(said)) return LEVEL.agrees;
  return Math.abs(said - years.release) <= 1 ? LEVEL.near : LEVEL.differs;
}

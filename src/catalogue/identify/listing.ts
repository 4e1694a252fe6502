import { nameOfCode } from '../names.ts';
import { keyOf } from '../traits/words.ts';
import type { Known } from './identify.ts';
import { marksOf, traitName } from './marks.ts';
import type { Reading, Trait } from './types.ts';

/** Reads the words of a seller or of a slab's label for values of traits. */
export type WordsReader = (text: string, sees: 'listing' | 'label') => readonly Reading[];

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth'] as const;
/** Columns that a listing's words are not looked through for: they are codes, or too common. */
const UNREAD: ReadonlySet<string> = new Set([
  'market',
  'channel',
  'rarity',
  'printed_in',
  'edition',
]);

/**
 * A reader of free text for the words of a dossier's traits. `titles` are the titles of products by
 * id. A short word counts only beside the name of its trait; of two values of one trait that stand
 * in a text neither is taken, unless one is part of the other.
 */
export function wordsReader(known: Known, titles: ReadonlyMap<string, string>): WordsReader {
  const { traits } = marksOf(known.printings, known.counterfeits, known.traits);
  const wanted = [...traits.values()].flatMap((trait) => phrasesOf(trait, titles));
  return (text, sees) => {
    const all = ` ${inClauses(text)} `;
    const found = new Map<string, Phrase>();
    const unsure = new Set<string>();
    for (const phrase of wanted) {
      if (!phrase.keys.some((key) => stands(key, all))) continue;
      const before = found.get(phrase.trait);
      if (before && before.word !== phrase.word && !overlaps(before, phrase))
        unsure.add(phrase.trait);
      if (!before || longest(phrase) > longest(before)) found.set(phrase.trait, phrase);
    }
    return [...found.values()].flatMap(({ trait, word }): readonly Reading[] =>
      unsure.has(trait) ? [] : [{ trait, value: { is: 'word', word }, sees, sd: null }],
    );
  };
}

/** As compared, clauses kept apart: what stands across a comma does not belong together. */
function inClauses(text: string): string {
  return text
    .split(/[,;!?\n]+/)
    .map(keyOf)
    .join(' | ');
}

interface Phrase {
  readonly trait: string;
  readonly word: string;
  /** Any of them in a text means the word. */
  readonly keys: readonly string[];
}

function phrasesOf(trait: Trait, titles: ReadonlyMap<string, string>): Phrase[] {
  if (UNREAD.has(trait.name)) return [];
  const words = new Set(trait.values.flatMap((one) => (one?.is === 'word' ? one.word : [])));
  return [...words].flatMap((word) => {
    const keys = keysOf(trait.name, word, titles)
      .map(inClauses)
      .filter((key) => key !== '');
    return keys.length > 0 ? [{ trait: trait.name, word, keys }] : [];
  });
}

function keysOf(trait: string, word: string, titles: ReadonlyMap<string, string>): string[] {
  if (trait === 'language')
    return [nameOfCode(word, 'language'), nameOfCode(word.split('-')[0] ?? word, 'language')];
  if (trait === 'product') return [titles.get(word) ?? (/[ \d]/.test(word) ? word : '')];
  if (trait === 'wave') {
    const ordinal = ORDINALS[Number(word) - 1];
    return [`wave ${word}`, ...(ordinal ? [`${ordinal} wave`] : [])];
  }
  if (trait === 'number') return /^\d$/.test(word) ? [] : [word];
  const isColumn =
    traitName(trait) === trait &&
    ['finish', 'art', 'printed_name', 'reading', 'also_called'].includes(trait);
  const long = [...word].length >= 8 || /[^\p{Script=Latin}\p{N}\p{P}\p{Zs}]/u.test(word);
  if (isColumn ? [...word].length >= 4 : long) return [word];
  return [`${word} ${trait}`, `${trait} ${word}`];
}

/** As words of their own; letters without spaces between words as they stand. */
function stands(key: string, text: string): boolean {
  const isSpaced = /^[\p{Script=Latin}\p{N}\p{P}\p{S}\p{M}\s]+$/u.test(key);
  return text.includes(isSpaced ? ` ${key} ` : key);
}

function overlaps(one: Phrase, other: Phrase): boolean {
  return one.keys.some((a) => other.keys.some((b) => a.includes(b) || b.includes(a)));
}

function longest({ keys }: Phrase): number {
  return Math.max(...keys.map((key) => key.length));
}

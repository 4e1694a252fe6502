import { byField, type Told, WORD_FIELDS, type WordField } from './fields.ts';
import type { LabelWords, Lexicon, Meaning } from './lexicon.ts';

/** Pairs of label and printing that hold with some probability: by label. */
export type Pairs = readonly ReadonlyMap<number, number>[];

/** How often each word stood on labels of printings with each value. */
interface Tally {
  readonly words: readonly Map<number, number>[];
  readonly values: Float64Array;
}

/** What the labels of a service teach of its words. */
export interface Vocabulary {
  readonly tallies: Readonly<Record<WordField, Tally>>;
  readonly matched: number;
}

/** Words that mean something by their letters are not learned anew. */
const KNOWN = 0.5;

/** Counts the words of a service over pairs that hold with some probability. */
export function vocabularyOf(
  labels: readonly LabelWords[],
  pairs: Pairs,
  told: Told,
  lexicon: Lexicon,
): Vocabulary {
  let matched = 0;
  for (const held of pairs) for (const p of held.values()) matched += p;
  const open = openWords(lexicon, labels.length, told);
  const tallies = byField(WORD_FIELDS, (field) => {
    const words = lexicon.words.map(() => new Map<number, number>());
    const values = new Float64Array(told.values[field].length);
    labels.forEach(({ at }, label) => {
      for (const [value, p] of valueShares(
        pairs[label] as ReadonlyMap<number, number>,
        told,
        field,
      )) {
        values[value]! += p;
        for (const word of at) {
          if (!open[word]) continue;
          const tally = words[word] as Map<number, number>;
          tally.set(value, (tally.get(value) ?? 0) + p);
        }
      }
    });
    return { words, values };
  });
  return { tallies, matched };
}

/** Words that may be learned: no number, not the subject's, not on nearly all labels, not known. */
function openWords(lexicon: Lexicon, labels: number, told: Told): boolean[] {
  return lexicon.words.map((word, at) => {
    if (/^\d+$/.test(word) || told.subject.has(word)) return false;
    if ((lexicon.often[at] as number) > 0.8 * labels) return false;
    return !WORD_FIELDS.some((field) => lexicon.of[field][at]?.some(({ p }) => p >= KNOWN));
  });
}

function valueShares(
  held: ReadonlyMap<number, number>,
  told: Told,
  field: WordField,
): Map<number, number> {
  const shares = new Map<number, number>();
  for (const [printing, p] of held) {
    const value = told.of[field][printing] as number;
    if (value >= 0) shares.set(value, (shares.get(value) ?? 0) + p);
  }
  return shares;
}

/** The service's words as one label may use them: what the label itself taught is left out. */
export function without(
  label: LabelWords,
  held: ReadonlyMap<number, number>,
  vocabulary: Vocabulary,
  lexicon: Lexicon,
  told: Told,
): Lexicon {
  const of = byField(WORD_FIELDS, (field) => {
    const tally = vocabulary.tallies[field];
    const own = valueShares(held, told, field);
    const lists: (readonly Meaning[])[] = [];
    for (const word of label.at) {
      const known = lexicon.of[field][word] as readonly Meaning[];
      const learned = meaningsOf(tally, word, own, vocabulary.matched);
      lists[word] = learned.length === 0 ? known : merged(known, learned);
    }
    return lists;
  });
  return { ...lexicon, of };
}

function meaningsOf(
  tally: Tally,
  word: number,
  own: ReadonlyMap<number, number>,
  matched: number,
): Meaning[] {
  const counts = tally.words[word] as Map<number, number>;
  if (counts.size === 0) return [];
  let ownAll = 0;
  for (const p of own.values()) ownAll += p;
  let standing = -ownAll;
  for (const count of counts.values()) standing += count;
  if (standing < 0.9) return [];
  const meanings: Meaning[] = [];
  for (const [value, count] of counts) {
    const here = count - (own.get(value) ?? 0);
    if (here < 0.6) continue;
    const ofValue = (tally.values[value] as number) - (own.get(value) ?? 0);
    const base = (ofValue + 0.5) / (matched - ownAll + 1);
    const share = here / (standing + 0.3);
    const recall = here / (ofValue + 0.3);
    const p = 0.85 * recall * Math.max(0, 1 - base / share);
    if (p > 0.2) meanings.push({ value, p });
  }
  return meanings;
}

function merged(known: readonly Meaning[], learned: readonly Meaning[]): Meaning[] {
  const best = new Map(known.map(({ value, p }) => [value, p]));
  for (const { value, p } of learned) best.set(value, Math.max(p, best.get(value) ?? 0));
  return [...best].map(([value, p]) => ({ value, p }));
}

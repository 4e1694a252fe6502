import { byField, type Told, WORD_FIELDS, type WordField } from './fields.ts';
import { likeness } from './likeness.ts';
import { wordsOf } from './words.ts';

/** A label as its words, by their places in the service's list of words. */
export interface LabelWords {
  readonly text: string;
  readonly words: readonly string[];
  /** Each distinct word once. */
  readonly at: readonly number[];
}

/** What a service's words may stand for: by word, the values of a field and how surely. */
export interface Lexicon {
  readonly words: readonly string[];
  /** In how many labels each word stands. */
  readonly often: Int32Array;
  /** The most labels that one word stands in. */
  readonly most: number;
  /** By field and word: values with their probability, those of 0 left out. */
  readonly of: Readonly<Record<WordField, readonly (readonly Meaning[])[]>>;
}

/** A value, by its index, that a word may stand for. */
export interface Meaning {
  readonly value: number;
  readonly p: number;
}

/** Takes labels apart; words are numbered as they come. */
export function labelWords(labels: readonly string[]): {
  readonly labels: readonly LabelWords[];
  readonly words: readonly string[];
  readonly often: Int32Array;
} {
  const index = new Map<string, number>();
  const counts: number[] = [];
  const taken = labels.map((text) => {
    const words = wordsOf(text);
    const at = [...new Set(words)].map((word) => {
      const place = index.get(word) ?? index.size;
      index.set(word, place);
      counts[place] = (counts[place] ?? 0) + 1;
      return place;
    });
    return { text, words, at };
  });
  return { labels: taken, words: [...index.keys()], often: Int32Array.from(counts) };
}

/** Likenesses under this say nothing. */
const LEAST = 0.25;

/** What the words may stand for by their letters alone, before anything is learned of the service. */
export function lexiconOf(told: Told, words: readonly string[], often: Int32Array): Lexicon {
  const of = byField(WORD_FIELDS, (field) => meaningsIn(told, field, words));
  const most = often.reduce((a, b) => Math.max(a, b), 1);
  return { words, often, most, of };
}

function meaningsIn(told: Told, field: WordField, words: readonly string[]): Meaning[][] {
  const holders = new Map<string, number[]>();
  told.values[field].forEach(({ words: forms }, value) => {
    for (const form of forms) {
      const list = holders.get(form);
      if (list === undefined) holders.set(form, [value]);
      else list.push(value);
    }
  });
  const byLetter = new Map<string, string[]>();
  for (const form of holders.keys()) {
    const letter = form.slice(0, 1);
    byLetter.set(letter, [...(byLetter.get(letter) ?? []), form]);
  }
  const few = holders.size * words.length < 150_000;
  return words.map((word) => {
    const exact = holders.get(word);
    if (exact !== undefined) return exact.map((value) => ({ value, p: 1 }));
    const forms = few ? [...holders.keys()] : (byLetter.get(word.slice(0, 1)) ?? []);
    const best = new Map<number, number>();
    for (const form of forms) {
      const p = likeness(word, form);
      if (p < LEAST) continue;
      for (const value of holders.get(form) ?? [])
        if (p > (best.get(value) ?? 0)) best.set(value, p);
    }
    return [...best].map(([value, p]) => ({ value, p }));
  });
}

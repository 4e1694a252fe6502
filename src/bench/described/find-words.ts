import type { Meaning } from './words.ts';

/** Condition words found in a text. */
export interface Phrase {
  /** As they stand in the text. */
  readonly words: string;
  /** Places in the text, in UTF-16 units, the end not included. */
  readonly from: number;
  readonly to: number;
  readonly meanings: readonly Meaning[];
}

/** Words that turn what follows into its opposite, so that the seller does not promise it. */
const NOT = /(?:^|[^\p{L}])(?:not|no|isn['’]t|never|não|nao|nem|ei|nicht|kein)\s+(?:\p{L}+\s+)?$/u;

/**
 * The condition words of a text, the longest first where two overlap, in the order of the text.
 * Words in letters stand alone or not at all; those in Chinese, Japanese and Korean letters may be
 * part of a longer word. What stands after a "not" is left out, since it promises nothing.
 */
export function findWords(text: string, list: readonly Meaning[]): readonly Phrase[] {
  const { folded, places } = fold(text);
  const phrases = new Map<string, Meaning[]>();
  for (const meaning of list) {
    const key = fold(meaning.words).folded.trim();
    if (key) phrases.set(key, [...(phrases.get(key) ?? []), meaning]);
  }
  const taken: Phrase[] = [];
  for (const [key, meanings] of [...phrases].sort((a, b) => b[0].length - a[0].length))
    for (const at of occurrences(folded, key)) {
      const from = places[at] as number;
      const to = places[at + key.length] as number;
      if (taken.some((other) => from < other.to && other.from < to)) continue;
      taken.push({ words: text.slice(from, to), from, to, meanings });
    }
  return taken
    .filter(({ from }) => !NOT.test(text.slice(0, from).toLowerCase()))
    .sort((a, b) => a.from - b.from);
}

function occurrences(text: string, key: string): readonly number[] {
  const found: number[] = [];
  const letters = /^[\p{Script=Latin}\p{Script=Cyrillic}\p{Script=Greek}\d\s'’-]+$/u.test(key);
  for (let at = text.indexOf(key); at >= 0; at = text.indexOf(key, at + 1)) {
    const around = `${text[at - 1] ?? ' '}${text[at + key.length] ?? ' '}`;
    if (!letters || !/[\p{L}\p{N}]/u.test(around)) found.push(at);
  }
  return found;
}

/** A text in one letter case and width, and where each of its units stood before. */
function fold(text: string): { readonly folded: string; readonly places: readonly number[] } {
  let folded = '';
  const places: number[] = [];
  let at = 0;
  for (const letter of text) {
    const plain = letter.normalize('NFKC').toLowerCase().replace(/\s/gu, ' ');
    for (let i = 0; i < plain.length; i++) places.push(at);
    folded += plain;
    at += letter.length;
  }
  return { folded, places: [...places, at] };
}

import { type Token, tokensOf } from './tokens.ts';
import { readLater, register } from './vocabulary.ts';

/** Phrases of one meaning in one language, separated by `|`. */
export type PhraseRow = Readonly<Record<string, string>>;

interface Entry<T> {
  readonly words: readonly string[];
  readonly value: T;
  readonly language: string;
}

/** A phrase found in a text, as the tokens from `from` up to `to`, the latter left out. */
export interface PhraseMatch<T> {
  readonly from: number;
  readonly to: number;
  readonly value: T;
  /** Languages that write so. */
  readonly languages: readonly string[];
}

/** Phrases to look for, by the number of their first word or of its first letters. */
export interface PhraseBook<T> {
  readonly whole: readonly (readonly Entry<T>[] | undefined)[];
  readonly begun: readonly (readonly Entry<T>[] | undefined)[];
}

/** At most this many words may stand in the place of `_`. */
const LONGEST_GAP = 4;
const LONGEST_PHRASE = 12;

function wordsOf(phrase: string): string[] {
  const words: string[] = [];
  for (const part of phrase.trim().split(/\s+/u)) {
    if (part === '_') words.push('_');
    else {
      const stem = part.endsWith('*');
      const pieces = tokensOf(stem ? part.slice(0, -1) : part).map((token) => token.norm);
      if (stem) pieces.push(`${pieces.pop() ?? ''}*`);
      words.push(...pieces);
    }
  }
  return words;
}

/**
 * A book of phrases. A word that ends in `*` stands for every word that begins so (three letters
 * or more), `_` for one to four words.
 */
export function phraseBook<T>(rows: Iterable<readonly [T, PhraseRow]>): PhraseBook<T> {
  const book = { whole: [], begun: [] };
  readLater(() => readInto(book, rows));
  return book;
}

function readInto<T>(
  book: { readonly whole: (Entry<T>[] | undefined)[]; readonly begun: (Entry<T>[] | undefined)[] },
  rows: Iterable<readonly [T, PhraseRow]>,
): void {
  for (const [value, row] of rows) {
    for (const [language, phrases] of Object.entries(row)) {
      for (const phrase of phrases.split('|')) {
        const words = wordsOf(phrase);
        const first = words[0];
        if (first === undefined) continue;
        const stem = first.endsWith('*');
        const list = stem ? book.begun : book.whole;
        const key = register(stem ? first.slice(0, 3) : first);
        while (list.length <= key) list.push(undefined);
        const entries = list[key] ?? [];
        entries.push({ words, value, language });
        list[key] = entries;
      }
    }
  }
}

function fits(word: string, token: Token | undefined): boolean {
  if (token === undefined) return false;
  return word.endsWith('*') && word.length > 1
    ? token.norm.startsWith(word.slice(0, -1))
    : token.norm === word;
}

/** The end of the phrase where it stands at `at`, else -1. */
function endOf(words: readonly string[], tokens: readonly Token[], at: number): number {
  let here = at;
  for (let w = 0; w < words.length; w += 1) {
    const word = words[w]!;
    if (word !== '_') {
      if (!fits(word, tokens[here])) return -1;
      here += 1;
      continue;
    }
    const next = words[w + 1];
    if (next === undefined) return -1;
    let skipped = 0;
    while (skipped < LONGEST_GAP && !(skipped > 0 && fits(next, tokens[here]))) {
      const token = tokens[here];
      if (token === undefined || (token.kind === 'sym' && token.norm !== "'")) return -1;
      here += 1;
      skipped += 1;
    }
  }
  return here;
}

/** The longest phrase that begins at token `at` and ends at `limit` or before, if any. */
export function phraseAt<T>(
  book: PhraseBook<T>,
  tokens: readonly Token[],
  at: number,
  limit = tokens.length,
): PhraseMatch<T> | undefined {
  const token = tokens[at];
  if (token === undefined) return undefined;
  const exact = book.whole[token.word];
  const begun = book.begun[token.stem];
  if (exact === undefined && begun === undefined) return undefined;
  let to = at;
  let best: Entry<T> | undefined;
  let languages: string[] = [];
  for (const entries of [exact, begun]) {
    for (const entry of entries ?? []) {
      const end = endOf(entry.words, tokens, at);
      if (end > limit) continue;
      if (end > to) {
        to = end;
        best = entry;
        languages = [entry.language];
      } else if (end === to && best !== undefined && entry.value === best.value) {
        languages.push(entry.language);
      }
    }
  }
  return best && { from: at, to, value: best.value, languages };
}

/** Whether some phrase of the book begins like the token. */
export function opens<T>(book: PhraseBook<T>, token: Token): boolean {
  return book.whole[token.word] !== undefined || book.begun[token.stem] !== undefined;
}

function freeTo(tokens: readonly Token[], at: number, taken: (at: number) => boolean): number {
  let limit = at;
  while (limit < tokens.length && limit < at + LONGEST_PHRASE && !taken(limit)) limit += 1;
  return limit;
}

/** Every phrase of the book in the text, longest first at each place, without overlap. */
export function phrasesIn<T>(
  book: PhraseBook<T>,
  tokens: readonly Token[],
  taken: (at: number) => boolean = () => false,
): PhraseMatch<T>[] {
  const found: PhraseMatch<T>[] = [];
  let at = 0;
  while (at < tokens.length) {
    const begins = opens(book, tokens[at]!) && !taken(at);
    const match = begins ? phraseAt(book, tokens, at, freeTo(tokens, at, taken)) : undefined;
    if (match) found.push(match);
    at = match ? match.to : at + 1;
  }
  return found;
}

import type { Passage } from './passage.ts';
import { phraseAt, phraseBook } from './phrases.ts';
import { plain, type Token } from './tokens.ts';
import {
  BEFORE_SOURCE,
  BEHIND_SOURCE,
  FILLERS,
  LIGHT_BEFORE_SOURCE,
  SAYS,
  SOURCE_NOUNS,
} from './words/source-words.ts';

/** Words right before a source's name. */
export const before = phraseBook([[true, BEFORE_SOURCE]] as const);

/** Words right behind it. */
export const behind = phraseBook([[true, BEHIND_SOURCE]] as const);

/** Verbs by which a source speaks. */
export const says = phraseBook([[true, SAYS]] as const);

/** Nouns by which a source is known. */
export const nouns = phraseBook([[true, SOURCE_NOUNS]] as const);

/** Words that say nothing of their own. */
export const fillers = new Set(Object.values(FILLERS).flatMap((row) => row.split(' ').map(plain)));

/** Words before a name that say little. */
export const light = new Set(
  Object.values(LIGHT_BEFORE_SOURCE).flatMap((row) => row.split(/[ |]/u).map(plain)),
);

/** Small words within a name of capital words. */
export const INNER = new Set(
  'of de du des der la le the & and und et y e di for to von van i'.split(' '),
);

const LOCATOR = /^(?:p|pp|page|pages|pg|seite|sivu|pag|str)$/u;

/** Whether a verb stands there by which a source speaks. */
export const isSaying = (tokens: readonly Token[], at: number) =>
  phraseAt(says, tokens, at) !== undefined;

/** Whether a word begins with a capital. */
export const isCapital = (token: Token | undefined) =>
  token !== undefined && /^\p{Lu}/u.test(token.text);

/** Tokens that can be part of a name. */
export function fitsName(passage: Passage, at: number): boolean {
  const token = passage.tokens[at];
  if (!token || passage.roles[at] === 'date' || passage.roles[at] === 'cue') return false;
  if (passage.boundaries[at] !== 'none') return false;
  if (token.kind === 'sym') return /^[-'.&#@"“”„«»!]$/u.test(token.norm) || token.text === '’';
  if (token.kind === 'link') return true;
  return true;
}

/** Whether a token at the edge of a name says nothing. */
export function isFiller(passage: Passage, at: number): boolean {
  const token = passage.tokens[at]!;
  if (token.kind === 'sym') return true;
  return (
    token.kind === 'word' &&
    fillers.has(token.norm) &&
    !(isCapital(token) && token.text.length > 3 && at > 0)
  );
}

/** Whether a token breaks a name in two: a filler that does not stand inside a capital name. */
export function breaks(passage: Passage, at: number): boolean {
  const { tokens } = passage;
  const token = tokens[at]!;
  if (phraseAt(nouns, tokens, at)) return false;
  if (token.kind === 'sym' && /^["“”„«»]$/u.test(token.text)) return true;
  if (passage.roles[at] === 'printing') return !lendsItself(passage, at);
  if (token.kind !== 'word') return false;
  const inner = INNER.has(token.norm) && isCapital(tokens[at - 1]) && isCapital(tokens[at + 1]);
  const author =
    /^(?:by|from|in|at|de|du|von|del|di|da|av|af|vom|no|na)$/u.test(token.norm) &&
    isCapital(tokens[at + 1]) &&
    phraseAt(nouns, tokens, at - 1)?.to === at;
  if (author) return false;
  if (inner || (isCapital(token) && isCapital(tokens[at + 1]) && at > 0)) return false;
  if (fillers.has(token.norm)) return true;
  const verb = phraseAt(says, tokens, at);
  return verb !== undefined && !isCapital(token);
}

/** A language or country right before a source's noun belongs to its name: `German price list`. */
function lendsItself(passage: Passage, at: number): boolean {
  const span = passage.printing.find((s) => s.from <= at && at < s.to);
  if (!span) return false;
  if (span.column === 'product') return phraseAt(nouns, passage.tokens, span.to - 1) !== undefined;
  if (span.column !== 'language' && span.column !== 'market') return false;
  for (let here = span.to; here < span.to + 3; here += 1) {
    if (here < passage.tokens.length && phraseAt(nouns, passage.tokens, here))
      return fitsName(passage, here);
    if (!fitsName(passage, here) || passage.roles[here] !== 'free') return false;
  }
  return false;
}

/** Cuts edges that say nothing and page references off a run. */
export function trimmed(passage: Passage, from: number, to: number): [number, number] {
  const { tokens } = passage;
  let [begin, end] = [from, to];
  const noun = (at: number) => phraseAt(nouns, tokens, at) !== undefined;
  while (begin < end && isFiller(passage, begin) && !noun(begin)) begin += 1;
  for (let at = begin + 1; at < end - 1; at += 1) {
    const behind = tokens[at + 1]!.text === '.' ? at + 2 : at + 1;
    if (LOCATOR.test(tokens[at]!.norm) && behind < to && tokens[behind]?.kind === 'num') end = at;
  }
  while (end > begin && isFiller(passage, end - 1) && !noun(end - 1)) {
    if (tokens[end - 1]!.text === '.' && tokens[end - 2]!.text.length <= 4 && end < to) break;
    end -= 1;
  }
  return [begin, end];
}

/** The words of a row of tokens as they stand. */
export function textOf(passage: Passage, from: number, to: number): string {
  const { tokens, text } = passage;
  return text.slice(tokens[from]!.start, tokens[to - 1]!.end).replace(/\s+/gu, ' ');
}

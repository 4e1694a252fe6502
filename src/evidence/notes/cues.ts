import type { DateProperty } from '../types.ts';
import { type PhraseRow, phraseAt, phraseBook, phrasesIn } from './phrases.ts';
import { plain, type Token } from './tokens.ts';
import * as bounds from './words/cues-bounds.ts';
import * as printed from './words/cues-printed.ts';
import * as release from './words/cues-release.ts';
import { SOURCE_NOUNS } from './words/source-words.ts';
import { TOUCHING } from './words/touching.ts';

/** What a cue word says of the date beside it; `none`: that it is no claim on a printing. */
export type CueMeaning = DateProperty | 'none';

interface CueKind {
  readonly meaning: CueMeaning;
  /** Where the date must stand that it touches; `free`: anywhere in its clause. */
  readonly place: 'free' | 'before-date';
  /** The more it says, the farther it reaches. */
  readonly rank: number;
}

const kind = (meaning: CueMeaning, rank: number, place: CueKind['place'] = 'free'): CueKind => ({
  meaning,
  rank,
  place,
});

const KINDS: readonly (readonly [CueKind, PhraseRow])[] = [
  [kind('on-sale', 0), release.ON_SALE],
  [kind('announced', 2), release.ANNOUNCED],
  [kind('distributed-until', 2), release.UNTIL],
  [kind('seen-by', 1), bounds.SEEN],
  [kind('seen-by', 1.5, 'before-date'), bounds.BY],
  [kind('not-before', 2.5), bounds.NOT_BEFORE],
  [kind('not-before', 1.5, 'before-date'), bounds.AFTER],
  [kind('unlisted-on', 3), bounds.UNLISTED],
  [kind('cover-date', 2), printed.COVER],
  [kind('label-year', 2), printed.LABEL],
  [kind('copyright-year', 2), printed.COPYRIGHT],
  [kind('printed-on', 1.5), printed.PRINTED],
  [kind('none', 0), printed.NO_CLAIM],
  [kind('none', 4), printed.DENIED],
];

const book = phraseBook(KINDS);
const sourceNouns = phraseBook([[true, SOURCE_NOUNS]] as const);
const touching = new Set(Object.values(TOUCHING).flatMap((words) => words.split(' ').map(plain)));

/** A cue word where it stands. */
export interface Cue {
  readonly from: number;
  readonly to: number;
  readonly meaning: CueMeaning;
  readonly rank: number;
  readonly place: CueKind['place'];
  readonly touching: boolean;
  readonly languages: readonly string[];
}

/** The cue words of a text, dates left out. */
export function cuesIn(tokens: readonly Token[], taken: (at: number) => boolean): Cue[] {
  const arrow = (at: number) =>
    tokens[at]!.norm === '>' && /^[-=]$/u.test(tokens[at - 1]?.norm ?? '') && !tokens[at]!.gap;
  const own = (match: { from: number; to: number }) =>
    !arrow(match.from) && (phraseAt(sourceNouns, tokens, match.from)?.to ?? 0) <= match.to;
  const inNoun = new Uint8Array(tokens.length);
  for (const noun of phrasesIn(sourceNouns, tokens)) {
    if (noun.to > noun.from + 1) inNoun.fill(1, noun.from + 1, noun.to);
  }
  const closed = (at: number) => inNoun[at] === 1 || taken(at);
  return phrasesIn(book, tokens, closed)
    .filter(own)
    .map((match) => {
      const single =
        match.to === match.from + 1
          ? tokens[match.from]!.norm
          : tokens
              .slice(match.from, match.to)
              .map((token) => token.norm)
              .join('');
      const mustTouch = match.value.place !== 'free' || touching.has(single);
      return { ...match.value, ...match, touching: mustTouch };
    });
}

import { opens, type PhraseBook, phraseAt, phraseBook } from '../phrases.ts';
import type { Token } from '../tokens.ts';
import { plain } from '../tokens.ts';
import { ERAS } from '../words/eras.ts';
import { MONTH_NAMES, WEAK_MONTHS } from '../words/months.ts';
import { PARTICLES } from '../words/qualifiers.ts';
import { HALF_WORDS, ORDINALS, QUARTER_WORDS, SEASONS, THIRDS } from '../words/times-of-year.ts';
import { WEEKDAY_NAMES } from '../words/weekdays.ts';

/** A month's name where it stands. */
export interface MonthFound {
  readonly month: number;
  readonly to: number;
  readonly languages: readonly string[];
  /** An everyday word in some other language. */
  readonly weak: boolean;
}

/** A book of names that are listed in order: of the months, of the days of the week. */
function numbered(rows: Readonly<Record<string, string>>): PhraseBook<number> {
  const lists = Object.entries(rows).flatMap(([language, row]) =>
    row
      .split(' ')
      .map((names, index) => [index + 1, { [language]: names.replaceAll('/', '|') }] as const),
  );
  return phraseBook(lists);
}

const months = numbered(MONTH_NAMES);
const weekdays = numbered(WEEKDAY_NAMES);
const weak = new Set(WEAK_MONTHS.map(plain));
const particles = phraseBook([[true, PARTICLES]] as const);

/** Seasons by their EDTF code. */
export const seasonBook = phraseBook(SEASONS);
/** Early, middle, late. */
export const thirdBook = phraseBook(THIRDS);
/** Words for a quarter and for a half of the year. */
export const partBook = phraseBook([
  ['quarter', QUARTER_WORDS],
  ['half', HALF_WORDS],
] as const);
/** First to fourth. */
export const ordinalBook = phraseBook(ORDINALS);

/** Whether a word can begin a date by what it names; single letters and era names may too. */
export function namesTime(token: Token): boolean {
  return (
    token.norm.length <= 2 ||
    token.norm in ERAS ||
    opens(months, token) ||
    opens(seasonBook, token) ||
    opens(thirdBook, token) ||
    opens(ordinalBook, token)
  );
}

/** Whether the text has a month's name that is an everyday word elsewhere. */
export function hasWeakMonth(tokens: readonly Token[]): boolean {
  return tokens.some((token) => weak.has(token.norm));
}

/** The month named at token `at`, its full stop included. */
export function monthAt(tokens: readonly Token[], at: number): MonthFound | undefined {
  if (tokens[at]?.kind !== 'word') return undefined;
  const found = phraseAt(months, tokens, at);
  if (!found) return undefined;
  const dot = tokens[found.to];
  const stopped = dot?.text === '.' && !dot.gap && tokens[at]!.norm.length <= 7;
  return {
    month: found.value,
    to: stopped ? found.to + 1 : found.to,
    languages: found.languages,
    weak: weak.has(tokens[at]!.norm),
  };
}

/** The day of the week named at token `at` (Monday is 1) and the token behind it. */
export function weekdayAt(
  tokens: readonly Token[],
  at: number,
): { weekday: number; to: number } | undefined {
  const found = phraseAt(weekdays, tokens, at);
  if (!found) return undefined;
  let to = found.to;
  while (tokens[to] !== undefined && /^[.,]$/u.test(tokens[to]!.text)) to += 1;
  return { weekday: found.value, to };
}

/** Steps over at most `most` particles such as `of`, `de` or `vuonna`. */
export function overParticles(tokens: readonly Token[], at: number, most = 2): number {
  let here = at;
  for (let step = 0; step < most; step += 1) {
    const found = phraseAt(particles, tokens, here);
    if (!found) break;
    here = found.to;
  }
  return here;
}

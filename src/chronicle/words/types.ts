import type { NameWords } from '../../catalogue/index.ts';
import type { Reading } from '../../dating/index.ts';

/** The languages in which an account is told. */
export const LANGUAGES = ['en', 'pt', 'ja', 'ko'] as const;
export type Language = (typeof LANGUAGES)[number];

/** How sure a statement is; `certaintyOf` holds the thresholds. */
export type Certainty = 'almost-certain' | 'most-probable' | 'probable' | 'perhaps';

/** How a language writes days. */
export interface CalendarWords {
  readonly day: (year: number, month: number, day: number) => string;
  readonly month: (year: number, month: number) => string;
  readonly year: (year: number) => string;
  readonly dayAlone: (day: number) => string;
  readonly monthDay: (month: number, day: number) => string;
  readonly monthAlone: (month: number) => string;
  /** The greater part comes first, so that of two days the second one is cut short. */
  readonly yearFirst: boolean;
}

/** Words for dates that are no single day. */
export interface VagueWords {
  readonly between: (from: string, to: string) => string;
  readonly run: (from: string, to: string) => string;
  readonly until: (day: string) => string;
  readonly since: (day: string) => string;
  readonly about: (day: string) => string;
  readonly perhaps: (day: string) => string;
  readonly anyDay: string;
}

/** The sentences in which facts are told; days, numbers and names come in as words. */
export interface SentenceWords {
  readonly onDay: (how: string, day: string, p: string) => string;
  readonly within: (from: string, to: string, p: string) => string;
  readonly withinOne: (when: string, p: string) => string;
  readonly leftBetween: (when: string) => string;
  readonly noLater: (day: string) => string;
  readonly noEarlier: (day: string) => string;
  readonly open: string;
  readonly eitherOr: (modes: readonly (readonly [when: string, p: string])[]) => string;
  readonly together: (others: string) => string;
  readonly first: (how: string, of: string, p: string) => string;
  readonly place: (place: string, of: string, how: string, after: string, p: string) => string;
  readonly placeStated: (place: string, of: string, after: string) => string;
  readonly slip: (source: string, value: string, explanation: string, p: string) => string;
  readonly mayBeRight: (source: string, value: string, p: string) => string;
  readonly labelYear: (source: string, value: string, years: number) => string;
  readonly counted: (service: string, copies: number, count: string, day: string) => string;
  readonly estimated: (
    service: string,
    count: string,
    interval: string,
    day: string,
    lumped: string,
  ) => string;
  readonly topRate: (count: string, share: string, interval: string) => string;
  readonly extant: (count: string, interval: string, seen: string, again: string) => string;
  readonly extantLower: (count: string, interval: string, seen: string, again: string) => string;
  readonly price: (what: string, amount: string, interval: string, sales: number) => string;
  readonly raw: string;
  readonly graded: (service: string, grade: string) => string;
}

/** All words of one language that an account needs to be told. */
export interface Phrases {
  readonly language: Language;
  /** For `Intl`. */
  readonly locale: string;
  readonly calendar: CalendarWords;
  readonly vague: VagueWords;
  readonly names: NameWords;
  readonly certainty: Readonly<Record<Certainty, string>>;
  readonly list: (items: readonly string[], last: 'and' | 'or') => string;
  /** A value with the day that it holds for. */
  readonly asOf: (value: string, day: string) => string;
  readonly interval: (low: string, high: string) => string;
  readonly units: Readonly<
    Record<'printings' | 'sources' | 'claims' | 'copies', (n: string, one: boolean) => string>
  >;
  readonly sentences: SentenceWords;
  /** How a claim came about, by its reading; `right` is as it says. */
  readonly readings: Readonly<Record<Reading, string>>;
  /** Properties of claims. */
  readonly properties: Readonly<Record<string, string>>;
}

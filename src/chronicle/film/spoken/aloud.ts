import { ENGLISH } from './english.ts';
import { JAPANESE } from './japanese.ts';
import { KOREAN } from './korean.ts';
import { PORTUGUESE } from './portuguese.ts';
import type { Rule } from './rules.ts';

const RULES: Readonly<Record<string, readonly Rule[]>> = {
  en: ENGLISH,
  pt: PORTUGUESE,
  ja: JAPANESE,
  ko: KOREAN,
};

/** Numbers within words of another script are said in its language. */
const WITHIN = [
  ['ko', /\d+ ?\p{Script=Hangul}+/gu],
  ['ja', /\d+[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]+/gu],
] as const;

/** A name and how it is said, such as that of a foreign printing with its `reading`. */
export interface Pronounced {
  readonly written: string;
  readonly said: string;
}

/**
 * A text as it is spoken: dates, years, shares, intervals, numbers and numbers of cards in words,
 * and foreign names by their readings. A bare number from 1000 to 2099 is taken for a year, one with
 * marks between its groups for a count (witnesses: `cldr:2022`, for Japanese `openjtalk:2018`). A
 * language without rules comes back as it is written, names apart.
 */
export function sayAloud(
  text: string,
  language: string,
  names: readonly Pronounced[] = [],
): string {
  const named = names.reduce((so, { written, said }) => so.replaceAll(written, said), text);
  const own = language.split('-')[0]!.toLowerCase();
  if (RULES[own] === undefined) return named;
  const mixed = WITHIN.filter(([other]) => other !== own).reduce(
    (so, [other, pattern]) => so.replace(pattern, (part) => said(part, other)),
    named,
  );
  return said(mixed, own);
}

function said(text: string, language: string): string {
  return (RULES[language] ?? []).reduce((so, [pattern, say]) => so.replace(pattern, say), text);
}

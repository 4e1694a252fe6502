import { ENGLISH } from './english.ts';
import { JAPANESE } from './japanese.ts';
import { KOREAN } from './korean.ts';
import { PORTUGUESE } from './portuguese.ts';
import type { Language, Phrases } from './types.ts';

const ALL: Readonly<Record<Language, Phrases>> = {
  en: ENGLISH,
  pt: PORTUGUESE,
  ja: JAPANESE,
  ko: KOREAN,
};

/** The words of a language. */
export function phrasesOf(language: Language): Phrases {
  return ALL[language];
}

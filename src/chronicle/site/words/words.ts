import type { Language } from '../../words/types.ts';
import { ENGLISH_SITE } from './english.ts';
import { JAPANESE_SITE } from './japanese.ts';
import { KOREAN_SITE } from './korean.ts';
import { PORTUGUESE_SITE } from './portuguese.ts';
import type { SiteWords } from './types.ts';

const ALL: Readonly<Record<Language, SiteWords>> = {
  en: ENGLISH_SITE,
  pt: PORTUGUESE_SITE,
  ja: JAPANESE_SITE,
  ko: KOREAN_SITE,
};

/** The interface words of the site in a language. */
export function siteWordsOf(language: Language): SiteWords {
  return ALL[language];
}

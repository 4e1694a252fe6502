import type { Language } from '../../words/types.ts';
import { ENGLISH_DOCUMENT } from './english.ts';
import { JAPANESE_DOCUMENT } from './japanese.ts';
import { KOREAN_DOCUMENT } from './korean.ts';
import { PORTUGUESE_DOCUMENT } from './portuguese.ts';
import type { DocumentWords } from './types.ts';

const ALL: Readonly<Record<Language, DocumentWords>> = {
  en: ENGLISH_DOCUMENT,
  pt: PORTUGUESE_DOCUMENT,
  ja: JAPANESE_DOCUMENT,
  ko: KOREAN_DOCUMENT,
};

/** The words of the document in a language. */
export function documentWordsOf(language: Language): DocumentWords {
  return ALL[language];
}

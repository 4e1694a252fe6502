import { revisionTitle } from '../site/revisions.ts';
import { siteWordsOf } from '../site/words/words.ts';
import { tellDay } from '../words/days.ts';
import { phrasesOf } from '../words/languages.ts';
import { tellingOf } from '../words/telling.ts';
import type { DocumentGround, Writer } from './types.ts';
import { documentWordsOf } from './words/words.ts';

/** Makes ready to write in a language. */
export function writerFor(ground: DocumentGround): Writer {
  const { account, language } = ground;
  return {
    ...ground,
    ...tellingOf(account, phrasesOf(language)),
    words: siteWordsOf(language),
    own: documentWordsOf(language),
  };
}

/** The day and the revision that a paper holds for, as far as they are known. */
export function holdsFor(writer: Writer): readonly string[] {
  const { account, phrases, words, revision } = writer;
  return [
    ...(account.asOf === null ? [] : [words.asOf(tellDay(phrases, account.asOf))]),
    ...(revision === null ? [] : [revisionTitle(revision, writer)]),
  ];
}

/**
 * Words a minute at which a text is read aloud unless told otherwise: the slow end of the 160 to 180
 * that are recommended for radio (`rodero:2012`), since a text full of days asks for time.
 */
export const READING_RATE = 160;

/** Letters of a language without spaces that take as long as an English word. Judgement, no source. */
const LETTERS_A_WORD: Readonly<Record<string, number>> = { ja: 3, ko: 2 };

/** How many words a spoken text counts for: words, or letters of Japanese and Korean by the word. */
export function wordsIn(spoken: string, language: string): number {
  const letters = LETTERS_A_WORD[language.split('-')[0] ?? ''];
  if (letters === undefined) return spoken.split(/[\s\-–—]+/).filter(isWord).length;
  return [...spoken].filter((letter) => isWord(letter)).length / letters;
}

/**
 * Seconds that a text takes at so many words a minute. Throws `RangeError` where the rate is not
 * above 0.
 */
export function readingTime(spoken: string, language: string, rate: number): number {
  if (!(rate > 0)) throw new RangeError(`words a minute must be above 0, not ${rate}`);
  return (wordsIn(spoken, language) / rate) * 60;
}

function isWord(text: string): boolean {
  return /[\p{L}\p{N}]/u.test(text);
}

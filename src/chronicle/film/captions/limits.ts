/**
 * Letters in a line of a caption: 37 in Latin script (`bbc:2018`); 13 full-width letters of Japanese
 * and 16 of Korean are common practice, no source. Full-width letters count twice.
 */
export const LINE_LENGTHS: Readonly<Record<string, number>> = { en: 37, pt: 37, ja: 26, ko: 32 };

/** Words a minute up to which captions can be read with ease (`bbc:2018`). */
export const FASTEST = 180;

/** Width of a text in half-width letters. */
export function widthOf(text: string): number {
  return [...text].reduce((sum, letter) => sum + (WIDE.test(letter) ? 2 : 1), 0);
}

const WIDE = /[\u1100-\u11ff\u3000-\u9fff\uac00-\ud7af\uf900-\ufaff\uff00-\uff60]/;

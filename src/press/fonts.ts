import {
  type CutFont,
  cutFonts,
  FONT_MAKERS,
  fontLicence,
  sha512,
  type Wish,
} from '../host/index.ts';
import type { Maker } from './made.ts';
import type { Files } from './told.ts';

/** The style sheet of a site's fonts, from its root. */
const SHEET = 'fonts/fonts.css';
const ASCII = String.fromCharCode(...Array.from({ length: 95 }, (_, i) => 32 + i));

/** The faces of the house on a site, and the CSS weights for which each stands. */
const FACES: readonly (Wish & { readonly weights: string })[] = [
  { family: 'archivo', weight: 400, weights: '400' },
  { family: 'archivo', weight: 600, weights: '500 700' },
  { family: 'newsreader', weight: 400, weights: '400' },
];

/** Puts the fonts for some texts among the files of a site. */
export async function siteFonts(maker: Maker, texts: Iterable<string>): Promise<void> {
  const letters = lettersIn(texts);
  const key = sha512(JSON.stringify([letters, FACES, FONT_MAKERS]));
  await maker.put(key, async () => ({ files: await fontFiles(letters), told: null }));
}

/** The letters beyond ASCII of some texts, sorted, each once. */
function lettersIn(texts: Iterable<string>): string {
  const letters = new Set<string>();
  for (const text of texts)
    for (const letter of text.match(/[^\p{ASCII}]/gu) ?? []) letters.add(letter);
  return [...letters].sort().join('');
}

/**
 * The house's fonts cut to the letters of a site, with their licences and a style sheet that names
 * them. Letters of Japanese and Korean come in one weight, and once for both families.
 *
 * @param letters beyond ASCII
 */
async function fontFiles(letters: string): Promise<Files> {
  const files: Files = new Map();
  const rules: string[] = [];
  let text = ASCII + letters;
  for (const { weights, ...wish } of FACES) {
    const { fonts } = await cutFonts(text, wish, { format: 'woff2', language: 'ja' });
    const own = rules.length === 0 ? fonts : fonts.filter(({ from }) => from === wish.family);
    for (const font of own) {
      const name = `${font.family.toLowerCase().replaceAll(' ', '-')}-${font.weight}.woff2`;
      files.set(`fonts/${name}`, font.bytes);
      rules.push(faceRule(font, name, weights));
    }
    text = own.flatMap((font) => (font.from === wish.family ? font.letters : [])).join('');
    for (const { from } of own) files.set(`fonts/OFL-${from}.txt`, await fontLicence(from));
  }
  files.set(SHEET, rules.join(''));
  return files;
}

function faceRule({ family, letters }: CutFont, name: string, weights: string): string {
  const called = family.replace(/ (latin-ext|vietnamese|\d+)$/, '');
  return `@font-face{font-family:"${called}";font-weight:${weights};font-display:swap;src:url(${name}) format("woff2");unicode-range:${rangesOf(letters)}}\n`;
}

/** Code points as runs, `U+20-7E,U+3042`. */
function rangesOf(letters: string): string {
  const codes = [...letters].map((letter) => letter.codePointAt(0) as number);
  const runs: [number, number][] = [];
  for (const code of codes.sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last && last[1] === code - 1) last[1] = code;
    else runs.push([code, code]);
  }
  const hex = (code: number) => code.toString(16).toUpperCase();
  return runs.map(([a, b]) => (a === b ? `U+${hex(a)}` : `U+${hex(a)}-${hex(b)}`)).join(',');
}

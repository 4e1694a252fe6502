import subsetFont from 'subset-font';
import { glyphsIn } from './glyphs.ts';
import { KEPT_NAMES, renamed } from './names.ts';
import { CALLED, type Family, type Slice, sliceBytes, slicesOf } from './slices.ts';

/** Letters that are asked for. */
export interface Wish {
  readonly family: 'archivo' | 'newsreader';
  /** CSS weight, 200 to 800. */
  readonly weight: number;
  readonly italic?: boolean;
}

/** A font that holds some letters of a text and no others. */
export interface CutFont {
  /** The family that it was cut from. */
  readonly from: Family;
  /** A name of its own; `Archivo`, `Archivo latin-ext`, `Noto Sans JP 80` … */
  readonly family: string;
  readonly weight: number;
  readonly italic: boolean;
  /** The letters of the text that it holds. */
  readonly letters: string;
  readonly bytes: Uint8Array;
}

/** The fonts for a text, in the order in which they are to be asked for a letter. */
export interface CutFonts {
  readonly fonts: readonly CutFont[];
  /** Letters of the text for which the house has no font; spaces and controls do not count. */
  readonly missing: string;
}

/** How fonts are cut. */
export interface CutOptions {
  /** `woff2` for pages, `ttf` for drawings and PDF. */
  readonly format: 'ttf' | 'woff2';
  /** BCP 47 tag of the text: Han letters take the shapes of Korean or, else, of Japanese. */
  readonly language?: string;
}

/** Weights that both families of the house have. */
const WEIGHTS = [200, 800] as const;
/** The house sets Archivo a little narrow. */
const WIDTH = 94;
/** What type needs to stand right, and figures of one width; no swashes or small capitals. */
const FEATURES = ['kern', 'mark', 'mkmk', 'ccmp', 'locl', 'liga', 'calt', 'tnum', 'lnum'];

/**
 * The house's fonts cut to the letters of a text, at one weight. What the family itself lacks is
 * taken from the fonts for Japanese and Korean. The same text gives the same bytes.
 *
 * @throws RangeError for a weight under 200 or over 800
 */
export async function cutFonts(text: string, wish: Wish, options: CutOptions): Promise<CutFonts> {
  const [least, most] = WEIGHTS;
  if (!(wish.weight >= least && wish.weight <= most))
    throw new RangeError(`a weight is from ${least} to ${most}, found ${wish.weight}`);
  const wanted = new Set(
    [...text].map((letter) => letter.codePointAt(0) as number).sort(ascending),
  );
  const fonts: CutFont[] = [];
  for (const slice of familiesFor(wish.family, options.language).flatMap(slicesOf)) {
    const own = [...wanted].filter((code) => slice.runs.some(([a, b]) => a <= code && code <= b));
    if (own.length === 0) continue;
    const cut = await cutSlice(slice, String.fromCodePoint(...own), wish, options.format);
    for (const letter of cut.letters) wanted.delete(letter.codePointAt(0) as number);
    if (cut.letters !== '') fonts.push(cut);
  }
  const missing = String.fromCodePoint(...wanted).replace(/[\s\p{C}]/gu, '');
  return { fonts, missing };
}

function familiesFor(family: Family, language = ''): readonly Family[] {
  const korean = /^ko\b/i.test(language);
  return korean
    ? [family, 'noto-sans-kr', 'noto-sans-jp']
    : [family, 'noto-sans-jp', 'noto-sans-kr'];
}

async function cutSlice(
  slice: Slice,
  text: string,
  { weight, italic = false }: Wish,
  format: CutOptions['format'],
): Promise<CutFont> {
  const source = await sliceBytes(slice, italic);
  const cut = (targetFormat: 'truetype' | 'woff2') =>
    subsetFont(source, text, {
      targetFormat,
      variationAxes: { wght: weight, ...(slice.family === 'archivo' ? { wdth: WIDTH } : {}) },
      keepFeatures: FEATURES,
      preserveNameIds: KEPT_NAMES,
      dropTables: ['STAT'],
    });
  const plain = await cut('truetype');
  const held = glyphsIn(plain);
  const called = CALLED[slice.family];
  const family = slice.name === 'latin' ? called : `${called} ${slice.name}`;
  return {
    from: slice.family,
    family,
    weight,
    italic,
    letters: [...text].filter((letter) => held.has(letter.codePointAt(0) as number)).join(''),
    bytes:
      format === 'ttf' ? renamed(plain, family, italic ? 'Italic' : 'Regular') : await cut('woff2'),
  };
}

function ascending(a: number, b: number): number {
  return a - b;
}

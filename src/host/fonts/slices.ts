import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';

/** The house's own letters, and those of Japanese and Korean to fall back on. */
export type Family = 'archivo' | 'newsreader' | 'noto-sans-jp' | 'noto-sans-kr';

/** A font file of a family with the letters for which it stands. */
export interface Slice {
  readonly family: Family;
  /** `latin`, `latin-ext`, or a number. */
  readonly name: string;
  /** First and last code point of each run. */
  readonly runs: readonly (readonly [number, number])[];
}

/** What the families are called. */
export const CALLED: Readonly<Record<Family, string>> = {
  archivo: 'Archivo',
  newsreader: 'Newsreader',
  'noto-sans-jp': 'Noto Sans JP',
  'noto-sans-kr': 'Noto Sans KR',
};

const LATIN = ['latin', 'latin-ext', 'vietnamese'];
const require = createRequire(import.meta.url);

const read = new Map<Family, readonly Slice[]>();

/** The slices of a family, Latin first, then as the package numbers them. */
export function slicesOf(family: Family): readonly Slice[] {
  const slices = read.get(family) ?? slicesIn(family);
  read.set(family, slices);
  return slices;
}

function slicesIn(family: Family): readonly Slice[] {
  const ranges = require(`@fontsource-variable/${family}/unicode.json`) as Record<string, string>;
  const rank = (name: string) => (LATIN.includes(name) ? LATIN.indexOf(name) : LATIN.length);
  return Object.entries(ranges)
    .map(([key, text]) => ({ family, name: key.replace(/[[\]]/g, ''), runs: runsIn(text) }))
    .sort((a, b) => rank(a.name) - rank(b.name));
}

/** The bytes of a slice, as the package has them. */
export async function sliceBytes({ family, name }: Slice, italic: boolean): Promise<Uint8Array> {
  const axes = family === 'archivo' ? 'wdth' : 'wght';
  const style = italic && !family.startsWith('noto') ? 'italic' : 'normal';
  const file = `@fontsource-variable/${family}/files/${family}-${name}-${axes}-${style}.woff2`;
  return readFile(require.resolve(file));
}

/** Runs written `U+0041-005A,U+20AC`. */
function runsIn(text: string): (readonly [number, number])[] {
  return text.split(',').map((run) => {
    const [first = 0, last = first] = run
      .replace('U+', '')
      .split('-')
      .map((code) => Number.parseInt(code, 16));
    return [first, last];
  });
}

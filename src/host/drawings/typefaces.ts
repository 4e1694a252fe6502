import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { cutFonts } from '../fonts/cut.ts';
import { advancesOf } from './advances.ts';

/** The house's fonts for some letters, ready to draw with. */
export interface Typefaces {
  /** Width of a text in pixels, set at so many; kerning is not counted. */
  readonly measure: (text: string, face: 'sans' | 'serif', size: number) => number;
  /** Files for `pngOf`. */
  readonly files: readonly string[];
  /** Letters for which the house has no font. */
  readonly missing: string;
  /** Removes the files. */
  remove(): Promise<void>;
}

const FACES = [
  ['sans', { family: 'archivo', weight: 500 }],
  ['serif', { family: 'newsreader', weight: 400 }],
] as const;

/** Cuts the house's fonts to some letters, in a folder that is removed by `remove`. */
export async function typefacesFor(letters: string, language: string): Promise<Typefaces> {
  const folder = await mkdtemp(join(tmpdir(), 'printlore-fonts-'));
  const files: string[] = [];
  const measures = new Map<string, (text: string) => number>();
  let missing = '';
  for (const [face, wish] of FACES) {
    const cut = await cutFonts(letters, wish, { format: 'ttf', language });
    missing = cut.missing;
    measures.set(face, advancesOf(cut.fonts.map(({ bytes }) => bytes)));
    for (const { bytes } of cut.fonts) {
      const file = join(folder, `${files.length}.ttf`);
      await writeFile(file, bytes);
      files.push(file);
    }
  }
  return {
    files,
    missing,
    measure: (text, face, size) => (measures.get(face)?.(text) ?? 0) * size,
    remove: () => rm(folder, { recursive: true, force: true }),
  };
}

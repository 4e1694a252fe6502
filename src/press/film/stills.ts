import {
  type Account,
  type Language,
  lettersOf,
  type Script,
  stillsOf,
} from '../../chronicle/index.ts';
import { pngOf, typefacesFor } from '../../host/index.ts';
import type { Files, Told } from '../told.ts';
import { stillPictures } from './pictures.ts';

/** Width of half a letter, before the fonts are there. */
const ROUGH = (text: string, _face: string, size: number) => text.length * size * 0.5;

/** Draws the stills and overlays of the scenes of a script into `files`, and answers their names. */
export async function stillsInto(
  files: Files,
  folder: string,
  account: Account,
  script: Script,
  told: Told,
): Promise<readonly string[]> {
  const printings = new Set(script.scenes.map(({ id }) => id));
  told.begins('Reading the pictures', 0.5);
  const pictures = await stillPictures(folder, account, printings, told);
  const wish = { language: script.language as Language, printings, pictures };
  const letters = lettersOf(stillsOf(account, { ...wish, measure: ROUGH }));
  const faces = await typefacesFor(`${letters}…`, script.language);
  if (faces.missing !== '') told.leaves(`No font has these letters: ${faces.missing}`);
  try {
    const stills = stillsOf(account, { ...wish, measure: faces.measure });
    for (const [i, { file, svg, frame }] of stills.entries()) {
      told.begins(`Still ${i + 1} of ${stills.length}`, 0.55 + (0.45 * i) / stills.length);
      files.set(`${file}.png`, pngOf(svg, frame.width, faces.files));
    }
    return stills.map(({ file }) => `${file}.png`);
  } finally {
    await faces.remove();
  }
}

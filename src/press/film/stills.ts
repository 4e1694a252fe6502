import {
  type Account,
  type Language,
  lettersOf,
  type Script,
  type Still,
  stillsOf,
} from '../../chronicle/index.ts';
import {
  DRAWING_MAKERS,
  FONT_MAKERS,
  pngOf,
  sha512,
  type Typefaces,
  typefacesFor,
} from '../../host/index.ts';
import { withHands } from '../hands/hands.ts';
import { makerInto } from '../made.ts';
import type { Making } from '../pictures.ts';
import { type Files, shelfOf, type Told } from '../told.ts';
import { stillPictures } from './pictures.ts';

/** Width of half a letter, before the fonts are there. */
const ROUGH = (text: string, _face: string, size: number) => text.length * size * 0.5;

/** Stills and overlays of the scenes of a script, for a preview. */
export async function stillViews(
  folder: string,
  account: Account,
  script: Script,
  told: Told,
): Promise<Files> {
  const files: Files = new Map();
  const shelf = shelfOf(files);
  const maker = await makerInto(shelf, null);
  await withHands((hands) => stillsInto(folder, account, script, { shelf, maker, hands, told }));
  return files;
}

/** Draws the stills and overlays of the scenes of a script, and answers their names. */
export async function stillsInto(
  folder: string,
  account: Account,
  script: Script,
  making: Making,
): Promise<readonly string[]> {
  const { told, hands } = making;
  const printings = new Set(script.scenes.map(({ id }) => id));
  told.begins('Reading the pictures', 0.5);
  const pictures = await stillPictures(folder, account, printings, making);
  const wish = { language: script.language as Language, printings, pictures };
  const letters = lettersOf(stillsOf(account, { ...wish, measure: ROUGH }));
  const faces = await typefacesFor(`${letters}…`, script.language);
  if (faces.missing !== '') told.leaves(`No font has these letters: ${faces.missing}`);
  try {
    const stills = stillsOf(account, { ...wish, measure: faces.measure });
    return await hands.all(stills, async (still, i) => {
      told.begins(`Still ${i + 1} of ${stills.length}`, 0.55 + (0.45 * i) / stills.length);
      return await drawn(still, script.language, faces, making);
    });
  } finally {
    await faces.remove();
  }
}

/** Draws a still, or takes it over. Each letter is the same whatever others a font was cut to. */
async function drawn(
  { file, svg, frame }: Still,
  language: string,
  { files }: Typefaces,
  { maker }: Making,
): Promise<string> {
  const name = `${file}.png`;
  const key = sha512(JSON.stringify([name, svg, language, FONT_MAKERS, DRAWING_MAKERS]));
  await maker.put(key, async () => {
    const png = await pngOf(svg, frame.width, files);
    return { files: new Map([[name, png]]), told: null };
  });
  return name;
}

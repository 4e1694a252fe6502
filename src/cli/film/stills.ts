import {
  type Account,
  type Language,
  lettersOf,
  type Script,
  stillsOf,
} from '../../chronicle/index.ts';
import { pngOf, typefacesFor } from '../../host/index.ts';
import type { Terminal } from '../terminal.ts';
import { stillPictures } from './pictures.ts';

/** Writes one file of the kit. */
export type Write = (name: string, content: string | Uint8Array) => Promise<void>;

/** Width of half a letter, before the fonts are there. */
const ROUGH = (text: string, _face: string, size: number) => text.length * size * 0.5;

/** Draws the stills and overlays of the scenes of a script, and answers their names. */
export async function writeStills(
  folder: string,
  account: Account,
  script: Script,
  write: Write,
  terminal: Terminal,
): Promise<readonly string[]> {
  const printings = new Set(script.scenes.map(({ id }) => id));
  const pictures = await stillPictures(folder, account, printings, terminal);
  const wish = { language: script.language as Language, printings, pictures };
  const letters = lettersOf(stillsOf(account, { ...wish, measure: ROUGH }));
  const faces = await typefacesFor(`${letters}…`, script.language);
  if (faces.missing !== '') terminal.say(`No font has these letters: ${faces.missing}\n`);
  try {
    const stills = stillsOf(account, { ...wish, measure: faces.measure });
    for (const { file, svg, frame } of stills)
      await write(`${file}.png`, pngOf(svg, frame.width, faces.files));
    return stills.map(({ file }) => `${file}.png`);
  } finally {
    await faces.remove();
  }
}

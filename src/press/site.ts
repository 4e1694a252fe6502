import { join } from 'node:path';
import {
  type Account,
  fileNameOf,
  LANGUAGES,
  type SitePicture,
  siteOf,
} from '../chronicle/index.ts';
import { PictureFault, publishedPicture } from '../host/index.ts';
import type { Files, Told } from './told.ts';

/** Widths in pixels at which pictures are published. */
const WIDTHS = [320, 960];

/**
 * The site of an account as files. A picture that is none is named and left out.
 *
 * @param folder of the dossier, where the pictures are
 */
export async function siteFiles(folder: string, account: Account, told: Told): Promise<Files> {
  const files: Files = new Map();
  const pictures = await picturesInto(files, folder, account, told);
  told.begins('Writing the pages', 0.9);
  const ground = { account, languages: LANGUAGES, pictures, downloads: [] };
  for (const [name, text] of siteOf(ground)) files.set(name, text);
  return files;
}

async function picturesInto(
  files: Files,
  folder: string,
  account: Account,
  told: Told,
): Promise<ReadonlyMap<string, SitePicture>> {
  const made = new Map<string, SitePicture>();
  const shown = [...account.printings, ...account.counterfeits].flatMap(({ id, pictures }) =>
    pictures.map(({ file }, i) => ({ file, stem: `${fileNameOf(id)}-${i + 1}` })),
  );
  for (const [i, { file, stem }] of shown.entries()) {
    told.begins(`Picture ${i + 1} of ${shown.length}`, 0.5 + (0.4 * i) / shown.length);
    try {
      const sizes = await publishedPicture(join(folder, file), WIDTHS);
      for (const { width, webp, jpg } of sizes) {
        files.set(`pictures/${stem}-${width}.webp`, webp);
        files.set(`pictures/${stem}-${width}.jpg`, jpg);
      }
      made.set(file, { stem, sizes: sizes.map(({ width, height }) => ({ width, height })) });
    } catch (error) {
      if (!(error instanceof PictureFault)) throw error;
      told.leaves(`${error.message} It is left out.`);
    }
  }
  return made;
}

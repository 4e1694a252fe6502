import { join } from 'node:path';
import {
  type Account,
  type Download,
  type DownloadKind,
  fileNameOf,
  LANGUAGES,
  type SitePicture,
  siteOf,
  type ToldRevision,
} from '../chronicle/index.ts';
import type { Dossier } from '../dossier/index.ts';
import { PictureFault, publishedPicture } from '../host/index.ts';
import { downloadFiles } from './downloads.ts';
import type { Files, Told } from './told.ts';

/** Widths in pixels at which pictures are published. */
const WIDTHS = [320, 960];

/** What stands on a site beside its account. */
export interface Beside {
  /** The revision that the site is of, and those before it, newest first. */
  readonly history: readonly ToldRevision[];
  readonly downloads: Files;
}

/**
 * The site of an account as files. A picture that is none is named and left out.
 *
 * @param folder of the dossier, where the pictures are
 */
export async function siteFiles(
  folder: string,
  account: Account,
  told: Told,
  { history, downloads }: Beside = { history: [], downloads: new Map() },
): Promise<Files> {
  const files: Files = new Map();
  const pictures = await picturesInto(files, folder, account, told);
  told.begins('Writing the pages', 0.9);
  const ground = { account, languages: LANGUAGES, pictures, history };
  const site = siteOf({ ...ground, downloads: [...downloads].map(downloadOf) });
  for (const [name, content] of [...downloads, ...site]) files.set(name, content);
  return files;
}

/** The whole site of an account: pages, pictures, and what readers may download. */
export async function publishedFiles(
  folder: string,
  dossier: Dossier,
  account: Account,
  history: readonly ToldRevision[],
  told: Told,
): Promise<Files> {
  const downloads = downloadFiles(dossier, { prices: account.currency !== null }, history);
  return await siteFiles(folder, account, told, { history, downloads });
}

const KINDS: Readonly<Record<string, DownloadKind>> = {
  'research.zip': 'research',
  'data.json': 'json',
  'sources.csl.json': 'csl',
  'annotations.json': 'annotations',
  'revisions.atom': 'feed',
};

function downloadOf([href, content]: readonly [string, Uint8Array | string]): Download {
  return { href, kind: KINDS[href] ?? 'table', bytes: Buffer.byteLength(content) };
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

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
import { allDocuments } from './documents.ts';
import { downloadFiles } from './downloads.ts';
import type { Files, Told } from './told.ts';

/** Widths in pixels at which pictures are published. */
const WIDTHS = [320, 960];

/** What a site is published with. */
export interface PublishedWith {
  /** The revision that it is of, and those before it, newest first. */
  readonly history: readonly ToldRevision[];
  /** With account, key and checklist as PDF, which take some seconds. */
  readonly documents: boolean;
}

/**
 * The whole site of an account as files: pages, pictures, and what readers may download. A picture
 * that is none is named and left out.
 *
 * @param folder of the dossier, where the pictures are
 */
export async function publishedFiles(
  folder: string,
  dossier: Dossier,
  account: Account,
  { history, documents }: PublishedWith,
  told: Told,
): Promise<Files> {
  const files: Files = new Map();
  const pictures = await picturesInto(files, folder, account, told);
  const [revision = null] = history;
  const from = { dossier, account, revision, pictures, files };
  const downloads: Files = new Map([
    ...(documents ? await allDocuments(from, told) : []),
    ...downloadFiles(dossier, { prices: account.currency !== null }, history),
  ]);
  told.begins('Writing the pages', 0.97);
  const ground = { account, languages: LANGUAGES, pictures, history };
  const site = siteOf({ ...ground, downloads: [...downloads].map(downloadOf) });
  for (const [name, content] of [...downloads, ...site]) files.set(name, content);
  return files;
}

const KINDS: Readonly<Record<string, DownloadKind>> = {
  'research.zip': 'research',
  'data.json': 'json',
  'sources.csl.json': 'csl',
  'annotations.json': 'annotations',
  'revisions.atom': 'feed',
};

const DOCUMENTS = ['account', 'key', 'checklist'] as const;

function downloadOf([href, content]: readonly [string, Uint8Array | string]): Download {
  const bytes = Buffer.byteLength(content);
  for (const language of LANGUAGES) {
    const kind = DOCUMENTS.find((name) => href === `${language}/${name}.pdf`);
    if (kind) return { href, kind, bytes, language };
  }
  return { href, kind: KINDS[href] ?? 'table', bytes };
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
    told.begins(`Picture ${i + 1} of ${shown.length}`, 0.5 + (0.3 * i) / shown.length);
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

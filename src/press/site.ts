import {
  type Account,
  type Download,
  type DownloadKind,
  LANGUAGES,
  siteOf,
  type ToldRevision,
} from '../chronicle/index.ts';
import type { Dossier } from '../dossier/index.ts';
import { downloadFiles } from './downloads.ts';
import { siteFonts } from './fonts.ts';
import { MADE, makerInto } from './made.ts';
import { sitePictures } from './pictures.ts';
import type { Files, Told } from './told.ts';

/** What stands on a site beside its account. */
export interface Beside {
  /** The revision that the site is of, and those before it, newest first. */
  readonly history: readonly ToldRevision[];
  readonly downloads: Files;
  /** Folder of an earlier site, of which pictures and fonts are taken over where they hold. */
  readonly earlier?: string;
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
  { history, downloads, earlier }: Beside = { history: [], downloads: new Map() },
): Promise<Files> {
  const files: Files = new Map();
  const maker = await makerInto(files, earlier ?? null);
  const pictures = await sitePictures(maker, folder, account, told);
  told.begins('Writing the pages', 0.9);
  const ground = { account, languages: LANGUAGES, pictures, history };
  const site = siteOf({ ...ground, downloads: [...downloads].map(downloadOf) });
  for (const [name, content] of [...downloads, ...site]) files.set(name, content);
  told.begins('Cutting the fonts', 0.95);
  await siteFonts(maker, site.values());
  files.set(MADE, maker.notes());
  return files;
}

/**
 * The whole site of an account: pages, pictures, fonts, and what readers may download.
 *
 * @param earlier folder of an earlier site, of which pictures and fonts are taken over where they hold
 */
export async function publishedFiles(
  folder: string,
  dossier: Dossier,
  account: Account,
  history: readonly ToldRevision[],
  told: Told,
  earlier?: string,
): Promise<Files> {
  const downloads = downloadFiles(dossier, { prices: account.currency !== null }, history);
  return await siteFiles(folder, account, told, {
    history,
    downloads,
    ...(earlier === undefined ? {} : { earlier }),
  });
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

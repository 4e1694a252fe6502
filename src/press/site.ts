import {
  type Account,
  type Download,
  type DownloadKind,
  LANGUAGES,
  siteOf,
  type ToldRevision,
} from '../chronicle/index.ts';
import type { Dossier } from '../dossier/index.ts';
import { documentsInto } from './documents.ts';
import { downloadFiles } from './downloads.ts';
import { siteFonts } from './fonts.ts';
import { MADE, makerInto } from './made.ts';
import { sitePictures } from './pictures.ts';
import type { Files, Told } from './told.ts';

/** What a site is published with. */
export interface PublishedWith {
  /** The revision that it is of, and those before it, newest first. */
  readonly history: readonly ToldRevision[];
  /** With account, key and checklist as PDF, which take some seconds. */
  readonly documents: boolean;
  /** Folder of an earlier site, of which pictures and fonts are taken over where they hold. */
  readonly earlier?: string;
}

/**
 * The whole site of an account: pages, pictures, fonts, documents, and what readers may download. A
 * picture that is none is named and left out.
 *
 * @param folder of the dossier, where the pictures are
 */
export async function publishedFiles(
  folder: string,
  dossier: Dossier,
  account: Account,
  { history, documents, earlier }: PublishedWith,
  told: Told,
): Promise<Files> {
  const files: Files = new Map();
  const maker = await makerInto(files, earlier ?? null);
  const pictures = await sitePictures(maker, folder, account, told);
  const [revision = null] = history;
  const from = { dossier, account, revision };
  const papers = documents ? await documentsInto(maker, from, { pictures, files }, told) : [];
  const downloads = downloadFiles(dossier, { prices: account.currency !== null }, history);
  told.begins('Writing the pages', 0.97);
  const ground = { account, languages: LANGUAGES, pictures, history };
  const offered = [...papers, ...downloads.keys()];
  for (const [name, content] of downloads) files.set(name, content);
  const site = siteOf({ ...ground, downloads: offered.map((name) => downloadOf(name, files)) });
  for (const [name, content] of site) files.set(name, content);
  told.begins('Cutting the fonts', 0.98);
  await siteFonts(maker, site.values());
  files.set(MADE, maker.notes());
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

function downloadOf(href: string, files: Files): Download {
  const bytes = Buffer.byteLength(files.get(href) ?? '');
  for (const language of LANGUAGES) {
    const kind = DOCUMENTS.find((name) => href === `${language}/${name}.pdf`);
    if (kind) return { href, kind, bytes, language };
  }
  return { href, kind: KINDS[href] ?? 'table', bytes };
}

import {
  type Download,
  type DownloadKind,
  LANGUAGES,
  siteOf,
  type ToldRevision,
} from '../chronicle/index.ts';
import { type DocumentsFrom, documentsInto } from './documents.ts';
import { downloadFiles } from './downloads.ts';
import { siteFonts } from './fonts.ts';
import { withHands } from './hands/hands.ts';
import { MADE, makerInto } from './made.ts';
import { sitePictures } from './pictures.ts';
import { type Files, type Shelf, shelfOf, type Told } from './told.ts';

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
 * Puts the whole site of an account on a shelf: pages, pictures, fonts, documents, and what readers
 * may download. A picture that is none is named and left out.
 *
 * @param folder of the dossier, where the pictures are
 * @returns how many files it has
 */
export async function publishOn(
  shelf: Shelf,
  folder: string,
  { dossier, account }: Omit<DocumentsFrom, 'revision'>,
  { history, documents, earlier }: PublishedWith,
  told: Told,
): Promise<number> {
  const maker = await makerInto(shelf, earlier ?? null);
  const { pictures, papers } = await withHands(async (hands) => {
    const making = { shelf, maker, hands, told };
    const made = await sitePictures(folder, account, making);
    const [revision = null] = history;
    const from = { dossier, account, revision };
    return { pictures: made, papers: documents ? await documentsInto(from, made, making) : [] };
  });
  const files: Files = downloadFiles(dossier, { prices: account.currency !== null }, history);
  told.begins('Writing the pages', 0.97);
  const offered = [
    ...papers.map((name) => downloadOf(name, maker.sizes.get(name) ?? 0)),
    ...[...files].map(([name, content]) => downloadOf(name, Buffer.byteLength(content))),
  ];
  const site = siteOf({ account, languages: LANGUAGES, pictures, history, downloads: offered });
  told.begins('Cutting the fonts', 0.98);
  await siteFonts(maker, site.values());
  for (const [name, content] of site) files.set(name, content);
  files.set(MADE, maker.notes());
  for (const [name, content] of files) await shelf.write(name, content);
  return maker.sizes.size + files.size;
}

/** The files of a site for a preview, without documents. */
export async function siteFiles(
  folder: string,
  of: Omit<DocumentsFrom, 'revision'>,
  history: readonly ToldRevision[],
  told: Told,
): Promise<Files> {
  const files: Files = new Map();
  await publishOn(shelfOf(files), folder, of, { history, documents: false }, told);
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

function downloadOf(href: string, bytes: number): Download {
  for (const language of LANGUAGES) {
    const kind = DOCUMENTS.find((name) => href.startsWith(`${language}/${name}`));
    if (kind) return { href, kind, bytes, language };
  }
  return { href, kind: KINDS[href] ?? 'table', bytes };
}

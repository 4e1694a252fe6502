import { type IdentificationKey, identificationKey } from '../catalogue/index.ts';
import {
  type Account,
  accountPaper,
  checklistPaper,
  type DocumentGround,
  FITS,
  keyPaper,
  LANGUAGES,
  type Language,
  type Paper,
  type SitePicture,
  type ToldRevision,
} from '../chronicle/index.ts';
import { type Dossier, knownOf } from '../dossier/index.ts';
import { PAGE_MAKERS, pageDrawings, pdfOf, sha512 } from '../host/index.ts';
import { type Maker, makerInto } from './made.ts';
import { sitePictures } from './pictures.ts';
import type { Files, Told } from './told.ts';

/** A document, by its name in the site. */
export interface Document {
  readonly name: string;
  /** The same in several settings, the roomiest first; one that takes one page is chosen. */
  readonly settings: readonly Paper[];
}

/**
 * The account, the key and the checklist of a language. Key and checklist are to take one page where
 * they fit it at a size that can be read.
 *
 * @param key without traits that stay at home
 */
export function documentsOf(ground: DocumentGround, key: IdentificationKey): readonly Document[] {
  const named = (name: string) => `${ground.language}/${name}.pdf`;
  return [
    { name: named('account'), settings: [accountPaper(ground)] },
    { name: named('key'), settings: FITS.map((fit) => keyPaper(key, ground, fit)) },
    { name: named('checklist'), settings: FITS.map((fit) => checklistPaper(ground, fit)) },
  ];
}

/** A document in the roomiest setting that takes one page; where none does, in the densest. */
export async function settled<T extends { readonly pages: number }>(
  { settings: [roomiest, ...denser] }: Document,
  set: (paper: Paper) => Promise<T>,
): Promise<T> {
  let made = await set(roomiest as Paper);
  for (const next of denser) {
    if (made.pages === 1) break;
    made = await set(next);
  }
  return made;
}

/** What the documents are made from. */
export interface DocumentsFrom {
  readonly dossier: Dossier;
  readonly account: Account;
  readonly revision: ToldRevision | null;
}

/** Puts the documents of every language among the files of a site, and answers their names. */
export async function documentsInto(
  maker: Maker,
  from: DocumentsFrom,
  shown: Shown,
  told: Told,
): Promise<readonly string[]> {
  const { names, bytes } = picturesOnPaper(shown);
  const hashes = [...bytes].map(([name, picture]) => [name, sha512(picture)]);
  const key = publishedKey(from);
  const made: string[] = [];
  for (const [i, language] of LANGUAGES.entries()) {
    told.begins(`Document ${i + 1} of ${LANGUAGES.length}`, 0.8 + (0.16 * i) / LANGUAGES.length);
    for (const document of documentsOf({ ...from, language, pictures: names }, key)) {
      const { name, settings } = document;
      const of = sha512(JSON.stringify([name, PAGE_MAKERS, hashes, settings]));
      await maker.put(of, async () => {
        const { bytes: pdf } = await settled(document, (paper) => pdfOf(paper, bytes));
        return { files: new Map([[name, pdf]]), told: null };
      });
      made.push(name);
    }
  }
  return made;
}

/** Drawings of the pages of a language's documents, `en/key-1.svg`. */
export async function documentViews(
  folder: string,
  from: DocumentsFrom,
  language: Language,
  told: Told,
): Promise<Files> {
  const files: Files = new Map();
  const pictures = await sitePictures(await makerInto(files, null), folder, from.account, told);
  const { names, bytes } = picturesOnPaper({ pictures, files });
  const views: Files = new Map();
  for (const document of documentsOf({ ...from, language, pictures: names }, publishedKey(from))) {
    const { drawings } = await settled(document, (paper) => pageDrawings(paper, bytes));
    const nameOf = (page: number) => document.name.replace('.pdf', `-${page + 1}.svg`);
    for (const [page, svg] of drawings.entries()) views.set(nameOf(page), svg);
  }
  return views;
}

function publishedKey({ dossier, account }: DocumentsFrom): IdentificationKey {
  return identificationKey(knownOf(dossier, account.asOf ?? '', false), 'published');
}

/** Pictures of a site, and its files so far, among which they are. */
interface Shown {
  readonly pictures: ReadonlyMap<string, SitePicture>;
  readonly files: Files;
}

/** Pictures at the size that a page has room for. */
function picturesOnPaper({ pictures, files }: Shown) {
  const names = new Map<string, string>();
  const bytes = new Map<string, Uint8Array>();
  for (const [file, { stem, sizes }] of pictures) {
    const name = `pictures/${stem}-${sizes[0]?.width ?? 0}.jpg`;
    const picture = files.get(name);
    if (!(picture instanceof Uint8Array)) continue;
    names.set(file, name);
    bytes.set(name, picture);
  }
  return { names, bytes };
}

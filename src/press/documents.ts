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
  volumesOf,
} from '../chronicle/index.ts';
import { type Dossier, knownOf } from '../dossier/index.ts';
import { PAGE_MAKERS, pageDrawings, sha512 } from '../host/index.ts';
import { withHands } from './hands/hands.ts';
import { makerInto } from './made.ts';
import { type Making, sitePictures } from './pictures.ts';
import { settled } from './settled.ts';
import { type Files, type Shelf, shelfOf, type Told } from './told.ts';

/** A document, by its name in the site. */
export interface Document {
  readonly name: string;
  /** The same in several settings, the roomiest first; one that takes one page is chosen. */
  readonly settings: readonly Paper[];
}

/**
 * The account, in volumes where it is long, the key and the checklist of a language. Key and
 * checklist are to take one page where they fit it at a size that can be read.
 *
 * @param key without traits that stay at home
 */
export function documentsOf(ground: DocumentGround, key: IdentificationKey): readonly Document[] {
  const named = (name: string) => `${ground.language}/${name}.pdf`;
  const volumes = volumesOf(accountPaper(ground));
  return [
    ...volumes.map((paper, k) => ({
      name: named(volumes.length === 1 ? 'account' : `account-${k + 1}`),
      settings: [paper],
    })),
    { name: named('key'), settings: FITS.map((fit) => keyPaper(key, ground, fit)) },
    { name: named('checklist'), settings: FITS.map((fit) => checklistPaper(ground, fit)) },
  ];
}

/** What the documents are made from. */
export interface DocumentsFrom {
  readonly dossier: Dossier;
  readonly account: Account;
  readonly revision: ToldRevision | null;
}

/** Puts the documents of every language on the shelf of a site, and answers their names. */
export async function documentsInto(
  from: DocumentsFrom,
  pictures: ReadonlyMap<string, SitePicture>,
  { shelf, maker, hands, told }: Making,
): Promise<readonly string[]> {
  const { names, bytes } = await picturesOnPaper(pictures, shelf);
  const hashes = [...bytes].map(([name, picture]) => [name, sha512(picture)]);
  const key = publishedKey(from);
  const documents = LANGUAGES.flatMap((language) =>
    documentsOf({ ...from, language, pictures: names }, key),
  );
  let begun = 0;
  const put = async ({ name, settings }: Document) => {
    const share = begun++ / documents.length;
    told.begins(`Document ${begun} of ${documents.length}`, 0.8 + 0.16 * share);
    const of = sha512(JSON.stringify([name, PAGE_MAKERS, hashes, settings]));
    await maker.put(of, async () => {
      const pdf = await hands.make('document', { settings, pictures: bytes });
      return { files: new Map([[name, pdf]]), told: null };
    });
  };
  // Setting a long account takes much memory, so they follow each other, with the rest beside them.
  const isAccount = ({ name }: Document) => name.includes('/account');
  const accounts = documents.filter(isAccount);
  const others = documents.filter((document) => !isAccount(document));
  await hands.all([accounts, others], async (some) => {
    for (const document of some) await put(document);
  });
  return documents.map(({ name }) => name);
}

/** Drawings of the pages of a language's documents, `en/key-1.svg`. */
export async function documentViews(
  folder: string,
  from: DocumentsFrom,
  language: Language,
  told: Told,
): Promise<Files> {
  const shelf = shelfOf(new Map());
  const maker = await makerInto(shelf, null);
  const pictures = await withHands((hands) =>
    sitePictures(folder, from.account, { shelf, maker, hands, told }),
  );
  const { names, bytes } = await picturesOnPaper(pictures, shelf);
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

/** Pictures of a site at the size that a page has room for. */
async function picturesOnPaper(pictures: ReadonlyMap<string, SitePicture>, shelf: Shelf) {
  const names = new Map<string, string>();
  const bytes = new Map<string, Uint8Array>();
  for (const [file, { stem, sizes }] of pictures) {
    const name = `pictures/${stem}-${sizes[0]?.width ?? 0}.jpg`;
    names.set(file, name);
    bytes.set(name, await shelf.read(name));
  }
  return { names, bytes };
}

import { type IdentificationKey, identificationKey } from '../catalogue/index.ts';
import {
  type Account,
  accountPaper,
  checklistPaper,
  type DocumentGround,
  FITS,
  type Fit,
  keyPaper,
  LANGUAGES,
  type Paper,
  type SitePicture,
  type ToldRevision,
} from '../chronicle/index.ts';
import { type Dossier, knownOf } from '../dossier/index.ts';
import { type PdfMade, pdfOf } from '../host/index.ts';
import type { Files, Told } from './told.ts';

/**
 * The account, the key and the checklist of a language as PDF, by their names in the site. Key and
 * checklist take one page where they fit it at a size that can be read.
 *
 * @param key without traits that stay at home
 * @param pictures bytes by the names that the ground gives them
 */
export async function documentsOf(
  ground: DocumentGround,
  key: IdentificationKey,
  pictures: ReadonlyMap<string, Uint8Array>,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const made = {
    account: await pdfOf(accountPaper(ground), pictures),
    key: await fitted((fit) => keyPaper(key, ground, fit)),
    checklist: await fitted((fit) => checklistPaper(ground, fit)),
  };
  return new Map(
    Object.entries(made).map(([name, { bytes }]) => [`${ground.language}/${name}.pdf`, bytes]),
  );
}

/** The roomiest setting that takes one page; where none does, the densest one. */
async function fitted(paperAt: (fit: Fit) => Paper): Promise<PdfMade> {
  const [fit, ...denser] = FITS;
  let made = await pdfOf(paperAt(fit));
  for (const next of denser) {
    if (made.pages === 1) break;
    made = await pdfOf(paperAt(next));
  }
  return made;
}

/** What the documents of all languages are made from. */
export interface DocumentsFrom {
  readonly dossier: Dossier;
  readonly account: Account;
  readonly revision: ToldRevision | null;
  /** Pictures of the site, and its files so far, among which they are. */
  readonly pictures: ReadonlyMap<string, SitePicture>;
  readonly files: Files;
}

/** The documents of every language, by their names in the site. */
export async function allDocuments(from: DocumentsFrom, told: Told): Promise<Files> {
  const { dossier, account, revision } = from;
  const { names, bytes } = picturesOnPaper(from);
  const key = identificationKey(knownOf(dossier, account.asOf ?? '', false), 'published');
  const documents: Files = new Map();
  for (const [i, language] of LANGUAGES.entries()) {
    told.begins(`Document ${i + 1} of ${LANGUAGES.length}`, 0.8 + (0.16 * i) / LANGUAGES.length);
    const ground = { account, language, revision, pictures: names };
    for (const [name, pdf] of await documentsOf(ground, key, bytes)) documents.set(name, pdf);
  }
  return documents;
}

/** Pictures at the size that a page has room for. */
function picturesOnPaper({ pictures, files }: DocumentsFrom) {
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

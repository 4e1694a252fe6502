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
import { PAGE_MAKERS, type PdfMade, pdfOf, sha512 } from '../host/index.ts';
import type { Maker } from './made.ts';
import type { Files, Told } from './told.ts';

/** A document, and the paper that decides it. */
export interface Document {
  readonly name: string;
  readonly paper: Paper;
  readonly make: () => Promise<PdfMade>;
}

/**
 * The account, the key and the checklist of a language, by their names in the site. Key and
 * checklist take one page where they fit it at a size that can be read.
 *
 * @param key without traits that stay at home
 * @param pictures bytes by the names that the ground gives them
 */
export function documentsOf(
  ground: DocumentGround,
  key: IdentificationKey,
  pictures: ReadonlyMap<string, Uint8Array>,
): readonly Document[] {
  const named = (name: string) => `${ground.language}/${name}.pdf`;
  const account = accountPaper(ground);
  return [
    { name: named('account'), paper: account, make: () => pdfOf(account, pictures) },
    { name: named('key'), ...fitted((fit) => keyPaper(key, ground, fit)) },
    { name: named('checklist'), ...fitted((fit) => checklistPaper(ground, fit)) },
  ];
}

/** The roomiest setting that takes one page; where none does, the densest one. */
function fitted(paperAt: (fit: Fit) => Paper): Omit<Document, 'name'> {
  const [roomiest, ...denser] = FITS;
  const paper = paperAt(roomiest);
  const make = async () => {
    let made = await pdfOf(paper);
    for (const fit of denser) {
      if (made.pages === 1) break;
      made = await pdfOf(paperAt(fit));
    }
    return made;
  };
  return { paper, make };
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

/** Puts the documents of every language among the files of a site, and answers their names. */
export async function documentsInto(
  maker: Maker,
  from: DocumentsFrom,
  told: Told,
): Promise<readonly string[]> {
  const { dossier, account, revision } = from;
  const { names, bytes } = picturesOnPaper(from);
  const key = identificationKey(knownOf(dossier, account.asOf ?? '', false), 'published');
  const hashes = [...bytes].map(([name, picture]) => [name, sha512(picture)]);
  const documents: string[] = [];
  for (const [i, language] of LANGUAGES.entries()) {
    told.begins(`Document ${i + 1} of ${LANGUAGES.length}`, 0.8 + (0.16 * i) / LANGUAGES.length);
    const ground = { account, language, revision, pictures: names };
    for (const { name, paper, make } of documentsOf(ground, key, bytes)) {
      const of = sha512(JSON.stringify([name, FITS, PAGE_MAKERS, hashes, paper]));
      await maker.put(of, async () => {
        const { bytes: pdf } = await make();
        return { files: new Map([[name, pdf]]), told: null };
      });
      documents.push(name);
    }
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

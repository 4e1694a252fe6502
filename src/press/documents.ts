import type { IdentificationKey } from '../catalogue/index.ts';
import {
  accountPaper,
  checklistPaper,
  type DocumentGround,
  type Download,
  documentWordsOf,
  FITS,
  type Fit,
  keyPaper,
  type Language,
  type Paper,
} from '../chronicle/index.ts';
import { type PdfMade, pdfOf } from '../host/index.ts';

/** The documents of a language, by their names without the folder. */
const NAMES = ['account', 'key', 'checklist'] as const;

/** The names of the documents of a language in a site, and what links to them say. */
export function documentDownloads(language: Language): readonly Download[] {
  const { downloads } = documentWordsOf(language);
  return NAMES.map((name) => ({
    href: `${language}/${name}.pdf`,
    title: downloads[name],
    type: 'application/pdf',
    language,
  }));
}

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
  return new Map(NAMES.map((name) => [`${ground.language}/${name}.pdf`, made[name].bytes]));
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

import type { Account } from '../account/types.ts';
import type { ToldRevision } from '../revisions/types.ts';
import type { Filling } from '../site/cells.ts';
import type { Language } from '../words/types.ts';
import type { DocumentWords } from './words/types.ts';

/** What a document is made from. */
export interface DocumentGround {
  readonly account: Account;
  readonly language: Language;
  /** The revision that it is of; null where none is told. */
  readonly revision: ToldRevision | null;
  /** Names on paper, by the name of the file in the dossier; a picture that is not here is left out. */
  readonly pictures: ReadonlyMap<string, string>;
}

/** What the pages of one language are written with. */
export interface Writer extends Filling, DocumentGround {
  /** Words that the site does not have. */
  readonly own: DocumentWords;
}

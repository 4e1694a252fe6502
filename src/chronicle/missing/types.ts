import type { Day } from '../../evidence/index.ts';
import type { AccountGround } from '../account/ground.ts';
import type { DossierTable } from '../leaving/types.ts';

/** What is looked through for what an account still lacks. */
export interface MissingGround {
  readonly account: AccountGround;
  /** As written. */
  readonly tables: readonly DossierTable[];
  /** Links of the stories that lead nowhere, by file and line. */
  readonly links: readonly LostLink[];
  /** The day by which figures are too old or not. */
  readonly today: Day;
}

/** A link of a story that leads nowhere. */
export interface LostLink {
  readonly file: string;
  /** Line, from 1. */
  readonly row: number | null;
  readonly found: string;
  readonly expected: string;
}

/** A kind of thing that an account lacks. */
export type Lack =
  | 'link'
  | 'answer'
  | 'picture'
  | 'rights'
  | 'story'
  | 'locator'
  | 'citation'
  | 'read'
  | 'count'
  | 'price';

/** One thing that an account lacks. */
export interface Missing {
  readonly lack: Lack;
  /** The id of the printing, source, service or correction; `index` for the account as a whole. */
  readonly of: string;
  /** In English: what is lacking, or how old it is. */
  readonly found: string;
  /** Where it is mended, or the file that is to be written. */
  readonly file: string;
  /** Row of a table or line of a text, from 1; null where the whole file is meant. */
  readonly row: number | null;
  /** The empty cell of that row; null where filling one cell does not mend it. */
  readonly column: string | null;
}

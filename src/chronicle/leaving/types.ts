/** A row of a table as it is written; its number counts the header as 1. */
export interface DossierRow {
  readonly row: number;
  /** By column; cells that are not known may be missing. */
  readonly cells: Readonly<Record<string, string>>;
}

/** A table of a dossier. */
export interface DossierTable {
  /** `sales.csv` or `desk/copies.csv`. */
  readonly file: string;
  readonly columns: readonly string[];
  /** Columns of free words, in which anything may stand. */
  readonly words: ReadonlySet<string>;
  readonly rows: readonly DossierRow[];
}

/** What a camera or a program wrote into a picture that can tell who took it, where and with what. */
export interface PictureMark {
  /** Name within the dossier. */
  readonly file: string;
  readonly what: 'location' | 'serial number' | 'name';
  /** The field's own name, such as `GPSLatitude`. */
  readonly tag: string;
  readonly value: string;
}

/** Everything that is looked at before something leaves. */
export interface LeavingGround {
  readonly tables: readonly DossierTable[];
  /** Names of the desk's other files. */
  readonly documents: readonly string[];
  /** Texts of `story/` by name. */
  readonly texts: ReadonlyMap<string, string>;
  readonly marks: readonly PictureMark[];
}

/** What the collector chose to show beyond the rest. */
export interface Shown {
  readonly prices: boolean;
}

/** A kind of thing that can harm its owner, a reader, a seller or other collectors. */
export type Harm =
  | 'name'
  | 'address'
  | 'e-mail'
  | 'telephone'
  | 'price'
  | 'certificate'
  | 'holding'
  | 'picture'
  | 'trait'
  | 'source'
  | 'location'
  | 'serial number';

/** One thing that would leave, or that is kept back, and why. */
export interface Leaving {
  readonly file: string;
  /** Row of a table or line of a text, from 1; null where the whole file is meant. */
  readonly row: number | null;
  readonly column: string | null;
  readonly what: Harm;
  /** As written, or how much of it there is. */
  readonly found: string;
  readonly leaves: boolean;
  readonly why: string;
}

/** Something of a dossier that stays at home; null stands for every row, or every column. */
export interface Stay extends Leaving {
  readonly leaves: false;
  /** What remains of a cell of which only a part stays. */
  readonly remains?: string;
}

import type { Evidence } from '../evidence/index.ts';

/** The files of a dossier, by their names within the folder, `/` between folders. */
export interface DossierFiles {
  readonly names: readonly string[];
  /** The bytes of one of `names`, in pieces. Throws where the file cannot be read. */
  open(name: string): AsyncIterable<Uint8Array>;
}

/** One thing that is wrong in the folder, where it stands, and what was expected in its place. */
export interface Fault {
  /** Name within the folder. */
  readonly file: string;
  /** The header is row 1, as a spreadsheet counts; null where the whole file is meant. */
  readonly row: number | null;
  readonly column: string | null;
  /** As written, shortened. */
  readonly found: string;
  readonly expected: string;
  /** All of it in a sentence, and what became of the row. */
  readonly message: string;
}

/** A table of the folder as it was read. Rows are counted as a spreadsheet does: the header is 1. */
export interface Table {
  readonly file: string;
  /** As in the header, unknown ones included. */
  readonly columns: readonly string[];
  /** Number of the last row; 1 where there is a header only. */
  readonly lastRow: number;
  /** Rows that can be used, ascending: not blank, not broken, no fault that spoils the whole row. */
  rows(): IterableIterator<number>;
  /** One cell as written; empty where the row does not reach so far or the column is missing. */
  cell(row: number, column: string): string;
  /** One cell without spaces around it; empty where it is at fault too. */
  value(row: number, column: string): string;
  /** All cells of a row by column name, as a `Change` carries them. */
  record(row: number): Record<string, string>;
}

/** What `dossier.json` says, lifted to the newest format. Missing parts are empty or null. */
export interface Manifest {
  readonly format: 1;
  readonly title: string;
  readonly subject: string;
  /** BCP 47 tag, or empty. */
  readonly language: string;
  readonly width_mm: number | null;
  readonly height_mm: number | null;
}

/** A dossier as read: everything in it, and all that is wrong with it. */
export interface Dossier {
  readonly manifest: Manifest;
  /** By file name, `printings.csv` or `desk/copies.csv`; only those that the format names. */
  readonly tables: ReadonlyMap<string, Table>;
  /** Parsed JSON files by name (`dossier.json`, `desk/charges.json`, `desk/examinations/ID.json`). */
  readonly documents: ReadonlyMap<string, unknown>;
  /** Texts of `story/` by name. */
  readonly texts: ReadonlyMap<string, string>;
  /** Ids that were given up, with the id that stands for each now. */
  readonly forwards: ReadonlyMap<string, string>;
  readonly evidence: Evidence;
  readonly faults: readonly Fault[];
}

/**
 * One row added, replaced or removed. `before` and `after` are cells by column name: of `before`
 * the named columns must match, `after` writes the named columns and leaves the others as they are.
 */
export interface Change {
  readonly file: string;
  readonly op: 'add' | 'replace' | 'remove';
  /** A hint: where the row stood, or where it is to be put; the header is row 1. */
  readonly row?: number;
  readonly before?: Readonly<Record<string, string>>;
  readonly after?: Readonly<Record<string, string>>;
  /** The row to the letter, so that undo restores its bytes; ignored where it does not say `after`. */
  readonly raw?: string;
}

/** A change that could not be made, because the row that it speaks of is not there, or not alone. */
export interface Conflict {
  readonly change: Change;
  /** `gone`: no row is as `before` says; `several`: more than one is, and the hint names none. */
  readonly reason: 'gone' | 'several';
  /** The cells that stand at the hint now. */
  readonly now?: Readonly<Record<string, string>>;
}

/** What became of a file. */
export interface Applied {
  readonly bytes: Uint8Array;
  readonly conflicts: readonly Conflict[];
  /** In the order in which they undo. */
  readonly inverse: readonly Change[];
}

/** A row that both sides changed since `base`, each in its own way. */
export interface MergeConflict {
  readonly file: string;
  /** Absent where both sides added the row. */
  readonly base?: Readonly<Record<string, string>>;
  /** Absent where that side removed the row. */
  readonly ours?: Readonly<Record<string, string>>;
  readonly theirs?: Readonly<Record<string, string>>;
  /** Columns in which the sides differ; empty where one removed the row. */
  readonly columns: readonly string[];
}

/** Two edits of one table put together. */
export interface Merged {
  readonly bytes: Uint8Array;
  readonly conflicts: readonly MergeConflict[];
}

/** The cells of one row by the name of their column. */
export type Cells = Readonly<Record<string, string>>;

/** One change of a table; `row` is a hint, `before` decides whether two sides disagree. */
export interface Change {
  readonly file: string;
  readonly op: 'add' | 'replace' | 'remove';
  readonly row?: number;
  readonly before?: Cells;
  readonly after?: Cells;
  /** The row to the letter, so that undo restores its bytes. */
  readonly raw?: string;
}

/** A change that could not be made, because the row that it speaks of is not there, or not alone. */
export interface Conflict {
  readonly change: Change;
  /** `gone`: no row is as `before` says; `several`: more than one is, and the hint names none. */
  readonly reason: 'gone' | 'several';
  /** What stands at the hint now. */
  readonly now?: Cells;
}

/** What making changes to the bytes of a file comes to. */
export interface Applied {
  readonly bytes: Uint8Array;
  readonly conflicts: readonly Conflict[];
  /** The changes that lead back, in the order in which they are to be made. */
  readonly inverse: readonly Change[];
}

/** What the store needs of others: the files of one folder, how a table is changed, the time. */
export interface Doors {
  /** Names of the tables in the folder. */
  list(): Promise<readonly string[]>;
  /** The bytes of a file; undefined where there is none. */
  read(file: string): Promise<Uint8Array | undefined>;
  /** Puts a file in the place of the old one, as a whole or not at all. */
  replace(file: string, bytes: Uint8Array): Promise<void>;
  /** Makes changes to a table; no bytes stand for an empty one. */
  apply(file: string, bytes: Uint8Array | undefined, changes: readonly Change[]): Applied;
  /** The changes that lead from one state of a table to another. */
  differences(file: string, from: Uint8Array, to: Uint8Array): readonly Change[];
  /** RFC 3339. */
  now(): string;
}

/** A step of the history, in the words that name it for undo. */
export interface Step {
  readonly id: number;
  readonly label: string;
  /** RFC 3339. */
  readonly at: string;
}

/** What came of a change, an undo or a redo. With conflicts nothing at all was changed. */
export interface Outcome {
  readonly conflicts: readonly Conflict[];
  /** Files that were edited outside, which was found and recorded before. */
  readonly edited: readonly string[];
  /** Settles when the files have followed, or says why they could not: the journal keeps the change. */
  readonly written: Promise<Written>;
}

export type Written = { readonly ok: true } | { readonly ok: false; readonly reason: string };

/** An acknowledged change that a file can no longer take, because the row was edited meanwhile. */
export interface Unsettled {
  /** Of the write, for `settle`. */
  readonly id: number;
  readonly label: string;
  readonly conflicts: readonly Conflict[];
}

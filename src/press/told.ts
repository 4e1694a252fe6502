/** Hears how a piece of work comes on. */
export interface Told {
  /** A step begins; `share` of the whole is done, 0 to 1. */
  begins(what: string, share: number): void;
  /** Something was left out; a sentence that says what and why. */
  leaves(sentence: string): void;
}

/** Files that were made, by their names within a folder, `/` between folders. */
export type Files = Map<string, Uint8Array | string>;

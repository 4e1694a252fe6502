/** Hears how a piece of work comes on. */
export interface Told {
  /** A step begins; `share` of the whole is done, 0 to 1. */
  begins(what: string, share: number): void;
  /** Something was left out; a sentence that says what and why. */
  leaves(sentence: string): void;
}

/** Files that were made, by their names within a folder, `/` between folders. */
export type Files = Map<string, Uint8Array | string>;

/** Where files are put as they are made, so that they need not all be held in memory. */
export interface Shelf {
  write(name: string, content: Uint8Array | string): Promise<void>;
  /** Reads a file that was put there. */
  read(name: string): Promise<Uint8Array>;
}

/** A shelf in memory, for a preview. */
export function shelfOf(files: Files): Shelf {
  return {
    async write(name, content) {
      files.set(name, content);
    },
    async read(name) {
      const content = files.get(name) ?? '';
      return typeof content === 'string' ? new TextEncoder().encode(content) : content;
    },
  };
}

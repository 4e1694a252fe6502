import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { isSafeName } from '../dossier/index.ts';
import { sha512 } from '../host/index.ts';
import type { Shelf } from './told.ts';

/** What a site says of files that are slow to make: from what each was made, and what came of it. */
export const MADE = 'made.json';

/** Something that was made, and what is to be known of it. */
interface Piece<T> {
  readonly files: ReadonlyMap<string, Uint8Array | string>;
  readonly told: T;
}

/** What `made.json` notes: the hashes of the files by name, and what is to be known of them. */
interface Note {
  readonly files?: Readonly<Record<string, string>>;
  readonly told: unknown;
}

/** Files that are slow to make, taken over from an earlier site where they were made of the same. */
export interface Maker {
  /**
   * Puts files on the shelf of the site: from the earlier site where its note has the key and the
   * bytes still have the noted hashes, else made anew. The key must tell all that decides them.
   */
  put<T>(key: string, make: () => Promise<Piece<T>>): Promise<T>;
  /** Bytes of each file that was put so far, by name. */
  readonly sizes: ReadonlyMap<string, number>;
  /** The notes for the next time. */
  notes(): string;
}

/**
 * Makes ready to put files into a site, with the notes of the earlier one.
 *
 * @param shelf of the new site
 * @param earlier folder of the earlier site, which need not be there; null to make all anew
 */
export async function makerInto(shelf: Shelf, earlier: string | null): Promise<Maker> {
  const before = earlier === null ? {} : await notesIn(earlier);
  const now: Record<string, Note> = {};
  const sizes = new Map<string, number>();
  return {
    sizes,
    async put<T>(key: string, make: () => Promise<Piece<T>>): Promise<T> {
      const kept = before[key];
      const again = kept && earlier !== null ? await takenOver(earlier, kept) : null;
      const piece = (again ?? (await make())) as Piece<T>;
      const hashes: Record<string, string> = {};
      for (const [name, bytes] of piece.files) {
        hashes[name] = sha512(bytes);
        sizes.set(name, Buffer.byteLength(bytes));
        await shelf.write(name, bytes);
      }
      now[key] = { files: hashes, told: piece.told };
      return piece.told;
    },
    notes() {
      // Sorted, since what is made side by side comes in no order of its own.
      const sorted = Object.entries(now).sort(([a], [b]) => (a < b ? -1 : 1));
      return `${JSON.stringify(Object.fromEntries(sorted), null, 1)}\n`;
    },
  };
}

/** The notes of an earlier site; none where there is none or they cannot be read. */
async function notesIn(folder: string): Promise<Readonly<Record<string, Note>>> {
  const text = await readFile(join(folder, MADE), 'utf8').catch(() => '{}');
  try {
    return JSON.parse(text) as Record<string, Note>;
  } catch {
    return {};
  }
}

/** The files as they were noted; null where one is gone or was changed. */
async function takenOver(folder: string, { files, told }: Note): Promise<Piece<unknown> | null> {
  const taken = new Map<string, Uint8Array>();
  for (const [name, hash] of Object.entries(files ?? {})) {
    if (!isSafeName(name)) return null;
    const bytes = await readFile(join(folder, name)).catch(() => null);
    if (bytes === null || sha512(bytes) !== hash) return null;
    taken.set(name, bytes);
  }
  return taken.size === 0 ? null : { files: taken, told };
}

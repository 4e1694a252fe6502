import { readFile } from 'node:fs/promises';
import { basename, dirname, isAbsolute, join, relative, resolve, sep } from 'node:path';
import { replaceFile } from '../../host/index.ts';
import { Refused } from '../refusal.ts';

/** Where site and film of a dossier are written. */
export interface Places {
  readonly site: string;
  readonly film: string;
}

/** Remembers in the data folder where each dossier's publications were written last. */
export class RememberedPlaces {
  readonly #file: string;

  constructor(dataFolder: string) {
    this.#file = join(dataFolder, 'published.json');
  }

  /** Where they were written last, else beside the dossier. */
  async of(dossier: string): Promise<Places> {
    const beside = (what: string) => join(dirname(dossier), `${basename(dossier)}-${what}`);
    const known = (await this.#all())[dossier];
    return { site: known?.site ?? beside('site'), film: known?.film ?? beside('film') };
  }

  async note(dossier: string, places: Partial<Places>): Promise<void> {
    const all = await this.#all();
    const noted = { ...all, [dossier]: { ...all[dossier], ...places } };
    await replaceFile(this.#file, new TextEncoder().encode(`${JSON.stringify(noted, null, 1)}\n`));
  }

  /** The list is a convenience: one that was spoilt is begun anew. */
  async #all(): Promise<Readonly<Record<string, Partial<Places>>>> {
    try {
      const value = JSON.parse(await readFile(this.#file, 'utf8'));
      return value !== null && typeof value === 'object' ? value : {};
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (code === 'ENOENT' || error instanceof SyntaxError) return {};
      throw error;
    }
  }
}

/** A folder for a publication. Throws `Refused` unless it stands apart from the dossier's. */
export function placeApart(named: string, dossier: string): string {
  const folder = named.trim();
  if (!isAbsolute(folder)) throw new Refused('bad-request', 'Give the full path of the folder.');
  const out = resolve(folder);
  if (holds(dossier, out) || holds(out, dossier)) {
    throw new Refused(
      'bad-request',
      `${out} and the dossier lie within each other: name a folder apart, so that the desk stays at home.`,
    );
  }
  return out;
}

function holds(outer: string, inner: string): boolean {
  const way = relative(outer, inner);
  return way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}

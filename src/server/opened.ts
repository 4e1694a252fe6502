import { realpath, stat } from 'node:fs/promises';
import { isAbsolute, join } from 'node:path';
import { type Dossier, readDossier } from '../dossier/index.ts';
import { filesOf, removeDrafts } from '../host/index.ts';
import { openStore, type Store } from '../store/index.ts';
import { doorsOf } from './doors.ts';
import { Refused } from './refusal.ts';

/** A dossier folder that is open: its files, and its journal where it can be written. */
export interface Opened {
  readonly folder: string;
  readonly store: Store | undefined;
  readonly notices: readonly string[];
  read(): Promise<Dossier>;
  /** One of its files as text; undefined where there is none. */
  textOf(file: string): Promise<string | undefined>;
  close(): Promise<void>;
}

/** Opens a folder that holds `printings.csv`. Throws `Refused` where there is none. */
export async function openFolder(path: string): Promise<Opened> {
  const folder = await dossierAt(path);
  const doors = doorsOf(folder);
  const store = await openStore(folder, doors);
  if (store.ok) {
    for (const place of [folder, join(folder, 'desk')]) await removeDrafts(place);
  }
  const notices = store.ok
    ? store.notices
    : [`This dossier can only be read: ${store.reason}. Changes are not taken.`];
  return {
    folder,
    store: store.ok ? store.store : undefined,
    notices,
    read: async () => readDossier(await filesOf(folder)),
    textOf: async (file) => {
      const bytes = await doors.read(file);
      return bytes && new TextDecoder().decode(bytes);
    },
    close: async () => {
      if (store.ok) await store.store.close();
    },
  };
}

/** The true path of a dossier folder. Throws `Refused` where it is none. */
async function dossierAt(path: string): Promise<string> {
  if (!isAbsolute(path)) throw new Refused('bad-request', 'Give the full path of the folder.');
  const found = await stat(path).catch((error: NodeJS.ErrnoException) => {
    const why = error.code === 'ENOENT' ? 'there is no such folder' : error.message;
    throw new Refused('not-found', `${path} cannot be opened: ${why}.`);
  });
  if (!found.isDirectory()) throw new Refused('bad-request', `${path} is not a folder.`);
  const main = await stat(join(path, 'printings.csv')).catch(() => undefined);
  if (!main?.isFile()) {
    throw new Refused(
      'bad-request',
      `${path} is not a dossier: there is no printings.csv in it. Open the folder that holds one, or begin with your own card.`,
    );
  }
  return await realpath(path);
}

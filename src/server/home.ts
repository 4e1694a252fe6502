import { cp, mkdir, mkdtemp, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { BeginRequest } from '../contract/index.ts';
import { freshDossier } from '../dossier/index.ts';
import { makeDataFolder, noteRecent, now, type Recent, readRecent } from '../host/index.ts';

/** Where this user's dossiers are kept, and which were opened lately. */
export interface Home {
  readonly folder: string;
  readonly notices: readonly string[];
  isDemo(folder: string): boolean;
  recent(): Promise<readonly Recent[]>;
  note(folder: string, title: string): Promise<void>;
  /** Makes a new dossier and answers its folder. */
  begin(request: BeginRequest): Promise<string>;
  /** The dossier opened last that is still there, else the demo. */
  usual(): Promise<string>;
}

/** Makes the data folder ready, with a copy of the demo in it where there is none yet. */
export async function openHome(wanted: string, demoSource: string): Promise<Home> {
  const { folder: made, notice } = await makeDataFolder(wanted);
  const folder = await realpath(made);
  const demo = join(folder, 'demo');
  const list = join(folder, 'recent.json');
  if (!(await isDossier(demo))) await copyWhole(demoSource, demo);
  const recent = async () => {
    const entries = await readRecent(list);
    const there = await Promise.all(entries.map((entry) => isDossier(entry.folder)));
    return entries.filter((_, index) => there[index]);
  };
  return {
    folder,
    notices: notice === undefined ? [] : [notice],
    isDemo: (path) => path === demo,
    recent,
    note: (path, title) => noteRecent(list, { folder: path, title, opened: now() }),
    begin: (request) => begin(folder, request),
    usual: async () => (await recent())[0]?.folder ?? demo,
  };
}

async function isDossier(folder: string): Promise<boolean> {
  const found = await stat(join(folder, 'printings.csv')).catch(() => undefined);
  return found?.isFile() ?? false;
}

/** A folder appears with all its files or not at all. */
async function copyWhole(from: string, to: string): Promise<void> {
  await appear(
    dirname(to),
    () => to,
    async (fresh) => {
      await cp(from, fresh, { recursive: true });
    },
  );
}

async function begin(home: string, request: BeginRequest): Promise<string> {
  const files = freshDossier(request);
  const base = slugOf(request.title);
  const name = (n: number) => join(home, n === 1 ? base : `${base}-${n}`);
  return await appear(home, name, async (fresh) => {
    for (const [file, bytes] of files) {
      await mkdir(dirname(join(fresh, file)), { recursive: true });
      await writeFile(join(fresh, file), bytes, { flush: true });
    }
  });
}

/** Fills a folder out of sight and puts it in its place under the first name that is free. */
async function appear(
  home: string,
  name: (n: number) => string,
  fill: (fresh: string) => Promise<void>,
): Promise<string> {
  const fresh = await mkdtemp(join(home, '.fresh-'));
  try {
    await fill(fresh);
    for (let n = 1; ; n++) {
      const place = name(n);
      if (await stat(place).catch(() => undefined)) {
        if (name(n + 1) === place) throw new RangeError(`${place} is in the way`);
        continue;
      }
      await rename(fresh, place);
      return place;
    }
  } catch (error) {
    await rm(fresh, { recursive: true, force: true });
    throw error;
  }
}

/** A title as a folder's name that every system takes: letters, digits, hyphens. */
export function slugOf(title: string): string {
  const plain = title
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60)
    .replace(/-+$/, '');
  const reserved = /^(con|prn|aux|nul|com\d|lpt\d|demo)$/;
  return plain === '' || reserved.test(plain) ? `dossier${plain && `-${plain}`}` : plain;
}

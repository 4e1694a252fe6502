import {
  chmod,
  constants,
  cp,
  link,
  lstat,
  mkdir,
  mkdtemp,
  readdir,
  readFile,
  realpath,
  rename,
  rm,
  writeFile,
} from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';

/** A file in a folder that was written as a whole: by it the folder is known as one of ours. */
const MARK = '.printlore-made';

/** A folder that is filled beside the one whose place it is to take. */
export interface Draft {
  /** Writes a file by its name within the folder, `/` between folders. */
  write(name: string, content: Uint8Array | string): Promise<void>;
  /** Reads a file that was written. */
  read(name: string): Promise<Uint8Array>;
}

/** The folder holds files of somebody else, or a name in it cannot be written. */
export class FolderFault extends RangeError {}

/**
 * Puts a folder of files in the place of the one that was written before, as a whole or not at all:
 * a new folder beside it is filled first and then given the name; one that was begun and stopped is
 * taken away.
 *
 * @param fill writes the files, one after the other; a failure of it leaves the earlier folder
 * @param others what becomes of files that were not written so: `refuse` to touch the folder, or
 *   `keep` all files of the earlier folder that the new one has no others for
 * @throws FolderFault, and touches nothing, where the folder is refused
 */
export async function replaceFolder<T>(
  folder: string,
  fill: (draft: Draft) => Promise<T>,
  others: 'refuse' | 'keep' = 'refuse',
): Promise<T> {
  const path = (await ifThere(() => realpath(folder))) ?? resolve(folder);
  await mkdir(dirname(path), { recursive: true });
  const before = join(dirname(path), `.${basename(path)}.before`);
  const there = await namesIn(path);
  // A stop between the two renames left the earlier folder aside.
  if (there === undefined && (await namesIn(before)) !== undefined) await rename(before, path);
  const found = (await namesIn(path)) ?? [];
  if (others === 'refuse' && found.length > 0 && !found.includes(MARK))
    throw new FolderFault(`${folder} holds other files: name a folder that is empty or new`);
  await removeDraftsOf(path);
  const draft = await mkdtemp(join(dirname(path), `.${basename(path)}.new-`));
  try {
    await chmod(draft, 0o755);
    const made = await fill(draftIn(draft));
    if (others === 'refuse') await writeFile(join(draft, MARK), '');
    else await keepOthers(path, draft);
    await rm(before, { recursive: true, force: true });
    if ((await namesIn(path)) !== undefined) await rename(path, before);
    await rename(draft, path);
    await rm(before, { recursive: true, force: true });
    return made;
  } catch (error) {
    await rm(draft, { recursive: true, force: true });
    throw error;
  }
}

/** Files by their names, all of which are there already, as what fills a draft. */
export function filledWith(
  files: ReadonlyMap<string, Uint8Array | string>,
): (draft: Draft) => Promise<void> {
  return async (draft) => {
    for (const [name, content] of files) await draft.write(name, content);
  };
}

function draftIn(folder: string): Draft {
  const made = new Set<string>();
  return {
    async write(name, content) {
      const file = join(folder, name);
      if (!made.has(dirname(file))) await mkdir(dirname(file), { recursive: true });
      made.add(dirname(file));
      await writeFile(file, content);
    },
    read: (name) => readFile(join(folder, name)),
  };
}

/** Takes away what was begun beside a folder when the work was stopped. */
async function removeDraftsOf(path: string): Promise<void> {
  const start = `.${basename(path)}.new-`;
  for (const name of (await namesIn(dirname(path))) ?? [])
    if (name.startsWith(start) && name.length === start.length + 6)
      await rm(join(dirname(path), name), { recursive: true, force: true });
}

/** Gives what only the earlier folder has to the new one, without moving it: both have it. */
async function keepOthers(from: string, to: string): Promise<void> {
  for (const name of (await namesIn(from)) ?? []) {
    const [old, kept] = [join(from, name), join(to, name)];
    if ((await lstat(old)).isDirectory()) {
      await mkdir(kept, { recursive: true });
      await keepOthers(old, kept);
    } else if (!(await isThere(kept))) await linked(old, kept);
  }
}

/** A second name for a file; a copy on disks that have no such thing. */
async function linked(old: string, kept: string): Promise<void> {
  const copied = () =>
    cp(old, kept, { mode: constants.COPYFILE_FICLONE, verbatimSymlinks: true, recursive: true });
  await link(old, kept).catch(copied);
}

async function isThere(path: string): Promise<boolean> {
  return (await ifThere(() => lstat(path))) !== undefined;
}

async function namesIn(folder: string): Promise<readonly string[] | undefined> {
  return await ifThere(() => readdir(folder));
}

async function ifThere<T>(act: () => Promise<T>): Promise<T | undefined> {
  try {
    return await act();
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined;
    throw error;
  }
}

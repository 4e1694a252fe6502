import { chmod, mkdir, mkdtemp, readdir, rename, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';

/** A file in a folder that was written as a whole: by it the folder is known as one of ours. */
const MARK = '.printlore-made';

/**
 * Puts a folder of files in the place of the one that was written before, as a whole or not at all:
 * a new folder beside it is filled first and then given the name; one that was begun and stopped is
 * taken away. Throws RangeError, and touches nothing, where the folder holds files that were not
 * written so.
 *
 * @param files by their names within the folder, `/` between folders
 * @param then what is to be done once all files are written and before the folder takes the place; a
 *   failure of it leaves the earlier folder
 */
export async function replaceFolder(
  folder: string,
  files: ReadonlyMap<string, Uint8Array | string>,
  then: () => Promise<unknown> = async () => {},
): Promise<void> {
  const path = resolve(folder);
  await mkdir(dirname(path), { recursive: true });
  const before = join(dirname(path), `.${basename(path)}.before`);
  const there = await namesIn(path);
  // A stop between the two renames left the earlier folder aside.
  if (there === undefined && (await namesIn(before)) !== undefined) await rename(before, path);
  const found = (await namesIn(path)) ?? [];
  if (found.length > 0 && !found.includes(MARK))
    throw new RangeError(`${folder} holds other files: name a folder that is empty or new`);
  await removeDraftsOf(path);
  const draft = await mkdtemp(join(dirname(path), `.${basename(path)}.new-`));
  try {
    await chmod(draft, 0o755);
    await fill(draft, files);
    await then();
    await rm(before, { recursive: true, force: true });
    if ((await namesIn(path)) !== undefined) await rename(path, before);
    await rename(draft, path);
  } catch (error) {
    await rm(draft, { recursive: true, force: true });
    throw error;
  }
  await rm(before, { recursive: true, force: true });
}

/** Takes away what was begun beside a folder when the work was stopped. */
async function removeDraftsOf(path: string): Promise<void> {
  const start = `.${basename(path)}.new-`;
  for (const name of (await namesIn(dirname(path))) ?? [])
    if (name.startsWith(start) && name.length === start.length + 6)
      await rm(join(dirname(path), name), { recursive: true, force: true });
}

async function fill(
  folder: string,
  files: ReadonlyMap<string, Uint8Array | string>,
): Promise<void> {
  await writeFile(join(folder, MARK), '');
  const folders = new Set([...files.keys()].map((name) => dirname(join(folder, name))));
  for (const one of folders) await mkdir(one, { recursive: true });
  for (const [name, content] of files) await writeFile(join(folder, name), content);
}

async function namesIn(folder: string): Promise<readonly string[] | undefined> {
  try {
    return await readdir(folder);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined;
    throw error;
  }
}

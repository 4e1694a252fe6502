import { randomBytes } from 'node:crypto';
import { constants } from 'node:fs';
import {
  type FileHandle,
  lstat,
  mkdir,
  open,
  readdir,
  realpath,
  rename,
  unlink,
} from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** The files of a folder, in the shape that reading a dossier takes. */
export interface FolderFiles {
  /** Names within the folder, `/` between folders, sorted. */
  readonly names: readonly string[];
  /** The bytes of one of `names` in pieces. Throws RangeError for a name that is not listed. */
  open(name: string): AsyncIterable<Uint8Array>;
}

/** Most files that are listed, and most folders within each other. */
const MOST_FILES = 100_000;
const DEEPEST = 8;
const PIECE = 2 ** 20;

/**
 * Lists a folder's files. Links, hidden files and folders (`.printlore` among them), and what is no
 * plain file are passed over, so that no name leads out of the folder. Throws where the folder
 * cannot be read, and RangeError where it holds more than 100,000 files.
 */
export async function filesOf(folder: string): Promise<FolderFiles> {
  const root = await realpath(folder);
  const names: string[] = [];
  await list(root, '', names, 0);
  names.sort();
  const listed = new Set(names);
  return {
    names,
    open(name) {
      if (!listed.has(name)) throw new RangeError(`file must be one of the folder, not ${name}`);
      return piecesOf(root, name);
    },
  };
}

async function list(root: string, under: string, names: string[], depth: number): Promise<void> {
  if (depth > DEEPEST) return;
  for (const entry of await readdir(join(root, under), { withFileTypes: true })) {
    if (entry.name.startsWith('.')) continue;
    const name = under === '' ? entry.name : `${under}/${entry.name}`;
    if (entry.isDirectory()) await list(root, name, names, depth + 1);
    else if (entry.isFile()) names.push(name);
    if (names.length > MOST_FILES) {
      throw new RangeError(`a folder must hold at most ${MOST_FILES} files`);
    }
  }
}

async function* piecesOf(root: string, name: string): AsyncGenerator<Uint8Array> {
  const path = join(root, name);
  // A link may have been put in the place of the file or of its folder since it was listed.
  if ((await realpath(path)) !== path) throw new RangeError(`${name} is a link`);
  const file = await open(path, constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0));
  try {
    if (!(await file.stat()).isFile()) throw new RangeError(`${name} is no plain file`);
    yield* readFrom(file);
  } finally {
    await file.close();
  }
}

async function* readFrom(file: FileHandle): AsyncGenerator<Uint8Array> {
  for (;;) {
    const { bytesRead, buffer } = await file.read(new Uint8Array(PIECE), 0, PIECE);
    if (bytesRead === 0) return;
    yield buffer.subarray(0, bytesRead);
  }
}

/**
 * Puts new bytes in a file's place, as a whole or not at all: a new file beside it is written,
 * brought to the disk and given its name. A link is not followed but refused with RangeError; the
 * rights of the old file are kept. A folder that is not there is made. Throws where the folder cannot
 * be written.
 */
export async function replaceFile(path: string, bytes: Uint8Array): Promise<void> {
  const folder = dirname(path);
  const made = await mkdir(folder, { recursive: true });
  if (made !== undefined) await syncFolder(dirname(made));
  const mode = await modeOf(path);
  const draft = join(folder, `.${basename(path)}.${randomBytes(6).toString('hex')}.new`);
  try {
    const file = await open(draft, 'wx', mode);
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(draft, path);
  } catch (error) {
    await removeIfThere(draft);
    throw error;
  }
  await syncFolder(folder);
}

async function modeOf(path: string): Promise<number> {
  const stats = await ifThere(() => lstat(path));
  if (stats === undefined) return 0o666;
  if (!stats.isFile()) throw new RangeError('a file must be replaced, not a link or a folder');
  return stats.mode & 0o777;
}

async function removeIfThere(path: string): Promise<void> {
  await ifThere(() => unlink(path));
}

async function ifThere<T>(act: () => Promise<T>): Promise<T | undefined> {
  try {
    return await act();
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined;
    throw error;
  }
}

/** Brings the new name to the disk; Windows has no such call for folders. */
async function syncFolder(folder: string): Promise<void> {
  if (process.platform === 'win32') return;
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

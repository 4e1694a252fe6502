import { lstat, mkdir, readFile, realpath } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import {
  applyChanges,
  applyWhole,
  changesBetween,
  isExamination,
  isSafeName,
  wholeDifferences,
} from '../dossier/index.ts';
import { filesOf, now, replaceFile } from '../host/index.ts';
import type { Doors } from '../store/index.ts';
import { Refused } from './refusal.ts';

/** Joins the store to the files of a folder and to the tables in them. */
export function doorsOf(folder: string): Doors {
  return {
    list: async () =>
      (await filesOf(folder)).names.filter((name) => isTable(name) || isExamination(name)),
    read: (file) => bytesOf(folder, file),
    replace: async (file, bytes) => {
      const path = await pathInside(folder, file);
      if (isExamination(file)) await mkdir(dirname(path), { recursive: true });
      await replaceFile(path, bytes);
    },
    apply: (file, bytes, changes) => {
      if (isExamination(file)) return applyWhole(file, bytes, changes);
      if (bytes && !isText(bytes)) {
        throw new Refused(
          'cannot-read',
          `${file} is no table any more: correct or remove it first.`,
        );
      }
      return applyChanges(file, bytes, changes);
    },
    differences: (file, from, to) => {
      if (!isText(from) || !isText(to)) return [];
      return isExamination(file)
        ? wholeDifferences(file, from, to)
        : changesBetween(file, from, to);
    },
    now,
  };
}

/** Bytes that are no text (UTF-16, a spreadsheet's own format, garbage) have no rows to speak of. */
function isText(bytes: Uint8Array): boolean {
  const isUtf16 = bytes[0]! + bytes[1]! === 0xff + 0xfe;
  return !isUtf16 && !bytes.subarray(0, 8192).includes(0);
}

/** Whether a file is one of the dossier's tables: at the top, or on the desk. */
export function isTable(file: string): boolean {
  return /^(desk\/)?[^/]+\.csv$/.test(file) && isSafeName(file);
}

/** The bytes of a plain file; undefined where there is none, or a link. */
async function bytesOf(folder: string, file: string): Promise<Uint8Array | undefined> {
  const path = await pathInside(folder, file);
  return await ifThere(async () =>
    (await lstat(path)).isFile() ? await readFile(path) : undefined,
  );
}

/** The path of a file of the folder. Throws `RangeError` where it would lie outside. */
async function pathInside(folder: string, file: string): Promise<string> {
  const path = join(folder, file);
  const parent = await ifThere(() => realpath(dirname(path)));
  const expected = dirname(join(await realpath(folder), file));
  if (!isSafeName(file) || (parent !== undefined && parent !== expected)) {
    throw new RangeError(`${file} leads out of the folder`);
  }
  return path;
}

async function ifThere<T>(act: () => Promise<T>): Promise<T | undefined> {
  try {
    return await act();
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw error;
  }
}

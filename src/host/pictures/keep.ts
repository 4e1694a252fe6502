import { mkdir, readdir, realpath } from 'node:fs/promises';
import { join } from 'node:path';
import { replaceFile } from '../files.ts';
import { PictureFault } from './fault.ts';
import { type Kind, sniffed } from './kind.ts';

/** What a picture of a copy shows, as its file is named: `front`, `back.raking`, `front.light-2`, `listing`. */
export const PHOTO_ROLE = /^(?:(?:front|back)(?:\.raking|\.light-[1-9]\d?)?|listing)$/;

const ENDINGS: Readonly<Record<Kind, string>> = {
  JPEG: 'jpg',
  PNG: 'png',
  WebP: 'webp',
  TIFF: 'tif',
  AVIF: 'avif',
  HEIC: 'heic',
};

/** A picture cannot be kept, because there is one of that role. */
export class PhotoThere extends Error {
  override readonly name = 'PhotoThere';
}

/**
 * Puts a picture of a copy into `desk/photos/COPY`, byte by byte as it came, and answers its name:
 * the role with the ending of what it truly is. A picture that is there is never written over.
 * @throws PictureFault where the bytes are no picture; `PhotoThere` where the role is taken;
 * RangeError for another role or copy, or a folder that is a link to elsewhere.
 */
export async function keepPhoto(
  dossier: string,
  copy: string,
  role: string,
  bytes: Uint8Array,
): Promise<string> {
  if (!PHOTO_ROLE.test(role)) throw new RangeError(`${role} is no role of a picture`);
  if (!/^[a-z0-9][a-z0-9-]*$/.test(copy)) throw new RangeError(`${copy} is no id of a copy`);
  const what = sniffed(bytes.subarray(0, 65_536));
  if (!('kind' in what))
    throw new PictureFault(role, bytes.length === 0 ? 'an empty file' : what.other, EXPECTED);
  const folder = join(dossier, 'desk', 'photos', copy);
  await mkdir(folder, { recursive: true });
  if ((await realpath(folder)) !== join(await realpath(dossier), 'desk', 'photos', copy))
    throw new RangeError(`desk/photos/${copy} is a link to elsewhere`);
  const there = (await readdir(folder)).find((name) => name.replace(/\.[^.]+$/, '') === role);
  if (there) throw new PhotoThere(`desk/photos/${copy}/${there}`);
  const name = `${role}.${ENDINGS[what.kind]}`;
  await replaceFile(join(folder, name), bytes);
  return name;
}

const EXPECTED = 'a picture (JPEG, PNG, WebP, TIFF, AVIF or HEIC)';

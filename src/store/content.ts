import { createHash } from 'node:crypto';
import { promisify } from 'node:util';
import { deflateRaw, inflateRaw } from 'node:zlib';

const deflate = promisify(deflateRaw);
const inflate = promisify(inflateRaw);

/** Stands for the hash of a file that does not exist. */
export const NO_FILE = 'none';

/** Larger files (bytes) are watched by their hash alone: an outside edit of one cannot be undone. */
export const KEPT_AT_MOST = 16 * 1024 * 1024;

/** SHA-256 of a file's bytes in hexadecimal, `NO_FILE` where there is none. */
export function hashOf(bytes: Uint8Array | undefined): string {
  return bytes ? createHash('sha256').update(bytes).digest('hex') : NO_FILE;
}

/** A file's bytes made small for keeping; null where they are too many, empty where no file is. */
export async function pack(bytes: Uint8Array | undefined): Promise<Uint8Array | null> {
  if (bytes && bytes.length > KEPT_AT_MOST) return null;
  return await deflate(bytes ?? new Uint8Array(), { level: 1 });
}

/** The inverse of `pack`. */
export async function unpack(packed: Uint8Array | null): Promise<Uint8Array | undefined> {
  return packed ? new Uint8Array(await inflate(packed)) : undefined;
}

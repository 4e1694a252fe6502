import { open, stat } from 'node:fs/promises';
import { PictureFault } from './fault.ts';
import { aKind, KINDS, type Kind, kindByName, sniffed } from './kind.ts';
import { MOST_BYTES } from './limits.ts';

const HEAD = 65_536;
const A_PICTURE = `a picture (${KINDS.slice(0, -1).join(', ')} or ${KINDS.at(-1)})`;

/** A file that begins as a picture does. */
export interface Opened {
  readonly kind: Kind;
  /** The file's first bytes, 65,536 at most. */
  readonly head: Uint8Array;
  readonly bytes: number;
}

/**
 * Looks at the beginning of a file, before any of it is believed.
 * @throws PictureFault where it is missing, no plain file, empty, too large or no picture.
 */
export async function opened(file: string): Promise<Opened> {
  const stats = await stat(file).catch((error: NodeJS.ErrnoException) => {
    throw new PictureFault(file, reasons[error.code ?? ''] ?? error.message, A_PICTURE);
  });
  if (stats.isDirectory()) throw new PictureFault(file, 'a folder', A_PICTURE);
  if (!stats.isFile()) throw new PictureFault(file, 'no plain file', A_PICTURE);
  if (stats.size === 0) throw new PictureFault(file, 'an empty file', A_PICTURE);
  if (stats.size > MOST_BYTES) {
    const gigabytes = (stats.size / 1e9).toFixed(1);
    throw new PictureFault(file, `${gigabytes} GB`, `at most ${MOST_BYTES / 1e9} GB`);
  }
  const head = await headOf(file);
  const what = sniffed(head);
  if ('kind' in what) return { kind: what.kind, head, bytes: stats.size };
  const promised = kindByName(file);
  const found = promised ? `${what.other} under the name of ${aKind(promised)}` : what.other;
  throw new PictureFault(file, found, A_PICTURE);
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'no such file',
  ENOTDIR: 'no such file',
  EACCES: 'a file that you may not read',
};

async function headOf(file: string): Promise<Uint8Array> {
  const handle = await open(file).catch((error: NodeJS.ErrnoException) => {
    throw new PictureFault(file, reasons[error.code ?? ''] ?? error.message, A_PICTURE);
  });
  try {
    const { buffer, bytesRead } = await handle.read(new Uint8Array(HEAD), 0, HEAD, 0);
    return buffer.subarray(0, bytesRead);
  } finally {
    await handle.close();
  }
}

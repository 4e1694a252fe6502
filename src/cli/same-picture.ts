import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { WrongCall } from './wrong-call.ts';

/**
 * Refuses one picture under two names: compared with itself it tells nothing, and twice among the
 * references it would count as two copies.
 * @throws WrongCall naming both files
 */
export async function refuseSamePicture(files: readonly string[]): Promise<void> {
  const seen = new Map<string, string>();
  for (const file of files) {
    const digest = await digestOf(file);
    const other = digest === null ? undefined : seen.get(digest);
    if (other !== undefined)
      throw new WrongCall(
        `${file} is the same picture as ${other}; expected another photograph or scan, since a picture says nothing about itself.`,
      );
    if (digest !== null) seen.set(digest, file);
  }
}

/** Null for a file that cannot be read, which is told where it is read as a picture. */
async function digestOf(file: string): Promise<string | null> {
  const bytes = await readFile(file).catch(() => null);
  return bytes && createHash('sha256').update(bytes).digest('hex');
}

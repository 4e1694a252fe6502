import { readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';

const DRAFT = /^\..+\.[0-9a-f]{12}\.new$/;

/**
 * Takes away what `replaceFile` had begun beside a file when the process was killed. Only for one
 * who knows that no other process is writing in the folder. Answers the names.
 */
export async function removeDrafts(folder: string): Promise<readonly string[]> {
  const names = await readdir(folder).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return [];
    throw error;
  });
  const drafts = names.filter((name) => DRAFT.test(name));
  for (const name of drafts) await rm(join(folder, name), { force: true });
  return drafts;
}

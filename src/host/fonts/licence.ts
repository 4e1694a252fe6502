import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { Family } from './slices.ts';

const require = createRequire(import.meta.url);

/** The licence of a family (SIL Open Font License), which goes wherever its letters go. */
export async function fontLicence(family: Family): Promise<string> {
  const folder = dirname(require.resolve(`@fontsource-variable/${family}/unicode.json`));
  return await readFile(join(folder, 'LICENSE'), 'utf8');
}

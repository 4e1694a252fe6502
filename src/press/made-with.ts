import { readFileSync } from 'node:fs';

const packageFile = new URL('../../package.json', import.meta.url);

/** Program and version, as a revision names what it was made with. */
export function madeWith(): string {
  return `Printlore ${JSON.parse(readFileSync(packageFile, 'utf8')).version}`;
}

import { readFileSync } from 'node:fs';

const packageFile = new URL('../../package.json', import.meta.url);

/** The version of this program. */
export function version(): string {
  return JSON.parse(readFileSync(packageFile, 'utf8')).version;
}

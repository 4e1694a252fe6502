import { matches, uploads } from './parse.ts';
import type { ReleaseSet } from './sets.ts';

/** Node.js: its own changelogs, two lists for other tools, Debian. */
export function node(read: (name: string) => string): ReleaseSet {
  const list = JSON.parse(read('node-releases.json')) as { version: string; date: string }[];
  const compat = JSON.parse(read('browser-compat.json')) as {
    browsers: { nodejs: { releases: Record<string, { release_date?: string }> } };
  };
  const listed = new Map(list.map(({ version, date }) => [version, date]));
  return {
    name: 'node',
    truth: matches(
      read('node.CHANGELOG'),
      /^## (?<day>\d{4}[-.]\d\d[-.]\d\d), (?:io\.js )?Version v?(?<version>[\d.]+)/gm,
    ),
    market: (version) => (line(version) % 2 === 0 ? 'even' : 'odd'),
    keep: (version) => listed.has(version),
    sources: {
      list: listed,
      compatibility: new Map(
        Object.entries(compat.browsers.nodejs.releases).flatMap(([version, { release_date }]) =>
          release_date === undefined ? [] : [[version, release_date]],
        ),
      ),
      distributor: uploads(read('nodejs.changelog'), (v) => v.replace(/[+~-].*/, '')),
    },
  };
}

/** The number that tells long-lived lines (even) from short-lived ones: the major one, once above 0. */
function line(version: string): number {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  return major > 0 ? major : minor;
}

import { entries, matches, uploads } from './parse.ts';
import type { ReleaseSet } from './sets.ts';

/** The time zone database: its own news, two libraries that carry it, and their distributor. */
export function tz(read: (name: string) => string): ReleaseSet {
  return {
    name: 'tz',
    truth: matches(
      read('tz.NEWS'),
      /^Release (?:data)?(?<version>\d{4}[a-z]) - (?<day>\d{4}-\d\d-\d\d)/gm,
    ),
    market: () => '',
    keep: () => true,
    sources: {
      'library-a': entries(
        read('datetime-timezone.Changes'),
        /^[\d.]+\s+(?<day>\d{4}-\d\d-\d\d)/,
        /version (?<version>\d{4}[a-z])/,
      ),
      'library-b': entries(
        read('moment-timezone.md'),
        /_(?<day>\d{4}-\d\d-\d\d)_/,
        /\b(?<version>20\d\d[a-z])\b/,
      ),
      distributor: uploads(read('tzdata.changelog'), (v) => v.replace(/[+~-].*/, '')),
      'distributor-library': entries(
        reversedUploads(read('datetime-timezone.changelog')),
        /^(?<day>\d{4}-\d\d-\d\d)$/,
        /\b(?<version>20\d\d[a-z])\b/,
      ),
    },
  };
}

/** A changelog with the day of each entry before its lines. */
function reversedUploads(text: string): string {
  return text
    .split(/^(?=\S+ \()/m)
    .map((entry, i) => {
      const day = [...uploads(entry, () => String(i)).values()][0] ?? '';
      return `${day}\n${entry.split('\n').slice(1).join('\n')}`;
    })
    .join('\n');
}

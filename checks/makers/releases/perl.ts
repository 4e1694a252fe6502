import { type Days, entries, iso, matches, uploads } from './parse.ts';
import type { ReleaseSet } from './sets.ts';

/** Perl: its own history, the register of core modules, announcements, Debian. */
export function perl(read: (name: string) => string): ReleaseSet {
  const truth = history(read('perlhist.pod'));
  return {
    name: 'perl',
    truth,
    market: (version) => (Number(version.split('.')[1]) % 2 === 1 ? 'development' : 'maintenance'),
    keep: (version) => /^5\.\d+\.\d+$/.test(version),
    sources: {
      register: register(read('CoreList.pm')),
      announcements: announcements(read('epigraphs.pod')),
      'register-news': entries(
        read('CoreList.changes'),
        /^5\.(?<y>\d{4})(?<m>\d\d)(?<d>\d\d)/,
        /updated for (?:v|perl )?(?<version>5\.[\d.]+\d)/i,
      ),
      distributor: uploads(read('perl.changelog'), (v) => v.replace(/[+~-].*/, '')),
    },
  };
}

function history(pod: string): Days {
  const days: Days = new Map();
  for (const [, version, year, month, day] of pod.matchAll(
    /^ .{0,12}\s(5\.[\w.]+)\s+(\d{4})-(\w{3})-(\d\d)\b(?!\?)/gm,
  ))
    if (!days.has(version!)) days.set(version!, iso(year!, month!, day!));
  return days;
}

function register(pm: string): Days {
  const table = pm.split('%released = (')[1]!.split(');')[0]!;
  const found = matches(table, /(?<version>5\.\d{6})\s*=>\s*'(?<day>\d{4}-\d\d-\d\d)'/g);
  return new Map(
    [...found].map(([v, day]) => [`5.${Number(v.slice(2, 5))}.${Number(v.slice(5))}`, day]),
  );
}

function announcements(pod: string): Days {
  const days: Days = new Map();
  let version = '';
  for (const line of pod.split('\n')) {
    version = /^=head2 (?:v|perl )?(5\S+)/.exec(line)?.[1] ?? version;
    const day = /Announced on (\d{4}-\d\d-\d\d)/.exec(line)?.[1];
    if (day !== undefined && version !== '') days.set(version, day);
  }
  return days;
}

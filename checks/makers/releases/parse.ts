/** Days (ISO 8601) by version, as one file states them. */
export type Days = Map<string, string>;

const MONTHS = 'JanFebMarAprMayJunJulAugSepOctNovDec';

/** `2022`, `May`, `7` as `2022-05-07`; the month's first three letters in English. */
export function iso(year: string, month: string, day: string): string {
  const number = MONTHS.indexOf(month.slice(0, 3)) / 3 + 1;
  return `${year}-${String(number).padStart(2, '0')}-${day.padStart(2, '0')}`;
}

/** Every match of a pattern whose named groups are `version` and `day`; the first of a version counts. */
export function matches(text: string, pattern: RegExp): Days {
  const days: Days = new Map();
  for (const { groups } of text.matchAll(pattern)) {
    const { version, day } = groups!;
    if (!days.has(version!)) days.set(version!, day!.replaceAll('.', '-'));
  }
  return days;
}

/** Lines that start an entry with a day, and lines within it that name the version. */
export function entries(text: string, head: RegExp, names: RegExp): Days {
  const days: Days = new Map();
  let day: string | undefined;
  for (const line of text.split('\n')) {
    const found = head.exec(line)?.groups;
    if (found) day = found.day ?? `${found.y}-${found.m}-${found.d}`;
    const version = names.exec(line)?.groups?.version;
    if (version !== undefined && day !== undefined) days.set(version, day);
  }
  return days;
}

/** A Debian changelog: the day of the first upload of each upstream version. */
export function uploads(text: string, version: (debian: string) => string): Days {
  const days: Days = new Map();
  let current = '';
  for (const line of text.split('\n')) {
    const head = /^\S+ \((?:\d+:)?([^)]+)\)/.exec(line);
    if (head) current = version(head[1]!);
    const signed = /^ -- .*> +\w+, +(\d+) (\w{3}) (\d{4})/.exec(line);
    if (signed && current !== '') days.set(current, iso(signed[3]!, signed[2]!, signed[1]!));
  }
  return days;
}

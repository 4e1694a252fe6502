/** What was marked while recording, at so many seconds from the recording's beginning. */
export type Mark =
  | { readonly is: 'line'; readonly at: number; readonly line: string }
  | { readonly is: 'hold' | 'on' | 'end'; readonly at: number }
  | (SeenOnFilm & { readonly is: 'seen' });

/** What was seen on a copy while the camera ran. */
export interface SeenOnFilm {
  readonly at: number;
  /** Time of day with its offset, ISO 8601. */
  readonly clock: string;
  readonly copy: string;
  readonly note: string;
}

/** What is wrong with a line of a file of marks. */
export interface MarkFault {
  readonly row: number;
  readonly found: string;
  readonly expected: string;
}

const TIME = /^(?:(\d+):)?(\d{1,2}):(\d{2}(?:\.\d{1,3})?)$/;
const CLOCK = /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d)?([+-]\d\d:\d\d|Z)$/;

/**
 * Reads a file of marks: one a line, a time as `h:mm:ss.mmm` and what it marks: `line ID`, `hold`,
 * `on`, `end`, or `seen CLOCK COPY WORDS`. Blank lines and those that begin with # are left out.
 * Marks come back in order of time, with every line that could not be read.
 */
export function readMarks(text: string): {
  readonly marks: readonly Mark[];
  readonly faults: readonly MarkFault[];
} {
  const marks: Mark[] = [];
  const faults: MarkFault[] = [];
  for (const [i, found] of text
    .replace(/^\ufeff/, '')
    .split(/\r?\n/)
    .entries()) {
    if (/^\s*(#|$)/.test(found)) continue;
    const read = markOf(found.trim());
    if (typeof read === 'string') faults.push({ row: i + 1, found, expected: read });
    else marks.push(read);
  }
  return { marks: marks.sort((a, b) => a.at - b.at), faults };
}

/** A mark, or what was expected in its place. */
function markOf(text: string): Mark | string {
  const [time = '', is = '', ...rest] = text.split(/\s+/);
  const [, hours = '0', minutes = '', seconds = ''] = TIME.exec(time) ?? [];
  if (minutes === '') return 'a time such as 0:01:02.500';
  const at = Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds);
  if (is === 'hold' || is === 'on' || is === 'end') return { is, at };
  const [first = '', copy = ''] = rest;
  if (is === 'line')
    return first === '' ? 'the id of a line after the word line' : { is, at, line: first };
  if (is !== 'seen') return 'line, hold, on, end or seen after the time';
  if (!CLOCK.test(first))
    return 'a time of day such as 2026-06-18T20:10:00+03:00 after the word seen';
  const note = rest.slice(2).join(' ');
  return note === '' ? 'a copy and what was seen on it' : { is, at, clock: first, copy, note };
}

/** A time as files of marks write it: `0:01:02.500`. */
export function markTime(seconds: number): string {
  const all = Math.round(seconds * 1000);
  const pad = (n: number, width: number) => String(n).padStart(width, '0');
  const [h, m, s] = [
    Math.floor(all / 3_600_000),
    Math.floor(all / 60_000) % 60,
    Math.floor(all / 1000) % 60,
  ];
  return `${h}:${pad(m, 2)}:${pad(s, 2)}.${pad(all % 1000, 3)}`;
}

import { civilOf, type DayRange, dayFrom, edtfOfRange, parseEdtf } from '../../evidence/index.ts';
import type { CalendarWords, Phrases } from './types.ts';

/** A day in words; `iso` as `YYYY-MM-DD`. */
export function tellDay({ calendar }: Phrases, iso: string): string {
  const { year, month, dayOfMonth } = civilOf(dayFrom(iso));
  return calendar.day(year, month, dayOfMonth);
}

/** A run of days in words: one end where a day, a month or a year says it all. */
export function tellRun(phrases: Phrases, first: string, last: string): string {
  return joined(phrases, runEnds(phrases, dayFrom(first), dayFrom(last)), 'run');
}

/**
 * The ends of a run of days in words, what both share said once; a single one where a day, a month
 * or a year says it all.
 */
export function runEnds({ calendar }: Phrases, first: number, last: number): readonly string[] {
  const [from = '', to] = edtfOfRange(first, last).split('/');
  if (to === undefined) return [plain(calendar, from)];
  const cut = calendar.yearFirst ? to : from;
  const short = shortened(calendar, cut, calendar.yearFirst ? from : to);
  return calendar.yearFirst ? [plain(calendar, from), short] : [short, plain(calendar, to)];
}

/**
 * A date in EDTF in words; what it has no words for comes back as written.
 */
export function tellEdtf(phrases: Phrases, text: string): string {
  const { vague } = phrases;
  const reading = parseEdtf(text);
  if (!reading.ok) return text;
  const { ranges, form, approximate, uncertain } = reading.date;
  const said = ranges.map((range) => rangeWords(phrases, range));
  const all = phrases.list(said, form === 'lists' ? 'and' : 'or');
  const about = approximate ? vague.about(all) : all;
  return uncertain ? vague.perhaps(about) : about;
}

function rangeWords(phrases: Phrases, { first, last }: DayRange): string {
  const { vague } = phrases;
  const [open, never] = [first === Number.NEGATIVE_INFINITY, last === Number.POSITIVE_INFINITY];
  if (open && never) return vague.anyDay;
  if (open) return vague.until(runEnds(phrases, last, last).join(''));
  if (never) return vague.since(runEnds(phrases, first, first).join(''));
  return joined(phrases, runEnds(phrases, first, last), 'between');
}

function joined({ vague }: Phrases, ends: readonly string[], how: 'between' | 'run'): string {
  const [from = '', to] = ends;
  return to === undefined ? from : vague[how](from, to);
}

/** A plain date, `YYYY`, `YYYY-MM` or `YYYY-MM-DD`. */
function plain(calendar: CalendarWords, text: string): string {
  const [year = 0, month, day] = text.split('-').map(Number);
  if (month === undefined) return calendar.year(year);
  return day === undefined ? calendar.month(year, month) : calendar.day(year, month, day);
}

/** A plain date without what it shares with another one of the same length. */
function shortened(calendar: CalendarWords, text: string, other: string): string {
  const [, month, day] = text.split('-').map(Number);
  if (text.length < 7 || text.slice(0, 4) !== other.slice(0, 4)) return plain(calendar, text);
  if (month === undefined || day === undefined) return calendar.monthAlone(month ?? 0);
  return text.slice(0, 7) === other.slice(0, 7)
    ? calendar.dayAlone(day)
    : calendar.monthDay(month, day);
}

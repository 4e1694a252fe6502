import { dayOf, weekdayOf } from '../day.ts';
import type { Part } from './dates/part.ts';
import type { TimePhrase } from './dates/phrases-of-time.ts';

/** The order of day and month that a sheet, a section or a column states. */
export type Habit = 'day-first' | 'month-first';

/** Languages that write a day as `4.3.1996` and never the other way (Unicode CLDR date formats). */
const DOTTED = new Set('de fi da nb cs sk pl ru tr et lv hr ro is uk sl bg'.split(' '));

/**
 * The readings that are left of a day that can be read two ways. Only these settle it: the day of
 * the week beside it, a habit that the notes state, or full stops in a clause that is written in a
 * language which has no other order. A market that the line names settles nothing: it is the hand
 * that writes the date, not the market, that has the habit.
 */
export function settle(
  time: TimePhrase,
  habit: Habit | undefined,
  written: ReadonlySet<string>,
): readonly Part[] {
  if (!time.twoWay) return time.parts;
  const weekday = time.weekday;
  if (weekday !== undefined) {
    const fitting = time.parts.filter(
      (part) =>
        part.year !== undefined && weekdayOf(dayOf(part.year, part.month!, part.day!)) === weekday,
    );
    if (fitting.length === 1) return fitting;
  }
  const [dayFirst, monthFirst] = time.parts;
  if (habit === 'day-first') return [dayFirst!];
  if (habit === 'month-first') return [monthFirst!];
  const dotted = time.style === 'dot' && [...written].some((language) => DOTTED.has(language));
  return dotted && !written.has('en') ? [dayFirst!] : time.parts;
}

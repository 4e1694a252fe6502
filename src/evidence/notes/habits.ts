import type { RawLine } from './lines.ts';
import type { Habit } from './order.ts';
import { passageOf } from './passage.ts';
import { habitIn } from './section.ts';
import { plain } from './tokens.ts';

/** The orders of day and month that a sheet states: for all of it, or for one of its sources. */
export interface Habits {
  readonly all: Habit | undefined;
  readonly of: ReadonlyMap<string, Habit>;
}

const ABOUT_DATES =
  /\b(?:dates?|days?|format|order|written|writes?|style|dd|mm|daten?|tage?|jours?|fechas?|datas?|d\/m|m\/d)/iu;

/** Finds the lines that state in which order days and months are written. */
export function habitsIn(lines: readonly RawLine[], known: ReadonlySet<string>): Habits {
  let all: Habit | undefined;
  const of = new Map<string, Habit>();
  for (const { body } of lines) {
    if (body.length > 300 || !ABOUT_DATES.test(body)) continue;
    const habit = habitIn(body);
    if (
      !habit ||
      passageOf(body).times.some(
        (time) => time.parts[0]!.day !== undefined && time.style !== 'slash',
      )
    )
      continue;
    const name = [...known].find((one) => plain(body).includes(one));
    const dated = passageOf(body).times.some((time) => time.parts[0]!.day !== undefined);
    if (name !== undefined) of.set(name, habit);
    else if (!dated || /\bdates?\b/iu.test(body)) all ??= habit;
  }
  return { all, of };
}

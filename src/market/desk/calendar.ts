import { calendarOf } from '../deadlines/calendar.ts';
import type { DecisionGround } from '../decide/types.ts';

/**
 * The deadlines of all copies that have not passed, as an iCalendar file.
 *
 * @param called a printing's name by its id
 */
export function deadlinesCalendar(
  { copies, on }: Pick<DecisionGround, 'copies' | 'on'>,
  called: (printing: string) => string,
): string {
  const entries = copies.flatMap(({ id, printings, clock }) =>
    clock.open
      .filter(({ left }) => left >= 0)
      .map((open) => ({
        ...open,
        called: `${id}, ${printings.map((one) => called(one.id)).join(' or ')}`,
      })),
  );
  return calendarOf(entries, on);
}

import ical, { ICalAlarmType } from 'ical-generator';
import type { Day } from '../../evidence/index.ts';
import type { OpenDeadline } from './deadlines.ts';

/** A deadline of a copy. */
export interface CalendarEntry extends OpenDeadline {
  /** What the copy is called. */
  readonly called: string;
}

/** How long before the last day a calendar speaks up, in seconds. */
const WARNING = 2 * 24 * 3600;

/**
 * Deadlines as an iCalendar file (`rfc5545`): an entry a whole day long on the last day of each, with
 * what started it, and a warning two days before.
 *
 * @param on the day that the answer holds for, stated as the time of writing
 */
export function calendarOf(entries: readonly CalendarEntry[], on: Day): string {
  const calendar = ical({ prodId: { company: 'Printlore', product: 'deadlines', language: 'EN' } });
  for (const {
    called,
    against,
    startsFrom,
    startsOn,
    days,
    counts,
    last,
    copy,
    parcel,
  } of entries) {
    const event = calendar.createEvent({
      id: `${copy || parcel}-${against}-${startsOn}-${days}@printlore.invalid`.replace(
        /[^\w@.-]/g,
        '-',
      ),
      stamp: midnight(on),
      start: midnight(last),
      end: midnight(last + 1),
      allDay: true,
      summary: `Last day against ${against}: ${called}`,
      description: `${days} ${counts} days from ${startsFrom} on ${startsOn}, at their earliest reading. The terms of the seller, the venue and the carrier and local law decide.`,
    });
    event.createAlarm({ type: ICalAlarmType.display, trigger: WARNING });
  }
  return calendar.toString();
}

/** The library writes whole days by Greenwich, whatever the clock of the machine says. */
function midnight(day: number): Date {
  return new Date(day * 86_400_000);
}

import { type Day, parseEdtf, weekdayOf } from '../../evidence/index.ts';

/** A row of `desk/deadlines.csv`. */
export interface DeadlineRow {
  readonly copy: string;
  readonly parcel: string;
  /** Whom it is against: the seller, the carrier, a venue. */
  readonly against: string;
  /** What started it, in the owner's words: arrived, bought. */
  readonly startsFrom: string;
  /** EDTF. */
  readonly startsOn: string;
  readonly days: number;
  readonly counts: 'calendar' | 'working';
  /** When it was met, or empty. */
  readonly done: string;
}

/** A deadline that is not met yet, at its earliest reading. */
export interface OpenDeadline extends DeadlineRow {
  /** The last day on which something can be done. */
  readonly last: Day;
  /** Days left on `today`, that day not counted; below 0 it has passed. */
  readonly left: number;
}

/** A deadline whose day cannot be told, and why. */
export interface UnclearDeadline extends DeadlineRow {
  readonly why: string;
}

/** What presses, the nearest first. */
export interface Clock {
  readonly open: readonly OpenDeadline[];
  readonly unclear: readonly UnclearDeadline[];
}

/**
 * The open deadlines of a copy, or of the parcel it came in, each at its earliest reading: the day on
 * which it starts is the first of its days, of a start known only within bounds the first day
 * counts, and working days are Monday to Friday. Holidays are not known; they could only make a
 * deadline of working days later. Sellers' terms and local law decide.
 * @param today the day on which days left are counted
 */
export function clockOf(
  rows: readonly DeadlineRow[],
  copy: { readonly id: string; readonly parcel: string },
  today: Day,
): Clock {
  const own = rows.filter(
    (row) =>
      row.done === '' &&
      (row.copy === copy.id ||
        (row.parcel !== '' && row.copy === '' && row.parcel === copy.parcel)),
  );
  const open: OpenDeadline[] = [];
  const unclear: UnclearDeadline[] = [];
  for (const row of own) {
    const start = startOf(row);
    if (typeof start === 'string') unclear.push({ ...row, why: start });
    else {
      const last = lastDayOf(start, row.days, row.counts);
      open.push({ ...row, last, left: last - today });
    }
  }
  return { open: open.sort((a, b) => a.last - b.last), unclear };
}

/**
 * The last of `days` days that begin with `start`; of working days, Saturdays and Sundays are passed
 * over.
 * @throws RangeError for fewer than one day
 */
export function lastDayOf(start: Day, days: number, counts: 'calendar' | 'working'): Day {
  if (!Number.isInteger(days) || days < 1)
    throw new RangeError(`A deadline has at least one whole day, found ${days}.`);
  if (counts === 'calendar') return (start + days - 1) as Day;
  let day = start;
  for (let left = days; ; day = (day + 1) as Day) {
    if (isWorking(day)) left -= 1;
    if (left === 0) return day;
  }
}

function startOf({ startsOn, days }: DeadlineRow): Day | string {
  if (!Number.isInteger(days) || days < 1) return 'the number of days is not entered';
  if (startsOn === '') return 'the day on which it starts is not entered';
  const reading = parseEdtf(startsOn);
  if (!reading.ok) return `${startsOn} is no date`;
  const first = reading.date.ranges[0]?.first ?? Number.NEGATIVE_INFINITY;
  return Number.isFinite(first) ? (first as Day) : 'the day on which it starts has no first day';
}

function isWorking(day: Day): boolean {
  return weekdayOf(day) <= 5;
}

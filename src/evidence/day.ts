/** A day of the proleptic Gregorian calendar, as whole days since 1 January 1970. */
export type Day = number & { readonly [dayBrand]: true };
declare const dayBrand: unique symbol;

/** A day as a person writes it; month 1 to 12, day of the month 1 to 31. */
export interface Civil {
  readonly year: number;
  readonly month: number;
  readonly dayOfMonth: number;
}

/**
 * The day number of a civil date, by counting days in eras of 400 years (`hinnant:2021`).
 * A day of the month beyond the month's end runs on into the next month: check dates from outside
 * with `parseEdtf`.
 */
export function dayOf(year: number, month: number, dayOfMonth: number): Day {
  const shifted = month > 2 ? year : year - 1;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const dayOfYear =
    Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + dayOfMonth - 1;
  const dayOfEra =
    yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return (era * 146_097 + dayOfEra - 719_468) as Day;
}

/** The civil date of a day number, the inverse of `dayOf` (`hinnant:2021`). */
export function civilOf(day: number): Civil {
  const z = day + 719_468;
  const era = Math.floor(z / 146_097);
  const dayOfEra = z - era * 146_097;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  );
  const dayOfYear =
    dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const mp = Math.floor((5 * dayOfYear + 2) / 153);
  const month = mp < 10 ? mp + 3 : mp - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    dayOfMonth: dayOfYear - Math.floor((153 * mp + 2) / 5) + 1,
  };
}

/** Day of the week, 1 (Monday) to 7 (Sunday) as in ISO 8601. */
export function weekdayOf(day: number): number {
  return ((((day + 3) % 7) + 7) % 7) + 1;
}

/** A day as ISO 8601 writes it: `YYYY-MM-DD`. */
export function isoOf(day: number): string {
  const { year, month, dayOfMonth } = civilOf(day);
  const sign = year < 0 ? '-' : '';
  const pad = (n: number, width: number) => String(n).padStart(width, '0');
  return `${sign}${pad(Math.abs(year), 4)}-${pad(month, 2)}-${pad(dayOfMonth, 2)}`;
}

/** The day number of an ISO day, the inverse of `isoOf`. Throws a `RangeError` where it is no day. */
export function dayFrom(iso: string): Day {
  const [, sign, year, month, day] = /^(-?)(\d{4,})-(\d\d)-(\d\d)$/.exec(iso) ?? [];
  if (!year || !month || !day) throw new RangeError(`dayFrom requires YYYY-MM-DD, got ${iso}`);
  return dayOf(Number(`${sign ?? ''}${year}`), Number(month), Number(day));
}

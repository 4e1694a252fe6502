/** Days from `first` to `last`, both included; `-Infinity` and `Infinity` where open or unknown. */
export interface DayRange {
  readonly first: number;
  readonly last: number;
}

/** A date in the Extended Date/Time Format of ISO 8601-2:2019, with the days that it can mean. */
export interface EdtfDate {
  readonly text: string;
  readonly level: 0 | 1 | 2;
  /** `lists`: all of the listed ones, in braces; every other form means one day within `ranges`. */
  readonly form: 'day' | 'month' | 'season' | 'year' | 'years' | 'interval' | 'set' | 'lists';
  /** Ascending and disjoint. */
  readonly ranges: readonly DayRange[];
  /** `~` or `%` on any part. */
  readonly approximate: boolean;
  /** `?` or `%` on any part. */
  readonly uncertain: boolean;
}

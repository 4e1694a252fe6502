import { civilOf, dayOf } from '../../evidence/index.ts';

/**
 * First and last day of the long axis: whole years that hold all the days given, with some air;
 * the last thirty years up to 2000 where there are none, for want of anything better to show.
 */
export function extent(days: Iterable<number>): readonly [number, number] {
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (const day of days) {
    if (day < first) first = day;
    if (day > last) last = day;
  }
  if (first > last) return [dayOf(1970, 1, 1), dayOf(2000, 1, 1)];
  const air = Math.max(60, (last - first) * 0.03);
  return [
    dayOf(civilOf(Math.floor(first - air)).year, 1, 1),
    dayOf(civilOf(Math.ceil(last + air)).year + 1, 1, 1),
  ];
}

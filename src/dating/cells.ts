import { civilOf, dayOf, weekdayOf } from '../evidence/index.ts';

/**
 * The days that a release event may have, as cells: single days where some reading of some claim
 * points, and blocks (months near the evidence, years far from it) for the smooth background.
 * A block holds the days from `lo` to `hi` that are not single cells. Cells are in order of `lo`.
 */
export interface Cells {
  readonly lo: number[];
  readonly hi: number[];
  /** Days of the cell by weekday, Monday first: seven numbers a cell. */
  readonly weekdays: number[];
}

/** How far from the evidence, in days, the background is cut into months. */
const MONTHS_NEAR = 200;

/**
 * @param points single days
 * @param near days near which the background is fine, ascending
 * @param first first day of the dossier's range
 * @param last last day of the dossier's range
 */
export function cellsOf(
  points: ReadonlySet<number>,
  near: readonly number[],
  first: number,
  last: number,
): Cells {
  const singles = [...points].filter((d) => d >= first && d <= last).sort((a, b) => a - b);
  const cells: Cells = { lo: [], hi: [], weekdays: [] };
  let s = 0;
  for (const [lo, hi] of blocksOf(near, first, last)) {
    const from = s;
    while (s < singles.length && singles[s]! <= hi) s++;
    pushBlock(cells, lo, hi, singles, from, s);
    for (let j = from; j < s; j++) push(cells, singles[j]!, singles[j]!, oneDay(singles[j]!));
  }
  return cells;
}

function push(cells: Cells, lo: number, hi: number, weekdays: readonly number[]) {
  cells.lo.push(lo);
  cells.hi.push(hi);
  for (const w of weekdays) cells.weekdays.push(w);
}

function pushBlock(
  cells: Cells,
  lo: number,
  hi: number,
  singles: readonly number[],
  from: number,
  to: number,
) {
  const days = hi - lo + 1 - (to - from);
  if (days === 0) return;
  const counts = weekdayCounts(lo, hi);
  for (let j = from; j < to; j++) counts[weekdayOf(singles[j]!) - 1]!--;
  push(cells, lo, hi, counts);
}

function oneDay(day: number): number[] {
  const counts = [0, 0, 0, 0, 0, 0, 0];
  counts[weekdayOf(day) - 1] = 1;
  return counts;
}

function weekdayCounts(lo: number, hi: number): number[] {
  const n = hi - lo + 1;
  const whole = Math.floor(n / 7);
  const counts = [whole, whole, whole, whole, whole, whole, whole];
  for (let d = lo + whole * 7; d <= hi; d++) counts[weekdayOf(d) - 1]!++;
  return counts;
}

/** Months near the evidence, years away from it, cut to the range. */
function* blocksOf(
  near: readonly number[],
  first: number,
  last: number,
): Generator<[number, number]> {
  const firstYear = civilOf(first).year;
  const lastYear = civilOf(last).year;
  let j = 0;
  for (let year = firstYear; year <= lastYear; year++) {
    const from = dayOf(year, 1, 1);
    const to = dayOf(year + 1, 1, 1) - 1;
    while (j < near.length && near[j]! < from - MONTHS_NEAR) j++;
    const fine = j < near.length && near[j]! <= to + MONTHS_NEAR;
    const pieces = fine ? 12 : 1;
    for (let m = 1; m <= pieces; m++) {
      const lo = Math.max(first, fine ? dayOf(year, m, 1) : from);
      const hi = Math.min(last, fine ? dayOf(year, m + 1, 1) - 1 : to);
      if (lo <= hi) yield [lo, hi];
    }
  }
}

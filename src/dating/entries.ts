import {
  type Calendar,
  FEW_DAYS_REACH,
  fewDays,
  firstOfMonth,
  nearMoment,
  swapped,
  yearSlip,
  yearsOn,
} from './kernels.ts';
import { LOCAL } from './problem.ts';
import {
  DAY_AFTER,
  DAY_BEFORE,
  FEW_DAYS,
  FIRST_OF_MONTH,
  NEAR_MOMENT,
  OTHER_MOMENT,
  RIGHT,
  SWAPPED,
  YEAR_OFF,
} from './readings.ts';
import type { Span } from './statements.ts';

/** Receives the probability of a statement's value by one reading, if the day lies in a cell. */
export interface Entries {
  add(cell: number, reading: number, coefficient: number): void;
}

/** The cells of one event, as slices of the problem's arrays. */
export interface EventCells {
  readonly lo: ArrayLike<number>;
  readonly hi: ArrayLike<number>;
  readonly from: number;
  readonly count: number;
}

/** Index of the last cell that begins on a day or before it, or −1. */
function lastFrom({ lo, from, count }: EventCells, day: number): number {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (lo[from + middle]! <= day) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/** Index within an event's cells of the cell that is exactly one day, or −1. */
export function cellOfDay(cells: EventCells, day: number): number {
  const k = lastFrom(cells, day);
  return k >= 0 && cells.lo[cells.from + k] === day && cells.hi[cells.from + k] === day ? k : -1;
}

/** Index of a cell from which on every cell that reaches a day, or lies after it, is found. */
function firstReaching(cells: EventCells, day: number): number {
  let k = Math.max(0, lastFrom(cells, day));
  while (k > 0 && cells.lo[cells.from + k] === cells.hi[cells.from + k]) k--;
  return k;
}

/**
 * Readings of a value that names one day by a source that dates another moment: that moment, or some
 * days beside it.
 *
 * @param centre the release day if the moment itself is stated
 * @param reach days within which the moment may be missed
 */
export function laggedEntries(
  centre: number,
  cells: EventCells,
  weight: number,
  reach: number,
  entries: Entries,
): void {
  for (let k = firstReaching(cells, centre - reach); k < cells.count; k++) {
    const lo = cells.lo[cells.from + k]!;
    const hi = cells.hi[cells.from + k]!;
    if (lo > centre + reach) return;
    if (lo === centre && hi === centre) entries.add(k, OTHER_MOMENT, weight);
    let near = 0;
    for (let d = Math.max(lo, centre - reach); d <= Math.min(hi, centre + reach); d++)
      if (d !== centre && (lo === hi || Math.abs(d - centre) > 2)) near += nearMoment(centre - d);
    if (near > 0) entries.add(k, NEAR_MOMENT, (weight * near) / (hi - lo + 1));
  }
}

/** Each cell that shares days with a run of days, and the share of its days that do. */
export function overlaps(
  cells: EventCells,
  first: number,
  last: number,
  emit: (k: number, share: number) => void,
): void {
  for (
    let k = firstReaching(cells, first);
    k < cells.count && cells.lo[cells.from + k]! <= last;
    k++
  ) {
    const lo = cells.lo[cells.from + k]!;
    const hi = cells.hi[cells.from + k]!;
    const shared = Math.min(hi, last) - Math.max(lo, first) + 1;
    if (shared > 0) emit(k, shared / (hi - lo + 1));
  }
}

/** Days about a value within which its readings are looked for cell by cell. */
const NEAR = 31;

/** Readings of a value that names one day. Cells that are blocks hold no day that a claim names. */
export function exactEntries(
  v: number,
  cells: EventCells,
  calendar: Calendar,
  weight: number,
  out: Entries,
): void {
  const monthFirst = firstOfMonth(calendar, v) === v;
  const add = (k: number) => {
    const lo = cells.lo[cells.from + k]!;
    const hi = cells.hi[cells.from + k]!;
    if (lo === hi) exactAtDay(v, lo, k, calendar, weight, monthFirst, out);
    else exactAtBlock(v, lo, hi, k, calendar, weight, monthFirst, out);
  };
  for (let k = firstReaching(cells, v - NEAR); k < cells.count; k++) {
    if (cells.lo[cells.from + k]! > v + NEAR) break;
    if (cells.hi[cells.from + k]! >= v - NEAR) add(k);
  }
  for (const day of [v - 366, v - 365, swapped(calendar, v), v + 365, v + 366]) {
    const k = Math.abs(day - v) > NEAR ? cellOfDay(cells, day) : -1;
    if (k >= 0) add(k);
  }
}

function exactAtDay(
  v: number,
  d: number,
  k: number,
  calendar: Calendar,
  weight: number,
  monthFirst: boolean,
  out: Entries,
): void {
  const delta = v - d;
  if (delta === 0) {
    out.add(k, RIGHT, weight);
    if (swapped(calendar, d) === d) out.add(k, SWAPPED, weight);
    if (monthFirst) out.add(k, FIRST_OF_MONTH, weight);
    out.add(k, YEAR_OFF, weight * (1 - yearSlip(calendar, d, -1) - yearSlip(calendar, d, 1)));
    return;
  }
  if (delta === -1) out.add(k, DAY_BEFORE, weight);
  if (delta === 1) out.add(k, DAY_AFTER, weight);
  if (Math.abs(delta) <= FEW_DAYS_REACH) {
    const p = fewDays(delta);
    if (p > 0) out.add(k, FEW_DAYS, weight * p);
    if (monthFirst && delta < 0 && firstOfMonth(calendar, d) === v)
      out.add(k, FIRST_OF_MONTH, weight);
  } else if (monthFirst && delta > -31 && delta < 0 && firstOfMonth(calendar, d) === v) {
    out.add(k, FIRST_OF_MONTH, weight);
  }
  if (Math.abs(delta) <= 340 && swapped(calendar, d) === v) out.add(k, SWAPPED, weight);
  if (delta >= 365 && delta <= 366 && yearsOn(calendar, d, 1) === v) {
    out.add(k, YEAR_OFF, weight * yearSlip(calendar, d, 1));
  }
  if (delta <= -365 && delta >= -366 && yearsOn(calendar, d, -1) === v) {
    out.add(k, YEAR_OFF, weight * yearSlip(calendar, d, -1));
  }
}

function exactAtBlock(
  v: number,
  lo: number,
  hi: number,
  k: number,
  calendar: Calendar,
  weight: number,
  monthFirst: boolean,
  out: Entries,
): void {
  if (v >= lo - FEW_DAYS_REACH && v <= hi + FEW_DAYS_REACH) {
    let sum = 0;
    for (let d = Math.max(lo, v - FEW_DAYS_REACH); d <= Math.min(hi, v + FEW_DAYS_REACH); d++) {
      if (Math.abs(v - d) > 3) sum += fewDays(v - d);
    }
    if (sum > 0) out.add(k, FEW_DAYS, (weight * sum) / (hi - lo + 1));
  }
  if (monthFirst && v <= hi && v >= lo - 31 && firstOfMonth(calendar, lo) === v && hi - lo < 32) {
    out.add(k, FIRST_OF_MONTH, weight);
  }
}

/** Weight of a day outside a coarse value by so many days: dated a day or a few off, or a year. */
function nearMiss(distance: number, soft: number): number {
  if (soft > 0) return 0.3 * Math.exp(-distance / soft);
  if (distance === 1) return 0.04;
  if (distance <= 10) return 0.02 * 0.8 ** distance;
  return distance >= 350 && distance <= 380 ? 0.004 : 0;
}

/** Readings of a value that spans several days, taken together: they hardly tell them apart. */
export function coarseEntries(
  spans: readonly Span[],
  cells: EventCells,
  soft: number,
  weight: number,
  out: Entries,
): void {
  for (let k = 0; k < cells.count; k++) {
    const lo = cells.lo[cells.from + k]!;
    const hi = cells.hi[cells.from + k]!;
    let share = 0;
    let near = Number.POSITIVE_INFINITY;
    for (const span of spans) {
      share += Math.max(0, Math.min(hi, span.hi) - Math.max(lo, span.lo) + 1) / (hi - lo + 1);
      near = Math.min(near, lo > span.hi ? lo - span.hi : hi < span.lo ? span.lo - hi : 0);
    }
    const coefficient = share > 0 ? share + (1 - share) * nearMiss(1, soft) : nearMiss(near, soft);
    if (coefficient > 1e-4) out.add(k, LOCAL, weight * Math.min(1, coefficient));
  }
}

/** A day marked approximate: stated near the day, with a spread of some days either way. */
export function approximateEntries(
  v: number,
  cells: EventCells,
  weight: number,
  out: Entries,
): void {
  const scale = 6;
  for (let k = 0; k < cells.count; k++) {
    const lo = cells.lo[cells.from + k]!;
    const hi = cells.hi[cells.from + k]!;
    const distance = v < lo ? lo - v : v > hi ? v - hi : lo === hi ? 0 : (hi - lo) / 4;
    if (distance > 60) continue;
    out.add(
      k,
      LOCAL,
      weight * ((distance === 0 ? 0.35 : 0) + (0.65 / (2 * scale)) * Math.exp(-distance / scale)),
    );
  }
}

import { civilOf, dayOf, weekdayOf } from '../evidence/index.ts';
import type { EventCells } from './entries.ts';
import { Column } from './grow.ts';
import type { Problem } from './problem.ts';
import type { EventSupport } from './support.ts';

/**
 * The days that release events may have, as cells: single days where some reading of some claim
 * points, and blocks (months near the evidence, runs of years far from it) for the smooth background. A
 * block holds the days from `lo` to `hi` that are not single cells. Cells are in order of `lo`.
 */
export type CellArrays = Pick<
  Problem,
  'cellStart' | 'cellLo' | 'cellHi' | 'cellWeekday' | 'cellWeekdays'
>;

/** How far from the evidence, in days, the background is cut into months. */
const MONTHS_NEAR = 75;
/** Far from it, years are taken together until they hold so many days. */
const FAR_DAYS = 1100;

/** A run of days, with how many of each weekday it holds, Monday first. */
interface Block {
  readonly lo: number;
  readonly hi: number;
  readonly weekdays: readonly number[];
}

interface Year extends Block {
  readonly months: readonly Block[];
}

/**
 * Lays out the cells of every event; together they hold each day of the range exactly once.
 *
 * @param supports for each event its single days, and where the background is fine and cut
 * @param first first day of the dossier's range
 * @param last last day of the dossier's range
 */
export function layCells(
  supports: readonly Pick<EventSupport, 'points' | 'near' | 'cuts'>[],
  first: number,
  last: number,
): CellArrays {
  const columns = new CellColumns();
  const years = yearsOf(first, last);
  const cellStart = new Int32Array(supports.length + 1);
  supports.forEach(({ points, near, cuts }, e) => {
    const singles = Int32Array.from(points)
      .filter((d) => d >= first && d <= last)
      .sort();
    let s = 0;
    for (const block of cutBlocks(blocksNear(years, near), cuts)) {
      const from = s;
      while (s < singles.length && singles[s]! <= block.hi) s++;
      columns.addBlock(block, singles.subarray(from, s));
    }
    cellStart[e + 1] = columns.length;
  });
  return { cellStart, ...columns.done() };
}

class CellColumns {
  private readonly lo = new Column();
  private readonly hi = new Column();
  private readonly weekday = new Column();
  private readonly weekdays = new Column();

  get length() {
    return this.lo.length;
  }

  /** A block without its single days, unless they are all of it, and then the single days. */
  addBlock({ lo, hi, weekdays }: Block, singles: Int32Array) {
    if (singles.length < hi - lo + 1) {
      this.push(lo, hi, -1);
      const counts = singles.length === 0 ? weekdays : without(weekdays, singles);
      for (let w = 0; w < 7; w++) this.weekdays.push(counts[w]!);
    }
    for (const day of singles) {
      const weekday = weekdayOf(day) - 1;
      this.push(day, day, weekday);
      for (let w = 0; w < 7; w++) this.weekdays.push(w === weekday ? 1 : 0);
    }
  }

  private push(lo: number, hi: number, weekday: number) {
    this.lo.push(lo);
    this.hi.push(hi);
    this.weekday.push(weekday);
  }

  done() {
    return {
      cellLo: new Int32Array(this.lo.done()),
      cellHi: new Int32Array(this.hi.done()),
      cellWeekday: new Int8Array(this.weekday.done()),
      cellWeekdays: new Uint16Array(this.weekdays.done()),
    };
  }
}

function without(weekdays: readonly number[], singles: Int32Array): number[] {
  const counts = [...weekdays];
  for (const day of singles) counts[weekdayOf(day) - 1]!--;
  return counts;
}

/** The cells of one event. */
export function sliceOf({ cellStart, cellLo, cellHi }: CellArrays, e: number): EventCells {
  const from = cellStart[e]!;
  return { lo: cellLo, hi: cellHi, from, count: cellStart[e + 1]! - from };
}

function yearsOf(first: number, last: number): Year[] {
  const years: Year[] = [];
  for (let year = civilOf(first).year; year <= civilOf(last).year; year++) {
    const cut = (month: number, next: number) =>
      blockOf(Math.max(first, dayOf(year, month, 1)), Math.min(last, dayOf(year, next, 1) - 1));
    const months = Array.from({ length: 12 }, (_, m) => cut(m + 1, m + 2));
    years.push({ ...cut(1, 13), months: months.filter(({ lo, hi }) => lo <= hi) });
  }
  return years;
}

function blockOf(lo: number, hi: number): Block {
  const n = Math.max(0, hi - lo + 1);
  const whole = Math.floor(n / 7);
  const weekdays = [whole, whole, whole, whole, whole, whole, whole];
  for (let d = lo + whole * 7; d <= hi; d++) weekdays[weekdayOf(d) - 1]!++;
  return { lo, hi, weekdays };
}

/** Cuts blocks into pieces that begin on the days of `cuts`. */
function* cutBlocks(blocks: Iterable<Block>, cuts: ReadonlySet<number>): Generator<Block> {
  const days = [...cuts].sort((a, b) => a - b);
  let j = 0;
  for (const block of blocks) {
    let from = block.lo;
    while (j < days.length && days[j]! <= block.lo) j++;
    for (; j < days.length && days[j]! <= block.hi; j++) {
      yield blockOf(from, days[j]! - 1);
      from = days[j]!;
    }
    yield from === block.lo ? block : blockOf(from, block.hi);
  }
}

/** Months near the evidence, runs of years away from it. */
function* blocksNear(years: readonly Year[], near: readonly number[]): Generator<Block> {
  let j = 0;
  let far: Block | undefined;
  for (const year of years) {
    while (j < near.length && near[j]! < year.lo - MONTHS_NEAR) j++;
    const fine = j < near.length && near[j]! <= year.hi + MONTHS_NEAR;
    if (far && (fine || far.hi - far.lo > FAR_DAYS)) {
      yield far;
      far = undefined;
    }
    if (fine) yield* year.months;
    else far = far ? joined(far, year) : year;
  }
  if (far) yield far;
}

function joined(a: Block, b: Block): Block {
  return { lo: a.lo, hi: b.hi, weekdays: a.weekdays.map((n, w) => n + b.weekdays[w]!) };
}

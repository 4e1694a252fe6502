import { civilOf, dayOf, weekdayOf } from '../evidence/index.ts';
import type { EventCells } from './entries.ts';
import { widened } from './grow.ts';
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
  length = 0;
  private lo = new Int32Array(1024);
  private hi = new Int32Array(1024);
  private weekday = new Int8Array(1024);
  private weekdays = new Uint16Array(7 * 1024);

  /** A block without its single days, unless they are all of it, and then the single days. */
  addBlock({ lo, hi, weekdays }: Block, singles: Int32Array) {
    if (singles.length < hi - lo + 1) {
      this.add(lo, hi, -1);
      const at = 7 * this.length - 7;
      for (let w = 0; w < 7; w++) this.weekdays[at + w] = weekdays[w]!;
      for (const day of singles) this.weekdays[at + weekdayOf(day) - 1]!--;
    }
    for (const day of singles) {
      const weekday = weekdayOf(day) - 1;
      this.add(day, day, weekday);
      this.weekdays[7 * this.length - 7 + weekday] = 1;
    }
  }

  private add(lo: number, hi: number, weekday: number) {
    if (this.length === this.lo.length) {
      this.lo = widened(this.lo);
      this.hi = widened(this.hi);
      this.weekday = widened(this.weekday);
      this.weekdays = widened(this.weekdays);
    }
    this.lo[this.length] = lo;
    this.hi[this.length] = hi;
    this.weekday[this.length++] = weekday;
  }

  done() {
    return {
      cellLo: this.lo.slice(0, this.length),
      cellHi: this.hi.slice(0, this.length),
      cellWeekday: this.weekday.slice(0, this.length),
      cellWeekdays: this.weekdays.slice(0, 7 * this.length),
    };
  }
}

/** The cell, of all cells, that holds a day of an event: the single day, or else its block; or −1. */
export function cellHolding({ cellStart, cellLo, cellHi }: CellArrays, e: number, day: number) {
  let block = -1;
  for (let k = cellStart[e]!; k < cellStart[e + 1]! && cellLo[k]! <= day; k++) {
    if (cellHi[k]! < day) continue;
    if (cellLo[k] === cellHi[k]) return k;
    block = k;
  }
  return block;
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
function cutBlocks(blocks: readonly Block[], cuts: ReadonlySet<number>): readonly Block[] {
  if (cuts.size === 0) return blocks;
  const days = [...cuts].sort((a, b) => a - b);
  const pieces: Block[] = [];
  let j = 0;
  for (const block of blocks) {
    let from = block.lo;
    while (j < days.length && days[j]! <= block.lo) j++;
    for (; j < days.length && days[j]! <= block.hi; j++) {
      pieces.push(blockOf(from, days[j]! - 1));
      from = days[j]!;
    }
    pieces.push(from === block.lo ? block : blockOf(from, block.hi));
  }
  return pieces;
}

/** Months near the evidence, runs of years away from it. */
function blocksNear(years: readonly Year[], near: readonly number[]): Block[] {
  const blocks: Block[] = [];
  let j = 0;
  let far: Block | undefined;
  for (const year of years) {
    while (j < near.length && near[j]! < year.lo - MONTHS_NEAR) j++;
    const fine = j < near.length && near[j]! <= year.hi + MONTHS_NEAR;
    if (far && (fine || far.hi - far.lo > FAR_DAYS)) {
      blocks.push(far);
      far = undefined;
    }
    if (fine) blocks.push(...year.months);
    else far = far ? joined(far, year) : year;
  }
  if (far) blocks.push(far);
  return blocks;
}

function joined(a: Block, b: Block): Block {
  return { lo: a.lo, hi: b.hi, weekdays: a.weekdays.map((n, w) => n + b.weekdays[w]!) };
}

import { weekdayOf } from '../evidence/index.ts';
import { isForest, type Order } from './cutset.ts';
import { earliestWeight, fillProduct, liftDay, setDay } from './days.ts';
import {
  drawForest,
  gather,
  marginalsDown,
  Room,
  type Spread,
  type Walk,
  walkForest,
} from './forest.ts';
import type { Problem } from './problem.ts';
import type { State } from './state.ts';
import { addCells, type Tally } from './tally.ts';
import { cellWeight, weekdayWeights } from './weekdays.ts';

/** Events that sequence facts tie together, and the way through those facts. */
export interface Group {
  readonly events: readonly number[];
  readonly walk: Walk;
}

/** Groups whose facts form a forest: their days are drawn together and exactly. */
export function forestGroups(problem: Problem): Group[] {
  const group = new Int32Array(problem.nEvents).fill(-1);
  const out: { events: number[]; orders: Order[] }[] = [];
  for (let e = 0; e < problem.nEvents; e++) {
    if (group[e]! >= 0 || neighbours(problem, e).length === 0) continue;
    const events = [e];
    group[e] = out.length;
    for (let i = 0; i < events.length; i++) {
      for (const o of neighbours(problem, events[i]!)) {
        if (group[o]! >= 0) continue;
        group[o] = out.length;
        events.push(o);
      }
    }
    out.push({ events, orders: ordersOf(problem, events) });
  }
  return out
    .filter(({ events, orders }) => isForest(events.length, orders))
    .map(({ events, orders }) => ({ events, walk: walkForest(events.length, orders) }));
}

function neighbours({ beforeStart, before, afterStart, after }: Problem, e: number): number[] {
  return [
    ...before.subarray(beforeStart[e]!, beforeStart[e + 1]!),
    ...after.subarray(afterStart[e]!, afterStart[e + 1]!),
  ];
}

function ordersOf(problem: Problem, events: readonly number[]): Order[] {
  const { afterStart, after, afterGap } = problem;
  const place = new Map(events.map((e, i) => [e, i]));
  const orders: Order[] = [];
  events.forEach((e, earlier) => {
    for (let j = afterStart[e]!; j < afterStart[e + 1]!; j++) {
      const strict = afterGap[j] === 1;
      const sameDay = strict ? 1 : earliestWeight(problem);
      orders.push({ earlier, later: place.get(after[j]!)!, strict, sameDay });
    }
  });
  return orders;
}

/** Cells of less than this share of an event's likeliest are left out of a joint draw. */
const FAINT = 3e-6;

interface CellSpread extends Spread {
  /** Cell, within the event, of each day. */
  readonly cells: Int32Array;
}

const room = new Room();

/**
 * Draws the days of a group together, and adds their exact marginals to the tally.
 *
 * @returns false where the facts leave no day in the dossier's range
 */
export function drawGroup(
  problem: Problem,
  state: State,
  { events, walk }: Group,
  tally?: Tally,
): boolean {
  for (const e of events) liftDay(problem, state, e);
  for (const e of events) fillProduct(problem, state, e, false);
  for (const faint of [FAINT, 0]) {
    room.clear();
    const spreads = events.map((e) => daysOf(problem, state, e, faint));
    const gathered = gather(spreads, walk, room);
    const drawn = drawForest(spreads, walk, gathered, state.random);
    if (!drawn) continue;
    events.forEach((e, i) => {
      const { days, cells } = spreads[i]!;
      setDay(problem, state, e, cells[drawn[i]!]!, days[drawn[i]!]!);
    });
    if (!tally) return true;
    marginalsDown(spreads, walk, gathered, room).forEach((marginal, i) => {
      addCells(tally, problem.cellStart[events[i]!]!, spreads[i]!.cells, marginal);
    });
    return true;
  }
  return false;
}

/** An event's `product` over single days, a block's share spread by weekday, faint cells left out. */
function daysOf(problem: Problem, state: State, e: number, faint: number): CellSpread {
  const { cellLo, cellHi, cellWeekday, cellWeek } = problem;
  const { product } = state;
  const from = problem.cellStart[e]!;
  const end = problem.cellStart[e + 1]!;
  const out = roomFor(problem, product, from, end, faint);
  let n = 0;
  const weeks = weekdayWeights(problem, state, e);
  for (let k = from; k < end; ) {
    const block = cellWeekday[k]! < 0 ? k++ : -1;
    const last = block < 0 ? Number.POSITIVE_INFINITY : cellHi[block]!;
    const kept = block >= 0 && product[block]! >= faint;
    const week = kept ? weeks.subarray(cellWeek[block]!, cellWeek[block]! + 7) : weeks;
    const density = kept ? product[block]! / cellWeight(problem, block, weeks) : 0;
    let next = kept ? cellLo[block]! : 0;
    for (; k < end && cellWeekday[k]! >= 0 && cellLo[k]! <= last; k++) {
      if (kept) n = addDays(out, n, block - from, next, cellLo[k]! - 1, density, week);
      if (product[k]! >= faint) n = addDay(out, n, k - from, cellLo[k]!, product[k]!);
      next = cellLo[k]! + 1;
    }
    if (kept) n = addDays(out, n, block - from, next, last, density, week);
  }
  return out;
}

/** Adds the days of a block, each by the weight of its weekday. */
function addDays(
  out: CellSpread,
  n: number,
  cell: number,
  first: number,
  last: number,
  density: number,
  week: Float64Array,
): number {
  let at = n;
  let weekday = weekdayOf(first) - 1;
  for (let day = first; day <= last; day++) {
    at = addDay(out, at, cell, day, density * week[weekday]!);
    weekday = weekday === 6 ? 0 : weekday + 1;
  }
  return at;
}

function addDay(
  { days, cells, weights }: CellSpread,
  n: number,
  cell: number,
  day: number,
  weight: number,
): number {
  days[n] = day;
  cells[n] = cell;
  weights[n] = weight;
  return n + 1;
}

/** Columns as long as the cells that are not faint have days. */
function roomFor(
  { cellWeekdays }: Problem,
  product: Float64Array,
  from: number,
  end: number,
  faint: number,
): CellSpread {
  let n = 0;
  for (let k = from; k < end; k++) {
    if (product[k]! < faint) continue;
    for (let w = 0; w < 7; w++) n += cellWeekdays[k * 7 + w]!;
  }
  return { days: room.cutWhole(n), cells: room.cutWhole(n), weights: room.cut(n) };
}

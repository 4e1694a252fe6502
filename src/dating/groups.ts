import { weekdayOf } from '../evidence/index.ts';
import { isForest, type Order } from './cutset.ts';
import { fillProduct, setDay } from './days.ts';
import { type DatedEvent, drawForest } from './poset.ts';
import type { Problem } from './problem.ts';
import { NO_DAY, type State } from './state.ts';
import { addCells, type Tally } from './tally.ts';
import { blockWeight, countWeekday, weekdayWeights } from './weekdays.ts';

/** Events that sequence facts tie together, and those facts by index into `events`. */
export interface Group {
  readonly events: readonly number[];
  readonly orders: readonly Order[];
}

/** Groups whose facts form a forest: their days are drawn together and exactly. */
export function forestGroups(problem: Problem): Group[] {
  const group = new Int32Array(problem.nEvents).fill(-1);
  const out: Group[] = [];
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
  return out.filter(({ events, orders }) => isForest(events.length, orders));
}

function neighbours({ beforeStart, before, afterStart, after }: Problem, e: number): number[] {
  return [
    ...before.subarray(beforeStart[e]!, beforeStart[e + 1]!),
    ...after.subarray(afterStart[e]!, afterStart[e + 1]!),
  ];
}

function ordersOf({ afterStart, after, afterGap }: Problem, events: readonly number[]): Order[] {
  const place = new Map(events.map((e, i) => [e, i]));
  const orders: Order[] = [];
  events.forEach((e, earlier) => {
    for (let j = afterStart[e]!; j < afterStart[e + 1]!; j++) {
      orders.push({ earlier, later: place.get(after[j]!)!, strict: afterGap[j] === 1 });
    }
  });
  return orders;
}

/** Cells of less than this share of an event's likeliest are left out of a joint draw. */
const FAINT = 3e-6;

interface Spread extends DatedEvent {
  readonly weights: Float64Array;
  /** Cell, within the event, of each day. */
  readonly cells: Int32Array;
}

const week = new Float64Array(7);

/**
 * Draws the days of a group together, and adds their exact marginals to the tally.
 *
 * @returns false where the facts leave no day in the dossier's range
 */
export function drawGroup(
  problem: Problem,
  state: State,
  { events, orders }: Group,
  tally?: Tally,
): boolean {
  for (const e of events) {
    if (state.day[e] !== NO_DAY) countWeekday(problem, state, e, -1);
    state.day[e] = NO_DAY;
    fillProduct(problem, state, e, false);
  }
  const spreadAll = (faint: number) => events.map((e) => daysOf(problem, state, e, faint));
  let spreads = spreadAll(FAINT);
  let drawn = drawForest(spreads, orders, state.random, tally !== undefined);
  if (!drawn) {
    spreads = spreadAll(0);
    drawn = drawForest(spreads, orders, state.random, tally !== undefined);
  }
  if (!drawn) return false;
  events.forEach((e, i) => {
    const { first, cells } = spreads[i]!;
    setDay(problem, state, e, cells[drawn.days[i]! - first]!, drawn.days[i]!);
    if (tally) addCells(tally, problem.cellStart[e]!, cells, drawn.marginals[i]!);
  });
  return true;
}

/** An event's `product` over single days, a block's share spread by weekday. */
function daysOf(problem: Problem, state: State, e: number, faint: number): Spread {
  const { product } = state;
  weekdayWeights(problem, state, e, week);
  const from = problem.cellStart[e]!;
  const end = problem.cellStart[e + 1]!;
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (let k = from; k < end; k++) {
    if (product[k]! < faint) continue;
    first = Math.min(first, problem.cellLo[k]!);
    last = Math.max(last, problem.cellHi[k]!);
  }
  const weights = new Float64Array(last - first + 1);
  const cells = new Int32Array(last - first + 1);
  for (let k = from; k < end; k++) {
    const lo = problem.cellLo[k]!;
    const hi = problem.cellHi[k]!;
    if (hi < first || lo > last) continue;
    if (lo === hi) {
      weights[lo - first] = product[k]!;
      cells[lo - first] = k - from;
      continue;
    }
    const density = product[k]! / blockWeight(problem, k, week);
    for (let d = Math.max(lo, first); d <= Math.min(hi, last); d++) {
      weights[d - first] = density * week[weekdayOf(d) - 1]!;
      cells[d - first] = k - from;
    }
  }
  return { first, weights, cells };
}

import { dayOf } from '../evidence/index.ts';
import type { Releases } from './events.ts';
import { type Calendar, swapped, yearsOn } from './kernels.ts';
import { MAX_LAGS } from './problem.ts';
import type { Statement } from './statements.ts';

/** Days that the range goes beyond the evidence; and, either way, beyond its middle at most. */
const MARGIN = 1100;
const MOST_DAYS = 75_000;
const EARLIEST = dayOf(1, 1, 1);
const LATEST = dayOf(9999, 12, 31);

/** First and last day that a dossier's releases may have: its evidence, widened by some years. */
export function rangeOf(statements: readonly Statement[]): { first: number; last: number } {
  const days: number[] = [];
  for (const { values } of statements) {
    for (const { lo, hi } of values[0]!.spans) {
      if (Number.isFinite(lo)) days.push(lo);
      if (Number.isFinite(hi)) days.push(hi);
    }
  }
  if (days.length === 0) return { first: 0, last: -1 };
  const sorted = new Float64Array(days).sort();
  const cut = Math.floor(sorted.length / 200);
  const middle = sorted[sorted.length >> 1]!;
  return {
    first: Math.max(EARLIEST, middle - MOST_DAYS, sorted[cut]! - MARGIN),
    last: Math.min(LATEST, middle + MOST_DAYS, sorted[sorted.length - 1 - cut]! + MARGIN),
  };
}

/** Days either side of a named day that are looked at singly: with much evidence, and with little. */
export const LARGE_REACH = 1;
export const SMALL_REACH = 7;

/** What is looked up about the whole dossier when it is found where days may lie. */
export interface Surroundings {
  /** Other releases of the same product, by event. */
  readonly siblings: readonly (readonly number[])[];
  readonly lags: { readonly lags: Int32Array; readonly nLags: Int32Array };
  readonly calendar: Calendar;
  /** Days either side of a named day that are looked at singly. */
  readonly reach: number;
}

/** The same about the days that a lag points at. */
const NEAR_REACH = 2;

export interface EventSupport {
  /** Single days that readings point at. */
  readonly points: Set<number>;
  /** Days near which the background is cut into months. */
  readonly near: number[];
  /** Days on which the background is cut anew: where what a claim allows begins or ends. */
  readonly cuts: Set<number>;
  /** Days that on-sale claims name. */
  readonly named: number[];
}

/**
 * Where each event's day may lie: the days that some reading of some statement points at. What one
 * event of a sequence is named on bounds the other.
 */
export function supportsOf(
  statements: readonly Statement[],
  { siblings, lags, calendar, reach }: Surroundings,
  { events, orders, weakOrders }: Pick<Releases, 'events' | 'orders' | 'weakOrders'>,
): EventSupport[] {
  const supports = Array.from(
    { length: events.length },
    (): EventSupport => ({ points: new Set(), near: [], cuts: new Set(), named: [] }),
  );
  const lastDay = calendar.first + calendar.year.length - 1;
  for (const statement of statements) {
    for (const e of statement.events)
      addStatement(statement, supports[e]!, lags, calendar, lastDay, reach);
    if (statement.property !== 'on-sale' || statement.events.length !== 1) continue;
    for (const { lo, hi } of statement.values[0]!.spans) {
      if (lo !== hi || reach < SMALL_REACH) continue;
      for (const e of siblings[statement.events[0]!]!) supports[e]!.points.add(lo);
    }
  }
  for (const [a, b] of [...orders, ...weakOrders]) {
    for (const day of supports[b]!.named) cutAt(supports[a]!, day);
    for (const day of supports[a]!.named) cutAt(supports[b]!, day);
  }
  for (const support of supports) support.near.sort((a, b) => a - b);
  return supports;
}

/** Cuts the background about a day that a neighbour in sequence may have. */
function cutAt({ cuts }: EventSupport, day: number) {
  cuts.add(day);
  cuts.add(day + 1);
}

function addStatement(
  { property, values, source }: Statement,
  { points, near, cuts, named }: EventSupport,
  { lags, nLags }: { readonly lags: Int32Array; readonly nLags: Int32Array },
  calendar: Calendar,
  lastDay: number,
  reach: number,
) {
  for (const { spans } of values) {
    for (const { lo, hi } of spans) {
      if (Number.isFinite(lo)) near.push(lo);
      if (Number.isFinite(hi) && hi !== lo) near.push(hi);
      if (lo !== hi || property !== 'on-sale') {
        cuts.add(lo);
        cuts.add(hi + 1);
      }
      if (lo !== hi || lo < calendar.first || lo > lastDay) continue;
      if (property === 'announced') points.add(lo);
      if (property !== 'on-sale') continue;
      named.push(lo);
      for (let d = lo - reach; d <= lo + reach; d++) points.add(d);
      points.add(swapped(calendar, lo));
      points.add(yearsOn(calendar, lo, 1));
      points.add(yearsOn(calendar, lo, -1));
      for (let l = 0; l < nLags[source]!; l++) {
        const day = lo - lags[source * MAX_LAGS + l]!;
        if (reach < SMALL_REACH) {
          points.add(day);
          continue;
        }
        for (let beside = -NEAR_REACH; beside <= NEAR_REACH; beside++) points.add(day + beside);
      }
    }
  }
}

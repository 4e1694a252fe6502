import { weekdayOf } from '../evidence/index.ts';
import type { Problem } from './problem.ts';
import type { State } from './state.ts';
import type { Tally } from './tally.ts';

/** How often releases fell on each weekday: by market and channel, by market, in all. */
export interface WeekdayCounts {
  /** Set while no habit is believed yet. */
  readonly evenWeek: boolean;
  readonly habitCounts: ArrayLike<number>;
  readonly marketCounts: ArrayLike<number>;
  readonly allCounts: ArrayLike<number>;
  readonly pooling: State['pooling'];
}

/** Weight of the even week in the dossier's own habit. */
const EVEN = 5;

let room = new Float64Array(7);

/**
 * Weight of each weekday for an event (mean 1), by the Dirichlet–multinomial predictive of its
 * market and channel, pooled towards its market and the dossier (`gelman:2013`, chapter 5): seven for
 * each kind of week that the event has, where habits are stated for some of its days. The event's own
 * day is left out.
 *
 * @returns an array that the next call writes over
 */
export function weekdayWeights(problem: Problem, state: WeekdayCounts, e: number): Float64Array {
  const from = problem.weekStart[e]! * 7;
  const length = problem.weekStart[e + 1]! * 7 - from;
  if (room.length < length) room = new Float64Array(length);
  const habit = problem.habitOf[e]! * 7;
  const market = problem.marketOf[e]! * 7;
  if (state.evenWeek) return room.fill(1);
  const { habitCounts, marketCounts, allCounts, pooling } = state;
  let nAll = 0;
  let nMarket = 0;
  for (let w = 0; w < 7; w++) {
    nAll += allCounts[w]!;
    nMarket += marketCounts[market + w]!;
  }
  for (let w = 0; w < 7; w++) {
    const all = (allCounts[w]! + EVEN / 7) / (nAll + EVEN);
    const here = (marketCounts[market + w]! + pooling.market * all) / (nMarket + pooling.market);
    const learned = habitCounts[habit + w]! + pooling.habit * here;
    for (let at = w; at < length; at += 7) room[at] = learned + problem.weekStated[from + at]!;
  }
  for (let at = 0; at < length; at += 7) {
    let sum = 0;
    for (let w = 0; w < 7; w++) sum += room[at + w]!;
    for (let w = 0; w < 7; w++) room[at + w]! *= 7 / sum;
  }
  return room;
}

/** Weight of a cell: of its days, each by its weekday. */
export function cellWeight(problem: Problem, k: number, week: ArrayLike<number>): number {
  const { cellWeekday, cellWeekdays, cellWeek } = problem;
  const at = cellWeek[k]!;
  if (cellWeekday[k]! >= 0) return week[at + cellWeekday[k]!]!;
  let sum = 0;
  for (let w = 0; w < 7; w++) sum += cellWeekdays[k * 7 + w]! * week[at + w]!;
  return sum;
}

/** Weight of one day of a cell, by its weekday. */
export function dayWeight(
  { cellWeek }: Problem,
  k: number,
  day: number,
  week: ArrayLike<number>,
): number {
  return week[cellWeek[k]! + weekdayOf(day) - 1]!;
}

/** Adds (+1) or takes away (−1) an event's current day from the counts of weekdays. */
export function countWeekday(problem: Problem, state: State, e: number, by: 1 | -1): void {
  const w = weekdayOf(state.day[e]!) - 1;
  state.habitCounts[problem.habitOf[e]! * 7 + w]! += by;
  state.marketCounts[problem.marketOf[e]! * 7 + w]! += by;
  state.allCounts[w]! += by;
}

/** How often releases fell on each weekday, averaged over sweeps. */
export interface AverageWeek {
  readonly habitCounts: Float64Array;
  readonly marketCounts: Float64Array;
  readonly allCounts: Float64Array;
}

/** The counts of weekdays, averaged over the kept sweeps. */
export function averageWeekdays(problem: Problem, tally: Tally): AverageWeek {
  const average = {
    habitCounts: new Float64Array(problem.nHabits * 7),
    marketCounts: new Float64Array(problem.nMarkets * 7),
    allCounts: new Float64Array(7),
  };
  for (let e = 0; e < problem.nEvents; e++) countAverage(problem, average, tally, e, 1);
  return average;
}

/** Adds (+1) or takes away (−1) what an event's days of all kept sweeps add to the average. */
export function countAverage(
  problem: Problem,
  { habitCounts, marketCounts, allCounts }: AverageWeek,
  { days, sweeps }: Pick<Tally, 'days' | 'sweeps'>,
  e: number,
  by: 1 | -1,
): void {
  for (const drawn of days) {
    const w = weekdayOf(drawn[e]!) - 1;
    habitCounts[problem.habitOf[e]! * 7 + w]! += by / sweeps;
    marketCounts[problem.marketOf[e]! * 7 + w]! += by / sweeps;
    allCounts[w]! += by / sweeps;
  }
}

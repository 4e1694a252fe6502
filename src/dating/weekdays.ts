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

/**
 * Weight of each weekday for an event (mean 1), by the Dirichlet–multinomial predictive of its
 * market and channel, pooled towards its market and the dossier (`gelman:2013`, chapter 5). The
 * event's own day is left out.
 */
export function weekdayWeights(
  problem: Problem,
  state: WeekdayCounts,
  e: number,
  out: Float64Array,
): void {
  const habit = problem.habitOf[e]! * 7;
  const market = problem.marketOf[e]! * 7;
  if (state.evenWeek) {
    out.fill(1);
    return;
  }
  const { habitCounts, marketCounts, allCounts, pooling } = state;
  let nAll = 0;
  let nMarket = 0;
  let nHabit = 0;
  for (let w = 0; w < 7; w++) {
    nAll += allCounts[w]!;
    nMarket += marketCounts[market + w]!;
    nHabit += habitCounts[habit + w]!;
  }
  for (let w = 0; w < 7; w++) {
    const all = (allCounts[w]! + EVEN / 7) / (nAll + EVEN);
    const here = (marketCounts[market + w]! + pooling.market * all) / (nMarket + pooling.market);
    out[w] = (7 * (habitCounts[habit + w]! + pooling.habit * here)) / (nHabit + pooling.habit);
  }
}

/** Weight of a cell that is a block: its days, each by its weekday. */
export function blockWeight({ cellWeekdays }: Problem, k: number, week: ArrayLike<number>): number {
  let sum = 0;
  for (let w = 0; w < 7; w++) sum += cellWeekdays[k * 7 + w]! * week[w]!;
  return sum;
}

/** Adds (+1) or takes away (−1) an event's current day from the counts of weekdays. */
export function countWeekday(problem: Problem, state: State, e: number, by: 1 | -1): void {
  const w = weekdayOf(state.day[e]!) - 1;
  state.habitCounts[problem.habitOf[e]! * 7 + w]! += by;
  state.marketCounts[problem.marketOf[e]! * 7 + w]! += by;
  state.allCounts[w]! += by;
}

/** The counts of weekdays, averaged over the kept sweeps. */
export function averageWeekdays(
  problem: Problem,
  { days, sweeps }: Tally,
): Omit<WeekdayCounts, 'pooling' | 'evenWeek'> {
  const habitCounts = new Float64Array(problem.nHabits * 7);
  const marketCounts = new Float64Array(problem.nMarkets * 7);
  const allCounts = new Float64Array(7);
  for (const drawn of days) {
    for (let e = 0; e < problem.nEvents; e++) {
      const w = weekdayOf(drawn[e]!) - 1;
      habitCounts[problem.habitOf[e]! * 7 + w]! += 1 / sweeps;
      marketCounts[problem.marketOf[e]! * 7 + w]! += 1 / sweeps;
      allCounts[w]! += 1 / sweeps;
    }
  }
  return { habitCounts, marketCounts, allCounts };
}

import { weekdayOf } from '../evidence/index.ts';
import { logLagPrior } from './lag-draw.ts';
import { fillLikelihood } from './likelihood.ts';
import { MAX_LAGS, type Problem } from './problem.ts';
import { priorOtherMoment } from './readings.ts';
import { NO_DAY, type State } from './state.ts';
import { cellWeight, countWeekday, dayWeight, weekdayWeights } from './weekdays.ts';

/**
 * How well a state explains its dossier: the log probability of all that is stated, of the lags and
 * of the weekdays, with each event's day summed out given the others. The density of the rates is
 * left out, since most of it is the prior's own scatter. Only states of one dossier can be compared,
 * and only where none of them holds a source to derive from another.
 */
export function fitOf(problem: Problem, state: State): number {
  let fit = weekdayFit(problem, state) + lagFit(problem, state);
  for (let e = 0; e < problem.nEvents; e++) fit += eventFit(problem, state, e);
  return fit;
}

/** Log of the sum over an event's days, less what its weekday prior gives there on average. */
function eventFit(problem: Problem, state: State, e: number): number {
  const from = problem.cellStart[e]!;
  const n = problem.cellStart[e + 1]! - from;
  const logs = new Float64Array(n);
  const habit = new Float64Array(n);
  const dated = state.day[e] !== NO_DAY;
  if (dated) countWeekday(problem, state, e, -1);
  const week = weekdayWeights(problem, state, e);
  if (dated) countWeekday(problem, state, e, 1);
  for (let k = 0; k < n; k++) {
    const days = problem.cellHi[from + k]! - problem.cellLo[from + k]! + 1;
    const weight = cellWeight(problem, from + k, week);
    habit[k] = Math.log(weight / days);
    logs[k] = Math.log(weight);
  }
  for (let v = problem.viewStart[e]!; v < problem.viewStart[e + 1]!; v++) {
    fillLikelihood(problem, state, v, n);
    for (let k = 0; k < n; k++) logs[k]! += Math.log(state.row[k]!);
  }
  const most = logs.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  let total = 0;
  let mean = 0;
  for (let k = 0; k < n; k++) {
    const p = Math.exp(logs[k]! - most);
    total += p;
    mean += p * habit[k]!;
  }
  return most + Math.log(total) - mean / total;
}

/** Log probability of the weekdays of all events, one after the other. */
function weekdayFit(problem: Problem, { day, cell, pooling }: State): number {
  const counts = {
    habitCounts: new Float64Array(problem.nHabits * 7),
    marketCounts: new Float64Array(problem.nMarkets * 7),
    allCounts: new Float64Array(7),
    pooling,
    evenWeek: false,
  };
  let fit = 0;
  for (let e = 0; e < problem.nEvents; e++) {
    if (day[e] === NO_DAY) continue;
    const w = weekdayOf(day[e]!) - 1;
    const week = weekdayWeights(problem, counts, e);
    fit += Math.log(dayWeight(problem, problem.cellStart[e]! + cell[e]!, day[e]!, week));
    counts.habitCounts[problem.habitOf[e]! * 7 + w]!++;
    counts.marketCounts[problem.marketOf[e]! * 7 + w]!++;
    counts.allCounts[w]!++;
  }
  return fit;
}

function lagFit({ nSources, nLags, lags }: Problem, { kinds, lagOf }: State): number {
  let fit = 0;
  for (let s = 0; s < nSources; s++) {
    if (nLags[s] === 0) continue;
    const prior = priorOtherMoment(kinds[s]!);
    const lag = lagOf[s]!;
    fit += lag < 0 ? Math.log(1 - prior) : Math.log(prior) + logLagPrior(lags[s * MAX_LAGS + lag]!);
  }
  return fit;
}

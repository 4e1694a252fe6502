import { withCopying } from './likelihood.ts';
import { LOCAL, MAX_LAGS, type Problem } from './problem.ts';
import { N_READINGS, RIGHT } from './readings.ts';
import type { State } from './state.ts';

/** What the views of one source look like with their days integrated out. */
export interface Prediction {
  /** Probability of each view's value under its source's own reading. */
  readonly plain: Float64Array;
  /** The part of it that "right" makes up. */
  readonly right: Float64Array;
  /** Probability of each view's value by the readings of each candidate lag, MAX_LAGS a view. */
  readonly lagged: Float64Array;
}

/** Takes a source's views out of (−1) or puts them back into (+1) the products of their events. */
export function applyViews(problem: Problem, state: State, views: Int32Array, by: 1 | -1): void {
  const { rows, product } = state;
  for (const v of views) {
    const from = problem.cellStart[problem.viewEvent[v]!]!;
    const at = problem.rowStart[v]!;
    const n = problem.rowStart[v + 1]! - at;
    for (let k = 0; k < n; k++) {
      const likelihood = withCopying(state, v, rows[at + k]!);
      if (by > 0) product[from + k]! *= likelihood;
      else product[from + k]! /= likelihood;
    }
  }
}

/**
 * Predicts each view of a source that was taken out of the products, over what every other
 * statement leaves of its day.
 */
export function predictViews(problem: Problem, state: State, views: Int32Array): Prediction {
  const { rows, product } = state;
  const plain = new Float64Array(views.length);
  const right = new Float64Array(views.length);
  const lagged = new Float64Array(views.length * MAX_LAGS);
  for (let j = 0; j < views.length; j++) {
    const v = views[j]!;
    const from = problem.cellStart[problem.viewEvent[v]!]!;
    const at = problem.rowStart[v]!;
    const n = problem.rowStart[v + 1]! - at;
    let rest = 0;
    let own = 0;
    for (let k = 0; k < n; k++) {
      rest += product[from + k]!;
      own += product[from + k]! * rows[at + k]!;
    }
    plain[j] = own / rest;
    right[j] = rightOf(problem, state, v, from) / rest;
    for (let l = 0; l < MAX_LAGS; l++)
      lagged[j * MAX_LAGS + l] = laggedOf(problem, state, v, l, from) / rest;
  }
  return { plain, right, lagged };
}

function rightOf(problem: Problem, { product, rates }: State, v: number, from: number): number {
  const c = problem.viewRate[v]!;
  if (c < 0) return 0;
  let sum = 0;
  const end = problem.entryStart[v + 1]!;
  for (let j = problem.entryStart[v]!; j < end; j++) {
    const r = problem.entryReading[j]!;
    if (r === RIGHT || r === LOCAL)
      sum += problem.entryCoef[j]! * product[from + problem.entryCell[j]!]!;
  }
  return sum * rates.shares[c * N_READINGS + RIGHT]!;
}

function laggedOf(
  problem: Problem,
  { product, rates }: State,
  v: number,
  l: number,
  from: number,
): number {
  const at = problem.viewRate[v]! * N_READINGS;
  let sum = 0;
  const end = problem.lagStart[v * MAX_LAGS + l + 1]!;
  for (let m = problem.lagStart[v * MAX_LAGS + l]!; m < end; m++) {
    const odds = rates.odds[at + problem.lagReading[m]!]!;
    sum += odds * problem.lagCoef[m]! * product[from + problem.lagCell[m]!]!;
  }
  return sum === 0 ? 0 : sum / oddsSum(rates.odds, at);
}

/** Sum of a rate cell's odds, a lag's readings among them. */
export function oddsSum(odds: Float64Array, at: number): number {
  let sum = 0;
  for (let r = 0; r < N_READINGS; r++) sum += odds[at + r]!;
  return sum;
}

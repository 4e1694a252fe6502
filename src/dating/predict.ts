import { fillLikelihood, fillRow, withCopying } from './likelihood.ts';
import { LOCAL, MAX_LAGS, type Problem } from './problem.ts';
import {
  DAY_AFTER,
  DAY_BEFORE,
  FEW_DAYS,
  isBeside,
  isOpen,
  N_READINGS,
  OTHER_MOMENT,
  RIGHT,
} from './readings.ts';
import type { State } from './state.ts';

/** What the views of one source look like with their days integrated out. */
export interface Prediction {
  /** Probability of each view's value under its source's own reading. */
  readonly plain: Float64Array;
  /** The part of it that "right", or the other moment, makes up. */
  readonly right: Float64Array;
  /** Odds times probability of each view's value by the readings of each candidate lag, MAX_LAGS a view. */
  readonly lagged: Float64Array;
  /** The same by the readings that miss the release by days. */
  readonly beside: Float64Array;
}

/** Changes what a source's views are worth, and the products of their events with it. */
export function changeViews(
  problem: Problem,
  state: State,
  views: Int32Array,
  change: () => void,
): void {
  applyViews(problem, state, views, -1);
  change();
  applyViews(problem, state, views, 1);
}

function applyViews(problem: Problem, state: State, views: Int32Array, by: 1 | -1): void {
  for (const v of views) {
    const e = problem.viewEvent[v]!;
    const from = problem.cellStart[e]!;
    const n = problem.cellStart[e + 1]! - from;
    if (by > 0) {
      fillLikelihood(problem, state, v, n);
      for (let k = 0; k < n; k++) state.product[from + k]! *= state.row[k]!;
    } else takeOut(problem, state, v, state.product, from, n);
  }
}

/** Divides an event's weights, laid out from `at` on, by a view's likelihood. */
function takeOut(
  problem: Problem,
  state: State,
  v: number,
  weights: Float64Array,
  at: number,
  n: number,
): void {
  fillLikelihood(problem, state, v, n);
  for (let k = 0; k < n; k++) weights[at + k]! /= state.row[k]!;
}

/**
 * Predicts each view of a source over what every other source's statements leave of its day.
 *
 * @param lags how many of the source's candidate lags are asked for
 */
export function predictViews(
  problem: Problem,
  state: State,
  views: Int32Array,
  lags: number,
): Prediction {
  const plain = new Float64Array(views.length);
  const right = new Float64Array(views.length);
  const lagged = new Float64Array(views.length * MAX_LAGS);
  const beside = new Float64Array(views.length);
  for (let j = 0; j < views.length; j++) {
    const v = views[j]!;
    const { total, own } = leaveRest(problem, state, v);
    plain[j] = own / total;
    right[j] = rightOf(problem, state, v) / total;
    if (lags > 0) beside[j] = besideOf(problem, state, v) / total;
    for (let l = 0; l < lags; l++)
      lagged[j * MAX_LAGS + l] = laggedOf(problem, state, v, l) / total;
  }
  return { plain, right, lagged, beside };
}

/**
 * Fills `state.rest` with an event's product without what a view's source says of it in its runs, and
 * sums it, alone and times the view's own likelihood.
 */
function leaveRest(problem: Problem, state: State, v: number): { total: number; own: number } {
  const { viewStart, viewSource, viewRun } = problem;
  const { row, rest } = state;
  const e = problem.viewEvent[v]!;
  const from = problem.cellStart[e]!;
  const n = problem.cellStart[e + 1]! - from;
  for (let k = 0; k < n; k++) rest[k] = state.product[from + k]!;
  for (let o = viewStart[e]!; o < viewStart[e + 1]!; o++) {
    if (o !== v && viewSource[o] === viewSource[v] && viewRun[o]! >= 0)
      takeOut(problem, state, o, rest, 0, n);
  }
  fillRow(problem, state, v);
  const copied = state.copyOf[v]! >= 0;
  let total = 0;
  let own = 0;
  for (let k = 0; k < n; k++) {
    rest[k]! /= copied ? withCopying(state, v, row[k]!) : row[k]!;
    total += rest[k]!;
    own += rest[k]! * row[k]!;
  }
  return { total, own };
}

function rightOf(problem: Problem, { rest, rates, lagOf }: State, v: number): number {
  const c = problem.viewRate[v]!;
  if (c < 0) return 0;
  let sum = 0;
  const end = problem.entryStart[v + 1]!;
  for (let j = problem.entryStart[v]!; j < end; j++) {
    const r = problem.entryReading[j]!;
    if (r === RIGHT || r === LOCAL) sum += problem.entryCoef[j]! * rest[problem.entryCell[j]!]!;
  }
  sum *= rates.shares[c * N_READINGS + RIGHT]!;
  const lag = lagOf[problem.viewSource[v]!]!;
  if (lag < 0) return sum;
  const moment = rates.shares[c * N_READINGS + OTHER_MOMENT]!;
  const last = problem.lagStart[v * MAX_LAGS + lag + 1]!;
  for (let m = problem.lagStart[v * MAX_LAGS + lag]!; m < last; m++) {
    if (problem.lagReading[m] === OTHER_MOMENT)
      sum += moment * problem.lagCoef[m]! * rest[problem.lagCell[m]!]!;
  }
  return sum;
}

function besideOf(problem: Problem, { rest, rates }: State, v: number): number {
  const at = problem.viewRate[v]! * N_READINGS;
  if (at < 0) return 0;
  const odds = (r: number) => rates.odds[at + r]!;
  const local = odds(DAY_BEFORE) + odds(DAY_AFTER) + odds(FEW_DAYS);
  let sum = 0;
  for (let j = problem.entryStart[v]!; j < problem.entryStart[v + 1]!; j++) {
    const r = problem.entryReading[j]!;
    const weight = r === LOCAL ? local : isBeside(r) ? odds(r) : 0;
    if (weight > 0) sum += weight * problem.entryCoef[j]! * rest[problem.entryCell[j]!]!;
  }
  return sum;
}

function laggedOf(problem: Problem, { rest, rates }: State, v: number, l: number): number {
  const at = problem.viewRate[v]! * N_READINGS;
  let sum = 0;
  const end = problem.lagStart[v * MAX_LAGS + l + 1]!;
  for (let m = problem.lagStart[v * MAX_LAGS + l]!; m < end; m++) {
    const odds = rates.odds[at + problem.lagReading[m]!]!;
    sum += odds * problem.lagCoef[m]! * rest[problem.lagCell[m]!]!;
  }
  return sum;
}

/** Sum of a rate cell's odds of the readings that are open to its source. */
export function oddsSum(odds: Float64Array, at: number, lagged: boolean): number {
  let sum = 0;
  for (let r = 0; r < N_READINGS; r++) if (isOpen(r, lagged)) sum += odds[at + r]!;
  return sum;
}

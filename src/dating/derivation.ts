import { pick } from '../maths/index.ts';
import { withCopying } from './likelihood.ts';
import { MAX_LAGS, type Problem } from './problem.ts';
import { N_READINGS, OTHER_MOMENT, priorOtherMoment } from './readings.ts';
import type { State } from './state.ts';

/** What the sources say of whom they took things from, laid out for the sampler. */
export interface Kinship {
  /** 1 at [source × nSources + other] where the source cites the other. */
  readonly cites: Uint8Array;
  /** Runs of each source. */
  readonly runsOf: readonly (readonly number[])[];
}

/** Prior odds: that a source derives from none; from one it cites; from any other (shared). */
const NONE = 1;
const CITED = 1.2;
const ANY = 0.35;

/** A value is written down wrong when copied with this chance. Judgement. */
const MISCOPY = 0.03;

/** Probability of a view's value, if it was taken from another view of the same release. */
export function matchOf(problem: Problem, v: number, from: number): number {
  const lo = problem.viewLo[v]!;
  const hi = problem.viewHi[v]!;
  const lo2 = problem.viewLo[from]!;
  const hi2 = problem.viewHi[from]!;
  if (lo <= lo2 && hi2 <= hi) return 1 - MISCOPY;
  if (lo2 <= lo && hi <= hi2) return lo === hi && lo === lo2 ? 0.05 : 0.002;
  if (lo !== hi || lo2 !== hi2) return 1e-4;
  return Math.abs(lo - lo2) <= 10 ? MISCOPY / 12 : MISCOPY / 600;
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
 * For each view of a source that was taken out of the products: its probability under its own
 * reading, with the day integrated out over what every other statement leaves, written into `plain`;
 * and into `lagged` the share of the day's weight that each candidate lag explains.
 */
export function predictViews(
  problem: Problem,
  state: State,
  views: Int32Array,
  plain: Float64Array,
  lagged: Float64Array,
): void {
  const { rows, product } = state;
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
    for (let l = 0; l < MAX_LAGS; l++) {
      let sum = 0;
      for (
        let m = problem.lagStart[v * MAX_LAGS + l]!;
        m < problem.lagStart[v * MAX_LAGS + l + 1]!;
        m++
      ) {
        sum += problem.lagCoef[m]! * product[from + problem.lagCell[m]!]!;
      }
      lagged[j * MAX_LAGS + l] = sum / rest;
    }
  }
}

/** Log of the prior of a lag: falls off from zero, wide. */
function logLagPrior(lag: number): number {
  return -Math.log(12 * Math.abs(lag) ** 0.9 + 4);
}

/**
 * Draws whether a source dates another moment, and at which lag, with its days integrated out.
 * Returns true where the lag changed, so that its rows must be filled anew.
 */
export function drawLag(
  problem: Problem,
  state: State,
  s: number,
  views: Int32Array,
  plain: Float64Array,
  lagged: Float64Array,
): boolean {
  const n = problem.nLags[s]!;
  if (n === 0) return false;
  const now = state.lagOf[s]!;
  const logs = new Float64Array(n + 1);
  const prior = priorOtherMoment(state.kinds[s]!);
  logs[0] = Math.log(1 - prior);
  for (let l = 0; l < n; l++)
    logs[l + 1] = Math.log(prior) + logLagPrior(problem.lags[s * MAX_LAGS + l]!);
  for (let j = 0; j < views.length; j++) {
    const v = views[j]!;
    if (problem.viewRate[v]! < 0) continue;
    const odds = state.rates.odds;
    const at = problem.viewRate[v]! * N_READINGS;
    let sum = 0;
    for (let r = 0; r < N_READINGS; r++) sum += odds[at + r]!;
    const share = odds[at + OTHER_MOMENT]! / sum;
    const part = now < 0 ? 0 : lagged[j * MAX_LAGS + now]! * share;
    const none = Math.max(1e-30, now < 0 ? plain[j]! : (plain[j]! - part) / (1 - share));
    logs[0]! += Math.log(withCopying(state, v, none));
    for (let l = 0; l < n; l++) {
      const p = (1 - share) * none + share * lagged[j * MAX_LAGS + l]!;
      logs[l + 1]! += Math.log(withCopying(state, v, p));
    }
  }
  const next = pickLog(state, logs) - 1;
  state.lagOf[s] = next;
  return next !== now;
}

function pickLog(state: State, logs: Float64Array): number {
  const most = Math.max(...logs);
  let total = 0;
  for (let i = 0; i < logs.length; i++) total += logs[i] = Math.exp(logs[i]! - most);
  return pick(state.random, logs, total);
}

/**
 * Draws from whom a source derives, all candidates and "none" at once over its whole runs, and then
 * which of its runs are copied. After `dong:2009`, with the days integrated out.
 *
 * @param plain what `predictViews` gave for the source's views, which lie in the order of its runs
 */
export function drawParent(
  problem: Problem,
  state: State,
  s: number,
  kin: Kinship,
  plain: Float64Array,
): void {
  const { nSources } = problem;
  const runs = kin.runsOf[s]!;
  if (runs.length === 0) return;
  const gains = new Map<number, Float64Array>();
  let j = 0;
  runs.forEach((run, at) => {
    for (let m = problem.runStart[run]!; m < problem.runStart[run + 1]!; m++) {
      addGains(problem, state, problem.runViews[m]!, plain[j++]!, gains, at, runs.length);
    }
  });
  const candidates = [-1];
  const logs = [Math.log(NONE)];
  const share = state.copyRate[1]!;
  for (const [q, gain] of gains) {
    if (descends(state, q, s)) continue;
    let log = Math.log(kin.cites[s * nSources + q] ? CITED : ANY / (nSources - 1));
    for (const g of gain)
      log += g > 30 ? g + Math.log(share) : Math.log(1 - share + share * Math.exp(g));
    candidates.push(q);
    logs.push(log);
  }
  const parent = candidates[pickLog(state, Float64Array.from(logs))]!;
  state.parentOf[s] = parent;
  const gain = gains.get(parent);
  runs.forEach((run, at) => {
    const odds = gain ? (share / (1 - share)) * Math.exp(Math.min(30, gain[at]!)) : 0;
    state.runCopied[run] = state.random.uniform() < odds / (1 + odds) ? 1 : 0;
    setRun(problem, state, run, parent);
  });
}

/** Adds, for each other source on the same release, how much better copying explains the value. */
function addGains(
  problem: Problem,
  state: State,
  v: number,
  plain: number,
  gains: Map<number, Float64Array>,
  run: number,
  nRuns: number,
) {
  const e = problem.viewEvent[v]!;
  const rate = state.copyRate[0]!;
  const group = problem.runGroup[problem.viewRun[v]!]!;
  for (let o = problem.viewStart[e]!; o < problem.viewStart[e + 1]!; o++) {
    if (o === v || problem.viewRun[o]! < 0 || problem.runGroup[problem.viewRun[o]!] !== group)
      continue;
    const q = problem.viewSource[o]!;
    let gain = gains.get(q);
    if (!gain) {
      gain = new Float64Array(nRuns);
      gains.set(q, gain);
    }
    gain[run]! += Math.log((rate * matchOf(problem, v, o)) / plain + 1 - rate);
  }
}

/** Whether a source's chain of parents reaches another. */
function descends(state: State, s: number, ancestor: number): boolean {
  for (let q = s, steps = 0; q >= 0 && steps < 100; q = state.parentOf[q]!, steps++)
    if (q === ancestor) return true;
  return false;
}

/** Points each view of a run at its parent's view, or at none. */
export function setRun(problem: Problem, state: State, run: number, parent: number): void {
  for (let m = problem.runStart[run]!; m < problem.runStart[run + 1]!; m++) {
    const v = problem.runViews[m]!;
    const from = state.runCopied[run] && parent >= 0 ? viewOf(problem, v, parent) : -1;
    state.copyOf[v] = from;
    if (from >= 0) state.copyMatch[v] = matchOf(problem, v, from);
  }
}

function viewOf(problem: Problem, v: number, source: number): number {
  const e = problem.viewEvent[v]!;
  const group = problem.runGroup[problem.viewRun[v]!];
  for (let o = problem.viewStart[e]!; o < problem.viewStart[e + 1]!; o++) {
    if (
      problem.viewSource[o] === source &&
      problem.viewRun[o]! >= 0 &&
      problem.runGroup[problem.viewRun[o]!] === group
    ) {
      return o;
    }
  }
  return -1;
}

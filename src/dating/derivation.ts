import { pickLog } from '../maths/index.ts';
import type { Kinship } from './kinship.ts';
import type { Prediction } from './predict.ts';
import type { Problem } from './problem.ts';
import { fillShares, sourceSloppiness, tiltSource } from './rates.ts';
import { N_READINGS, OTHER_MOMENT, RIGHT } from './readings.ts';
import type { State } from './state.ts';

/** A value is written down wrong when copied with this chance. Judgement. */
const MISCOPY = 0.03;
/** Probability of a view's value, if it was taken from another, by how the two compare. Judgement. */
const MATCHES = [1 - MISCOPY, 0.05, 0.002, 1e-4, MISCOPY / 12, MISCOPY / 600] as const;

/** Probability of a view's value, if it was taken from another view of the same release. */
export function matchOf(problem: Problem, v: number, from: number): number {
  return MATCHES[comparison(problem, v, from)]!;
}

/** How a view's value compares with another, as an index into `MATCHES`. */
function comparison(problem: Problem, v: number, from: number): number {
  const lo = problem.viewLo[v]!;
  const hi = problem.viewHi[v]!;
  const lo2 = problem.viewLo[from]!;
  const hi2 = problem.viewHi[from]!;
  if (lo <= lo2 && hi2 <= hi) return 0;
  if (lo2 <= lo && hi <= hi2) return lo === hi && lo === lo2 ? 1 : 2;
  if (lo !== hi || lo2 !== hi2) return 3;
  return Math.abs(lo - lo2) <= 10 ? 4 : 5;
}

/**
 * Changes of a source's sloppiness (log odds of all its errors) that are weighed with its parents.
 * The grid is laid so that a point of it, drawn evenly, falls on the value of now: else the move
 * back would not mirror the move there, and the chain would be too sure.
 */
const TILTS = [-2.5, -1.6, -1, -0.5, 0, 0.5, 1, 1.6, 2.5];
/** Where a source says much, its sloppiness is known well enough. */
const NO_TILT = [0];
/** Views of one source above which it says much. */
const LARGE = 400;

/** Every explanation of where a source has its days from, with its log weight. */
export interface ParentWeights {
  /** Sources it may derive from; −1, first, for none. */
  readonly candidates: readonly number[];
  readonly tilts: readonly number[];
  /** Tilts side by side for each candidate. */
  readonly logs: Float64Array;
  readonly gains: ReadonlyMap<number, Float64Array>;
}

/**
 * Weighs from whom a source derives, all candidates and "none" at once over its whole runs. After
 * `dong:2009`, with the days integrated out, and with the source's own sloppiness left open: two
 * good sources agree because both are right, and only what is rare and shared tells a copy from a
 * peer.
 *
 * @param prediction of the source's views, which lie in the order of its runs
 * @param only the one source that is weighed against none, where it is one
 */
export function weighParents(
  problem: Problem,
  state: State,
  s: number,
  { prior, runsOf }: Kinship,
  prediction: Prediction,
  only?: number,
): ParentWeights {
  const runs = runsOf[s]!;
  const grid = prediction.plain.length > LARGE ? NO_TILT : TILTS;
  const now = grid[state.random.below(grid.length)]!;
  const tilts = grid.map((tilt) => tilt - now);
  const tilted = tiltPredictions(problem, state, runs, prediction, tilts);
  const gains = gainsOf(problem, state, runs, tilted, tilts.length, only);
  const possible = (q: number) =>
    prior[s * problem.nSources + q]! > Number.NEGATIVE_INFINITY && !descends(state, q, s);
  const candidates = [-1, ...[...gains.keys()].filter(possible)];
  const share = state.copyRate[1]!;
  const logs = new Float64Array(candidates.length * tilts.length);
  const { value, variance } = sourceSloppiness(state.rates, s);
  tilts.forEach((tilt, t) => {
    const base = -((value + tilt) ** 2) / (2 * variance) + sumOfLogs(tilted, t, tilts.length);
    candidates.forEach((q, i) => {
      const gain =
        q < 0
          ? 0
          : prior[s * problem.nSources + q]! + runGain(gains.get(q)!, t, tilts.length, share);
      logs[i * tilts.length + t] = base + gain;
    });
  });
  return { candidates, tilts, logs, gains };
}

/** Where a source is held to have its days from. */
export interface Descent {
  /** −1 for none. */
  readonly parent: number;
  /** 1 for each of its runs that is copied. */
  readonly copied: Uint8Array;
  /** Change of its sloppiness, in log odds. */
  readonly tilt: number;
}

/** Draws from whom a source derives, and then which of its runs are copied; the state is left as it is. */
export function drawDescent(
  problem: Problem,
  state: State,
  s: number,
  kin: Kinship,
  prediction: Prediction,
): Descent {
  const { candidates, tilts, logs, gains } = weighParents(problem, state, s, kin, prediction);
  const drawn = pickLog(state.random, logs);
  const parent = candidates[Math.floor(drawn / tilts.length)]!;
  const t = drawn % tilts.length;
  const gain = gains.get(parent);
  const share = state.copyRate[1]!;
  const copied = Uint8Array.from(kin.runsOf[s]!, (_, at) => {
    const odds = gain
      ? (share / (1 - share)) * Math.exp(Math.min(30, gain[at * tilts.length + t]!))
      : 0;
    return state.random.uniform() < odds / (1 + odds) ? 1 : 0;
  });
  return { parent, copied, tilt: tilts[t]! };
}

/** A source with days of its own. */
export function noDescent(s: number, { runsOf }: Kinship): Descent {
  return { parent: -1, copied: new Uint8Array(runsOf[s]!.length), tilt: 0 };
}

/** Views of a source that are worth something else once it is held to have its days from there. */
export function viewsChanged(
  { runStart, runViews }: Problem,
  state: State,
  s: number,
  { runsOf }: Kinship,
  { parent, copied, tilt }: Descent,
): Int32Array {
  const other = parent !== state.parentOf[s];
  const views: number[] = [];
  runsOf[s]!.forEach((run, at) => {
    const was = state.runCopied[run]!;
    if (tilt === 0 && was === copied[at] && !(other && was === 1)) return;
    for (let m = runStart[run]!; m < runStart[run + 1]!; m++) views.push(runViews[m]!);
  });
  return Int32Array.from(views);
}

/** Holds a source to have its days from there. */
export function hold(
  problem: Problem,
  state: State,
  s: number,
  { runsOf }: Kinship,
  { parent, copied, tilt }: Descent,
): void {
  state.parentOf[s] = parent;
  runsOf[s]!.forEach((run, at) => {
    state.runCopied[run] = copied[at]!;
    setRun(problem, state, run, parent);
  });
  if (tilt === 0) return;
  tiltSource(state.rates, s, tilt);
  fillShares(state.rates, problem, state.lagOf);
}

/** Each view's probability under each tilt, tilts side by side. */
function tiltPredictions(
  problem: Problem,
  { rates }: State,
  runs: readonly number[],
  { plain, right }: Prediction,
  tilts: readonly number[],
): Float64Array {
  const out = new Float64Array(plain.length * tilts.length);
  const factors = tilts.map(Math.exp);
  let j = 0;
  for (const run of runs) {
    for (let m = problem.runStart[run]!; m < problem.runStart[run + 1]!; m++, j++) {
      const c = problem.viewRate[problem.runViews[m]!]!;
      const share =
        c < 0
          ? 0
          : rates.shares[c * N_READINGS + RIGHT]! + rates.shares[c * N_READINGS + OTHER_MOMENT]!;
      for (let t = 0; t < tilts.length; t++) {
        const f = c < 0 ? 1 : factors[t]!;
        out[j * tilts.length + t] =
          (right[j]! + f * (plain[j]! - right[j]!)) / (share + f * (1 - share));
      }
    }
  }
  return out;
}

function sumOfLogs(tilted: Float64Array, t: number, n: number): number {
  let sum = 0;
  for (let j = t; j < tilted.length; j += n) sum += Math.log(tilted[j]!);
  return sum;
}

function runGain(gain: Float64Array, t: number, n: number, share: number): number {
  let sum = 0;
  for (let at = t; at < gain.length; at += n) {
    const g = gain[at]!;
    if (g === 0) continue;
    sum += g > 30 ? g + Math.log(share) : Math.log(1 - share + share * Math.exp(g));
  }
  return sum;
}

/** For each other source, by run and tilt: how much better copying from it explains the values. */
function gainsOf(
  problem: Problem,
  state: State,
  runs: readonly number[],
  tilted: Float64Array,
  n: number,
  only?: number,
): Map<number, Float64Array> {
  const { viewEvent, viewStart, viewSource, viewRun, runGroup } = problem;
  const gains: (Float64Array | undefined)[] = new Array(problem.nSources).fill(undefined);
  const others: number[] = [];
  const rate = state.copyRate[0]!;
  const logs = new Float64Array(MATCHES.length * n);
  let j = 0;
  runs.forEach((run, at) => {
    const group = runGroup[run]!;
    for (let m = problem.runStart[run]!; m < problem.runStart[run + 1]!; m++, j++) {
      const v = problem.runViews[m]!;
      const e = viewEvent[v]!;
      logs.fill(Number.NaN);
      for (let o = viewStart[e]!; o < viewStart[e + 1]!; o++) {
        if (only !== undefined && viewSource[o] !== only) continue;
        if (o === v || viewRun[o]! < 0 || runGroup[viewRun[o]!] !== group) continue;
        const c = comparison(problem, v, o) * n;
        if (Number.isNaN(logs[c]))
          fillLogs(logs, c, rate * MATCHES[c / n]!, 1 - rate, tilted, j, n);
        let gain = gains[viewSource[o]!];
        if (!gain) {
          gain = new Float64Array(runs.length * n);
          gains[viewSource[o]!] = gain;
          others.push(viewSource[o]!);
        }
        for (let t = 0; t < n; t++) gain[at * n + t]! += logs[c + t]!;
      }
    }
  });
  return new Map(others.map((q) => [q, gains[q]!]));
}

/** Logs of how much better copying explains a view, under each tilt. */
function fillLogs(
  logs: Float64Array,
  at: number,
  match: number,
  plain: number,
  tilted: Float64Array,
  j: number,
  n: number,
): void {
  for (let t = 0; t < n; t++) logs[at + t] = Math.log(match / tilted[j * n + t]! + plain);
}

/** Whether a source's chain of parents reaches another. */
function descends(state: State, s: number, ancestor: number): boolean {
  for (let q = s, steps = 0; q >= 0 && steps < 100; q = state.parentOf[q]!, steps++)
    if (q === ancestor) return true;
  return false;
}

/** Points each view of a run at its parent's view, or at none. */
function setRun(problem: Problem, state: State, run: number, parent: number): void {
  for (let m = problem.runStart[run]!; m < problem.runStart[run + 1]!; m++) {
    const v = problem.runViews[m]!;
    const from = state.runCopied[run] && parent >= 0 ? viewOf(problem, v, parent) : -1;
    state.copyOf[v] = from;
    if (from >= 0) state.copyMatch[v] = matchOf(problem, v, from);
  }
}

/** The view of another source of the same release and run group, or −1. */
export function viewOf(problem: Problem, v: number, source: number): number {
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

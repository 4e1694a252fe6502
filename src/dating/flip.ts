import { hold, noDescent, viewsChanged, weighParents } from './derivation.ts';
import type { Kinship } from './kinship.ts';
import { changeViews, predictViews } from './predict.ts';
import type { Problem } from './problem.ts';
import type { State } from './state.ts';

/**
 * Weighs the two directions of a derivation against each other, with both sources let go: single
 * draws never turn a pair round, since neither may take from its own copy.
 *
 * @returns the source that is held to be the copy after all; both are left deriving from none
 */
export function drawDirection(
  problem: Problem,
  state: State,
  s: number,
  kin: Kinship,
  viewsOf: readonly Int32Array[],
): number {
  const q = state.parentOf[s]!;
  const none = noDescent(s, kin);
  const changed = viewsChanged(problem, state, s, kin, none);
  changeViews(problem, state, changed, () => hold(problem, state, s, kin, none));
  const forth = oddsOf(problem, state, s, q, kin, viewsOf);
  const back = oddsOf(problem, state, q, s, kin, viewsOf);
  return state.random.uniform() < 1 / (1 + Math.exp(back - forth)) ? s : q;
}

/** Log odds that a source derives from a given other against from none. */
function oddsOf(
  problem: Problem,
  state: State,
  s: number,
  from: number,
  kin: Kinship,
  viewsOf: readonly Int32Array[],
): number {
  const prediction = predictViews(problem, state, viewsOf[s]!, 0);
  const { candidates, tilts, logs } = weighParents(problem, state, s, kin, prediction, from);
  const place = candidates.indexOf(from);
  if (place < 0) return Number.NEGATIVE_INFINITY;
  const n = tilts.length;
  return logSum(logs.subarray(place * n, (place + 1) * n)) - logSum(logs.subarray(0, n));
}

function logSum(logs: Float64Array): number {
  const most = logs.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  return most + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - most), 0));
}

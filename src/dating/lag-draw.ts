import { pickLog } from '../maths/index.ts';
import { withCopying } from './likelihood.ts';
import { oddsSum, type Prediction } from './predict.ts';
import { MAX_LAGS, type Problem } from './problem.ts';
import { N_READINGS, priorOtherMoment } from './readings.ts';
import type { State } from './state.ts';

/** Log of the prior of a lag: falls off from zero, wide. */
export function logLagPrior(lag: number): number {
  return -Math.log(12 * Math.abs(lag) ** 0.9 + 4);
}

/**
 * Draws whether a source dates another moment, and at which lag, with its days integrated out.
 *
 * @returns index of the lag, or −1 for none; the state is left as it is
 */
export function drawLag(
  problem: Problem,
  state: State,
  s: number,
  views: Int32Array,
  { plain, lagged, beside }: Prediction,
): number {
  const n = problem.nLags[s]!;
  if (n === 0) return -1;
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
    const sums = { none: oddsSum(odds, at, false), lag: oddsSum(odds, at, true) };
    const own = now < 0 ? beside[j]! : lagged[j * MAX_LAGS + now]!;
    const rest = Math.max(1e-30, plain[j]! * (now < 0 ? sums.none : sums.lag) - own);
    logs[0]! += Math.log(withCopying(state, v, (rest + beside[j]!) / sums.none));
    for (let l = 0; l < n; l++) {
      const p = (rest + lagged[j * MAX_LAGS + l]!) / sums.lag;
      logs[l + 1]! += Math.log(withCopying(state, v, p));
    }
  }
  return pickLog(state.random, logs) - 1;
}

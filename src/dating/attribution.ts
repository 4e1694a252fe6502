import { pick } from '../maths/index.ts';
import { BINS, UNLISTED_HIST } from './histograms.ts';
import { DOUBT, noiseMass } from './likelihood.ts';
import { LOCAL, MAX_LAGS, type Problem } from './problem.ts';
import { COVER_DATE, FILLED_IN, N_READINGS, NOISE, RIGHT, YEAR_OFF } from './readings.ts';
import type { State } from './state.ts';

/** Column of `weigh` for "taken from the source's parent". */
export const COPIED = N_READINGS;

/**
 * Probability of a view's value by each reading (unnormalised, summing to its likelihood) at a cell
 * of its event, written into `out` (N_READINGS + 1 numbers).
 */
export function weigh(
  problem: Problem,
  state: State,
  v: number,
  k: number,
  out: Float64Array,
): number {
  out.fill(0);
  const { shares } = state.rates;
  const s = problem.viewRate[v]! * N_READINGS;
  const hist = problem.viewHist[v]! * BINS;
  const density = state.histDensity[hist + problem.bins[problem.rowStart[v]! + k]!]!;
  out[NOISE] =
    (shares[s + NOISE]! + DOUBT * problem.viewDoubt[v]!) *
    noiseMass(problem.viewScale[v]!, density);
  addEntries(problem, v, k, shares, s, out);
  const lag = state.lagOf[problem.viewSource[v]!]!;
  if (lag >= 0) {
    for (
      let j = problem.lagStart[v * MAX_LAGS + lag]!;
      j < problem.lagStart[v * MAX_LAGS + lag + 1]!;
      j++
    ) {
      if (problem.lagCell[j] !== k) continue;
      const r = problem.lagReading[j]!;
      out[r]! += problem.lagCoef[j]! * shares[s + r]!;
    }
  }
  out[FILLED_IN] = shares[s + FILLED_IN]! * problem.viewFilled[v]!;
  out[COVER_DATE] = shares[s + COVER_DATE]! * problem.viewCover[v]!;
  for (let j = problem.linkStart[v]!; j < problem.linkStart[v + 1]!; j++) {
    const day = state.day[problem.linkEvent[j]!]!;
    if (day < problem.viewLo[v]! || day > problem.viewHi[v]!) continue;
    const r = problem.linkReading[j]!;
    out[r]! += shares[s + r]! * problem.linkShare[j]!;
  }
  let total = 0;
  for (let r = 0; r < N_READINGS; r++) total += out[r]!;
  if (state.copyOf[v]! < 0) return total;
  const rate = state.copyRate[0]!;
  for (let r = 0; r < N_READINGS; r++) out[r]! *= 1 - rate;
  out[COPIED] = rate * state.copyMatch[v]!;
  return total * (1 - rate) + out[COPIED]!;
}

function addEntries(
  problem: Problem,
  v: number,
  k: number,
  shares: Float64Array,
  s: number,
  out: Float64Array,
) {
  const { entryCell, entryReading, entryCoef } = problem;
  for (let j = problem.entryStart[v]!; j < problem.entryStart[v + 1]!; j++) {
    if (entryCell[j] !== k) continue;
    const r = entryReading[j]!;
    if (r !== LOCAL) out[r]! += entryCoef[j]! * shares[s + r]!;
    else for (let q = RIGHT; q <= YEAR_OFF; q++) out[q]! += entryCoef[j]! * shares[s + q]!;
  }
}

const weights = new Float64Array(N_READINGS + 1);

/**
 * Draws how every statement came about, given the current days, and counts the readings.
 *
 * @param sums receives the probability of each reading of each view, if the sweep is kept
 */
export function drawReadings(
  problem: Problem,
  state: State,
  sums?: Float32Array,
): { copied: number; plain: number } {
  state.counts.fill(0);
  state.histCounts.fill(0);
  const tally = { copied: 0, plain: 0 };
  for (let v = 0; v < problem.nViews; v++) {
    if (problem.viewRing[v] !== v && state.random.uniform() > problem.viewShare[v]!) continue;
    const k = state.cell[problem.viewEvent[v]!]!;
    const hist = problem.viewHist[v]!;
    const c = problem.viewRate[v]!;
    if (c < 0) {
      if (hist !== UNLISTED_HIST)
        state.histCounts[hist * BINS + problem.bins[problem.rowStart[v]! + k]!]!++;
      continue;
    }
    const total = weigh(problem, state, v, k, weights);
    if (sums) for (let q = 0; q <= COPIED; q++) sums[v * (COPIED + 1) + q]! += weights[q]! / total;
    const r = pick(state.random, weights, total);
    if (state.copyOf[v]! >= 0) tally[r === COPIED ? 'copied' : 'plain']++;
    if (r === COPIED) continue;
    const row = c * (N_READINGS + 1);
    state.counts[row + r]!++;
    state.counts[row + N_READINGS]!++;
    if (r === NOISE) state.histCounts[hist * BINS + problem.bins[problem.rowStart[v]! + k]!]!++;
  }
  return tally;
}

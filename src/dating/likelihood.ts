import { BINS, UNLISTED_HIST } from './histograms.ts';
import { LOCAL, MAX_LAGS, type Problem } from './problem.ts';
import { COVER_DATE, FILLED_IN, N_READINGS, NOISE, RIGHT, YEAR_OFF } from './readings.ts';
import type { State } from './state.ts';

/** No value is wholly impossible on any day. */
const FLOOR = 1e-9;

/** Share of noise that is added for a value marked uncertain. */
export const DOUBT = 0.25;

/** Probability that noise of a density falls within a span of so many days, one half at most. */
export function noiseMass(days: number, density: number): number {
  return Math.min(0.5, days * density);
}

/** Fills `state.row`: the probability of a view's value for each cell of its event, copying apart. */
export function fillRow(problem: Problem, state: State, v: number): void {
  const { row, histDensity, histMass } = state;
  const { bins } = problem;
  const at = problem.rowStart[v]!;
  const n = problem.rowStart[v + 1]! - at;
  const hist = problem.viewHist[v]! * BINS;
  const scale = problem.viewScale[v]!;
  const c = problem.viewRate[v]!;
  if (c < 0) {
    for (let k = 0; k < n; k++) {
      const b = bins[at + k]!;
      row[k] = (b === 0 ? histMass[hist]! : histDensity[hist + b]! * scale) + FLOOR;
    }
    if (problem.viewHist[v] !== UNLISTED_HIST) shareWithRing(problem, state, v, n);
    return;
  }
  const { shares } = state.rates;
  const s = c * N_READINGS;
  const noise = shares[s + NOISE]! + DOUBT * problem.viewDoubt[v]!;
  const constant = constantOf(problem, state, v);
  for (let k = 0; k < n; k++)
    row[k] = noise * noiseMass(scale, histDensity[hist + bins[at + k]!]!) + constant;
  addEntries(problem, row, v, shares, s);
  const lag = state.lagOf[problem.viewSource[v]!]!;
  if (lag >= 0) addLag(problem, row, v, lag, shares, s);
  shareWithRing(problem, state, v, n);
}

function addEntries(
  { entryStart, entryCell, entryReading, entryCoef }: Problem,
  row: Float64Array,
  v: number,
  shares: Float64Array,
  s: number,
) {
  const local = localShare(shares, s);
  const end = entryStart[v + 1]!;
  for (let j = entryStart[v]!; j < end; j++) {
    const r = entryReading[j]!;
    row[entryCell[j]!]! += entryCoef[j]! * (r === LOCAL ? local : shares[s + r]!);
  }
}

/** Share of the readings that leave the day where it is, or near. */
function localShare(shares: Float64Array, s: number): number {
  let sum = 0;
  for (let r = RIGHT; r <= YEAR_OFF; r++) sum += shares[s + r]!;
  return sum;
}

function addLag(
  { lagStart, lagCell, lagReading, lagCoef }: Problem,
  row: Float64Array,
  v: number,
  lag: number,
  shares: Float64Array,
  s: number,
) {
  const end = lagStart[v * MAX_LAGS + lag + 1]!;
  for (let j = lagStart[v * MAX_LAGS + lag]!; j < end; j++)
    row[lagCell[j]!]! += lagCoef[j]! * shares[s + lagReading[j]!]!;
}

/** Probability of the view's value by readings that take it from elsewhere, whatever its day. */
function constantOf(problem: Problem, { rates, day }: State, v: number): number {
  const { shares } = rates;
  const { linkEvent, linkReading, linkShare } = problem;
  const s = problem.viewRate[v]! * N_READINGS;
  const lo = problem.viewLo[v]!;
  const hi = problem.viewHi[v]!;
  let sum =
    FLOOR +
    shares[s + FILLED_IN]! * problem.viewFilled[v]! +
    shares[s + COVER_DATE]! * problem.viewCover[v]!;
  const end = problem.linkStart[v + 1]!;
  for (let j = problem.linkStart[v]!; j < end; j++) {
    const there = day[linkEvent[j]!]!;
    if (there >= lo && there <= hi) sum += shares[s + linkReading[j]!]! * linkShare[j]!;
  }
  return sum;
}

/** A statement that may concern another event: its share here, and what it is worth there. */
function shareWithRing(problem: Problem, state: State, v: number, n: number) {
  let other = problem.viewRing[v]!;
  if (other === v) return;
  const share = problem.viewShare[v]!;
  let elsewhere = 0;
  for (; other !== v; other = problem.viewRing[other]!) {
    const k = state.cell[problem.viewEvent[other]!]!;
    elsewhere += share * (k < 0 ? UNDATED : valueAt(problem, state, other, k));
  }
  for (let k = 0; k < n; k++) state.row[k] = share * state.row[k]! + elsewhere;
}

/** What a statement is worth at an event that has no day yet. */
const UNDATED = 1e-5;

/** Probability of a view's value at one cell of its event, copying and the statement's other events apart. */
export function valueAt(problem: Problem, state: State, v: number, k: number): number {
  const b = problem.bins[problem.rowStart[v]! + k]!;
  const hist = problem.viewHist[v]! * BINS;
  const scale = problem.viewScale[v]!;
  const c = problem.viewRate[v]!;
  if (c < 0)
    return (b === 0 ? state.histMass[hist]! : state.histDensity[hist + b]! * scale) + FLOOR;
  const { shares } = state.rates;
  const s = c * N_READINGS;
  const noise = shares[s + NOISE]! + DOUBT * problem.viewDoubt[v]!;
  let sum = noise * noiseMass(scale, state.histDensity[hist + b]!) + constantOf(problem, state, v);
  const { entryCell, entryReading, entryCoef } = problem;
  for (let j = problem.entryStart[v]!; j < problem.entryStart[v + 1]!; j++) {
    if (entryCell[j] !== k) continue;
    const r = entryReading[j]!;
    sum += entryCoef[j]! * (r === LOCAL ? localShare(shares, s) : shares[s + r]!);
  }
  const lag = state.lagOf[problem.viewSource[v]!]!;
  if (lag < 0) return sum;
  const { lagStart, lagCell, lagReading, lagCoef } = problem;
  for (let j = lagStart[v * MAX_LAGS + lag]!; j < lagStart[v * MAX_LAGS + lag + 1]!; j++)
    if (lagCell[j] === k) sum += lagCoef[j]! * shares[s + lagReading[j]!]!;
  return sum;
}

/** Fills `state.row` with a view's likelihood at the `n` cells of its event, copying included. */
export function fillLikelihood(problem: Problem, state: State, v: number, n: number): void {
  fillRow(problem, state, v);
  if (state.copyOf[v]! < 0) return;
  for (let k = 0; k < n; k++) state.row[k] = withCopying(state, v, state.row[k]!);
}

/** Likelihood of a view at a cell, copying included. */
export function withCopying(state: State, v: number, plain: number): number {
  if (state.copyOf[v]! < 0) return plain;
  const rate = state.copyRate[0]!;
  return rate * state.copyMatch[v]! + (1 - rate) * plain;
}

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

/** Fills a view's row: the probability of its value for each cell of its event, copying apart. */
export function fillRow(problem: Problem, state: State, v: number): void {
  const at = problem.rowStart[v]!;
  const n = problem.rowStart[v + 1]! - at;
  const { rows, histDensity, histMass } = state;
  const { bins } = problem;
  const hist = problem.viewHist[v]! * BINS;
  const scale = problem.viewScale[v]!;
  const c = problem.viewRate[v]!;
  if (c < 0) {
    for (let k = 0; k < n; k++) {
      const b = bins[at + k]!;
      rows[at + k] = (b === 0 ? histMass[hist]! : histDensity[hist + b]! * scale) + FLOOR;
    }
    if (problem.viewHist[v] === UNLISTED_HIST) return;
    shareWithRing(problem, state, v, at, n);
    return;
  }
  const shares = state.rates.shares;
  const s = c * N_READINGS;
  const noise = shares[s + NOISE]! + DOUBT * problem.viewDoubt[v]!;
  const constant = constantOf(problem, state, v) + FLOOR;
  state.constant[v] = constant;
  for (let k = 0; k < n; k++)
    rows[at + k] = noise * noiseMass(scale, histDensity[hist + bins[at + k]!]!) + constant;
  addEntries(problem, rows, at, v, shares, s);
  const lag = state.lagOf[problem.viewSource[v]!]!;
  if (lag >= 0) addLag(problem, rows, at, v, lag, shares, s);
  shareWithRing(problem, state, v, at, n);
}

function addEntries(
  problem: Problem,
  rows: Float32Array,
  at: number,
  v: number,
  shares: Float64Array,
  s: number,
) {
  const { entryCell, entryReading, entryCoef } = problem;
  let local = 0;
  for (let r = RIGHT; r <= YEAR_OFF; r++) local += shares[s + r]!;
  const end = problem.entryStart[v + 1]!;
  for (let j = problem.entryStart[v]!; j < end; j++) {
    const r = entryReading[j]!;
    rows[at + entryCell[j]!]! += entryCoef[j]! * (r === LOCAL ? local : shares[s + r]!);
  }
}

function addLag(
  problem: Problem,
  rows: Float32Array,
  at: number,
  v: number,
  lag: number,
  shares: Float64Array,
  s: number,
) {
  const end = problem.lagStart[v * MAX_LAGS + lag + 1]!;
  for (let j = problem.lagStart[v * MAX_LAGS + lag]!; j < end; j++) {
    rows[at + problem.lagCell[j]!]! += problem.lagCoef[j]! * shares[s + problem.lagReading[j]!]!;
  }
}

/** Brings a filled row up to date where the events that it may have been taken from have moved. */
export function refreshRow(problem: Problem, state: State, v: number): void {
  if (problem.viewRing[v] !== v) {
    fillRow(problem, state, v);
    return;
  }
  if (problem.viewRate[v]! < 0) return;
  const constant = constantOf(problem, state, v) + FLOOR;
  const change = constant - state.constant[v]!;
  if (change === 0) return;
  state.constant[v] = constant;
  const end = problem.rowStart[v + 1]!;
  for (let j = problem.rowStart[v]!; j < end; j++) state.rows[j]! += change;
}

/** Probability of the view's value by readings that take it from elsewhere, whatever its day. */
function constantOf(problem: Problem, state: State, v: number): number {
  const { shares } = state.rates;
  const s = problem.viewRate[v]! * N_READINGS;
  let sum =
    shares[s + FILLED_IN]! * problem.viewFilled[v]! +
    shares[s + COVER_DATE]! * problem.viewCover[v]!;
  const lo = problem.viewLo[v]!;
  const hi = problem.viewHi[v]!;
  const end = problem.linkStart[v + 1]!;
  for (let j = problem.linkStart[v]!; j < end; j++) {
    const day = state.day[problem.linkEvent[j]!]!;
    if (day >= lo && day <= hi) sum += shares[s + problem.linkReading[j]!]! * problem.linkShare[j]!;
  }
  return sum;
}

/** A statement that may concern another event: its share here, and what it is worth there. */
function shareWithRing(problem: Problem, state: State, v: number, at: number, n: number) {
  let other = problem.viewRing[v]!;
  if (other === v) return;
  const share = problem.viewShare[v]!;
  let elsewhere = 0;
  for (; other !== v; other = problem.viewRing[other]!)
    elsewhere += share * valueAtDay(problem, state, other);
  for (let k = 0; k < n; k++) state.rows[at + k] = share * state.rows[at + k]! + elsewhere;
}

/** What another view of the same statement is worth at its event's current day, ring left out. */
function valueAtDay(problem: Problem, state: State, v: number): number {
  const k = state.cell[problem.viewEvent[v]!]!;
  if (k < 0) return 1e-5;
  const b = problem.bins[problem.rowStart[v]! + k]!;
  const hist = problem.viewHist[v]! * BINS;
  const c = problem.viewRate[v]!;
  const scale = problem.viewScale[v]!;
  if (c < 0)
    return (b === 0 ? state.histMass[hist]! : state.histDensity[hist + b]! * scale) + FLOOR;
  const { shares } = state.rates;
  const s = c * N_READINGS;
  let sum = shares[s + NOISE]! * noiseMass(scale, state.histDensity[hist + b]!);
  let local = 0;
  for (let r = RIGHT; r <= YEAR_OFF; r++) local += shares[s + r]!;
  for (let j = problem.entryStart[v]!; j < problem.entryStart[v + 1]!; j++) {
    if (problem.entryCell[j] !== k) continue;
    const r = problem.entryReading[j]!;
    sum += problem.entryCoef[j]! * (r === LOCAL ? local : shares[s + r]!);
  }
  return sum;
}

/** Likelihood of a view at a cell, copying included. */
export function withCopying(state: State, v: number, plain: number): number {
  if (state.copyOf[v]! < 0) return plain;
  const rate = state.copyRate[0]!;
  return rate * state.copyMatch[v]! + (1 - rate) * plain;
}

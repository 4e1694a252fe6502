import type { SourceKind } from '../evidence/index.ts';
import type { Chance } from '../maths/index.ts';
import {
  BINS,
  binWidths,
  COVER_HIST,
  FIXED_HISTS,
  histPrior,
  UNLISTED_HIST,
  unlistedMass,
} from './histograms.ts';
import type { Problem } from './problem.ts';
import { createRates, fillShares, type Rates } from './rates.ts';
import { N_READINGS } from './readings.ts';

/** Everything that one chain holds; the arrays are changed in place. */
export interface State {
  readonly random: Chance;
  readonly kinds: readonly SourceKind[];
  readonly rates: Rates;
  /** How often each reading was drawn in each rate cell, and the total behind them. */
  readonly counts: Int32Array;
  /** Index of the lag that a source is held to date at; −1 for none. */
  readonly lagOf: Int32Array;
  /** The source that a source is held to derive from; −1 for none. */
  readonly parentOf: Int32Array;
  /** 1 where a run is held to be taken from its source's parent. */
  readonly runCopied: Uint8Array;
  /** For each view, the parent's view of the same release where its run is copied; else −1. */
  readonly copyOf: Int32Array;
  /** Probability of the view's value if taken from `copyOf`. */
  readonly copyMatch: Float32Array;
  /** Chance that a statement within a copied run is copied; share of a deriving source's runs. */
  readonly copyRate: Float64Array;
  readonly histMass: Float64Array;
  readonly histDensity: Float64Array;
  readonly histCounts: Int32Array;
  /** Current day and cell (within the event) of each event. */
  readonly day: Int32Array;
  readonly cell: Int32Array;
  /** Share of neighbouring releases that fall on one day. */
  together: number;
  readonly habitCounts: Int32Array;
  readonly marketCounts: Int32Array;
  readonly allCounts: Int32Array;
  /** How firmly a habit's weekdays follow its market's, and a market's the dossier's. */
  readonly pooling: { habit: number; market: number };
  /** Set while no weekday habit is believed yet. */
  evenWeek: boolean;
  /** Prior times likelihood for each cell of each event. */
  readonly product: Float64Array;
  /** Room for a view's likelihood at each cell of its event. */
  readonly row: Float64Array;
  /** Room for an event's product with some views taken out. */
  readonly rest: Float64Array;
}

export const NO_DAY = -0x80000000;

/** A chain at its beginning: prior rates, no lags, no derivations, no days. */
export function createState(problem: Problem, kinds: readonly SourceKind[], random: Chance): State {
  const { nEvents, nSources, nViews, nHists, nHabits, nMarkets } = problem;
  const nCells = problem.cellStart[nEvents]!;
  const state: State = {
    random,
    kinds,
    rates: createRates(problem, kinds),
    counts: new Int32Array(problem.nRates * (N_READINGS + 1)),
    lagOf: new Int32Array(nSources).fill(-1),
    parentOf: new Int32Array(nSources).fill(-1),
    runCopied: new Uint8Array(problem.nRuns),
    copyOf: new Int32Array(nViews).fill(-1),
    copyMatch: new Float32Array(nViews),
    copyRate: Float64Array.of(0.85, 0.7),
    histMass: new Float64Array(nHists * BINS),
    histDensity: new Float64Array(nHists * BINS),
    histCounts: new Int32Array(nHists * BINS),
    day: new Int32Array(nEvents).fill(NO_DAY),
    cell: new Int32Array(nEvents).fill(-1),
    together: 0,
    habitCounts: new Int32Array(nHabits * 7),
    marketCounts: new Int32Array(nMarkets * 7),
    allCounts: new Int32Array(7),
    pooling: { habit: 4, market: 4 },
    evenWeek: false,
    product: new Float64Array(nCells),
    row: new Float64Array(mostCells(problem)),
    rest: new Float64Array(mostCells(problem)),
  };
  fillShares(state.rates, problem, state.lagOf);
  startHists(state, nHists);
  return state;
}

function mostCells({ cellStart, nEvents }: Problem): number {
  let most = 0;
  for (let e = 0; e < nEvents; e++) most = Math.max(most, cellStart[e + 1]! - cellStart[e]!);
  return most;
}

function startHists(state: State, nHists: number) {
  for (let h = 0; h < nHists; h++) {
    const prior =
      h === UNLISTED_HIST ? unlistedMass() : histPrior(h < FIXED_HISTS ? h : COVER_HIST);
    const total = h === UNLISTED_HIST ? 1 : prior.reduce((a, b) => a + b, 0);
    setHist(state, h, prior, total);
  }
}

function setHist(
  { histMass, histDensity }: State,
  h: number,
  weights: ArrayLike<number>,
  total: number,
) {
  const widths = binWidths(h);
  for (let b = 0; b < BINS; b++) {
    const mass = weights[b]! / total;
    histMass[h * BINS + b] = mass;
    histDensity[h * BINS + b] = mass / widths[b]!;
  }
}

/** Weight of the parent's shape in a periodical's own histogram of leads. */
const SERIES_WEIGHT = 4;

/** Draws each histogram from its Dirichlet conditional. */
export function drawHists(state: State, nHists: number): void {
  const gammas = new Float64Array(BINS);
  for (let h = 0; h < nHists; h++) {
    if (h === UNLISTED_HIST) continue;
    const prior = h < FIXED_HISTS ? histPrior(h) : undefined;
    let total = 0;
    for (let b = 0; b < BINS; b++) {
      const base = prior ? prior[b]! : SERIES_WEIGHT * state.histMass[COVER_HIST * BINS + b]!;
      const shape = base + seen(state, h, b, nHists);
      gammas[b] = shape > 0 ? state.random.gamma(shape) : 0;
      total += gammas[b]!;
    }
    setHist(state, h, gammas, total);
  }
}

/** Counts of a bin; the parent of the periodicals' leads counts what they have seen at a discount. */
function seen({ histCounts }: State, h: number, b: number, nHists: number): number {
  let n = histCounts[h * BINS + b]!;
  if (h === COVER_HIST) {
    for (let s = FIXED_HISTS; s < nHists; s++) n += Math.min(2, histCounts[s * BINS + b]!);
  }
  return n;
}

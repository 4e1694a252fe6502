import { MAX_LAGS, type Problem } from './problem.ts';
import { N_READINGS } from './readings.ts';
import { type Snapshot, snapshotOf } from './snapshot.ts';
import type { State } from './state.ts';

/** What the kept sweeps add up to, so that their average can be answered. */
export interface Tally {
  sweeps: number;
  /** Those of them that tell who took what from whom. */
  explained: number;
  /** Sum of the conditional probabilities of each cell, one array a batch of sweeps. */
  readonly batches: Float64Array[];
  readonly batchSweeps: number[];
  /** Whether a batch holds sources to take from those only that they cite. */
  readonly guarded: boolean[];
  /** Sum of the probabilities of each reading, and of copying, N_READINGS + 1 a view. */
  readonly readings: Float32Array;
  /** How often each source was held to date at each of its lags. */
  readonly lags: Float64Array;
  /** How often each source was held to derive from each other. */
  readonly parents: Float64Array;
  /** Sampled day of each event, kept sweep by kept sweep. */
  readonly days: Int32Array[];
  /** Every so many of the kept sweeps leave a snapshot. */
  readonly every: number;
  readonly snapshots: Snapshot[];
}

/**
 * An empty tally.
 *
 * @param every of how many kept sweeps one leaves a snapshot; infinite for none
 */
export function createTally(problem: Problem, every = Number.POSITIVE_INFINITY): Tally {
  return {
    sweeps: 0,
    explained: 0,
    batches: [],
    batchSweeps: [],
    guarded: [],
    readings: new Float32Array(problem.nViews * (N_READINGS + 1)),
    lags: new Float64Array(problem.nSources * MAX_LAGS),
    parents: new Float64Array(problem.nSources * problem.nSources),
    days: [],
    every,
    snapshots: [],
  };
}

/** Begins a batch; the spread between batches gives the error of the average. */
export function beginBatch(tally: Tally, problem: Problem, guarded: boolean): void {
  tally.guarded.push(guarded);
  tally.batches.push(new Float64Array(problem.cellStart[problem.nEvents]!));
  tally.batchSweeps.push(0);
}

/** Adds an event's conditional distribution while `state.product` holds it. */
export function addEvent(
  tally: Tally,
  problem: Problem,
  state: State,
  e: number,
  total: number,
): void {
  const sum = tally.batches.at(-1)!;
  for (let k = problem.cellStart[e]!; k < problem.cellStart[e + 1]!; k++)
    sum[k]! += state.product[k]! / total;
}

/** Adds an event's distribution that is given by day, with the cell of each day. */
export function addCells(tally: Tally, from: number, cells: Int32Array, p: Float64Array): void {
  const sum = tally.batches.at(-1)!;
  for (let j = 0; j < p.length; j++) sum[from + cells[j]!]! += p[j]!;
}

/**
 * Adds what one kept sweep holds of lags, derivations and days, before rates are drawn anew; readings
 * are added as drawn.
 */
export function addSweep(tally: Tally, problem: Problem, state: State): void {
  if (tally.every < Number.POSITIVE_INFINITY && tally.sweeps % tally.every === 0)
    tally.snapshots.push(snapshotOf(state, tally.guarded.at(-1)!));
  tally.sweeps++;
  tally.batchSweeps[tally.batchSweeps.length - 1]!++;
  if (!tally.guarded.at(-1)) {
    tally.explained++;
    addSources(tally, problem, state);
  }
  tally.days.push(state.day.slice());
}

function addSources(tally: Tally, problem: Problem, state: State) {
  for (let s = 0; s < problem.nSources; s++) {
    const lag = state.lagOf[s]!;
    if (lag >= 0) tally.lags[s * MAX_LAGS + lag]!++;
    const parent = state.parentOf[s]!;
    if (parent >= 0) tally.parents[s * problem.nSources + parent]!++;
  }
}

/** The average distribution over cells, all batches together. */
export function averageCells(tally: Tally): Float64Array {
  const out = new Float64Array(tally.batches[0]?.length ?? 0);
  for (const batch of tally.batches)
    for (let k = 0; k < out.length; k++) out[k]! += batch[k]! / tally.sweeps;
  return out;
}

import type { Evidence } from '../evidence/index.ts';
import { chance } from '../maths/index.ts';
import { sweep, type Workshop } from './chain.ts';
import type { Compiled } from './compile.ts';
import type { Problem } from './problem.ts';
import { createState, type State } from './state.ts';

/** The averaged conditional distribution of each event over its cells, and how it varied. */
export interface Posterior {
  /** Probability of each cell, laid out as `problem.cellStart`. */
  readonly cells: Float64Array;
  readonly chains: readonly Float64Array[];
  readonly states: readonly State[];
  /** Parent of each source after each kept sweep. */
  readonly parents: readonly Int32Array[];
}

/** Lays out what the chains need besides the problem. */
export function workshopOf(evidence: Evidence, problem: Problem): Workshop {
  const sourceIndex = new Map(evidence.sources.map((s, i) => [s.id, i]));
  const cites = new Uint8Array(problem.nSources * problem.nSources);
  evidence.sources.forEach((source, s) => {
    for (const id of source.cites) {
      const q = sourceIndex.get(id);
      if (q !== undefined) cites[s * problem.nSources + q] = 1;
    }
  });
  const runsOf: number[][] = Array.from({ length: problem.nSources }, () => []);
  for (let r = 0; r < problem.nRuns; r++) runsOf[problem.runSource[r]!]!.push(r);
  const viewsOf = runsOf.map((runs) =>
    Int32Array.from(runs.flatMap((r) => [...problem.runViews.subarray(problem.runStart[r]!, problem.runStart[r + 1]!)])),
  );
  return { kin: { cites, runsOf }, viewsOf, eventOrder: sequenceOrder(problem) };
}

/** Events so that each comes after those that sequence facts put before it. */
function sequenceOrder(problem: Problem): Int32Array {
  const waiting = Int32Array.from({ length: problem.nEvents }, (_, e) => problem.beforeStart[e + 1]! - problem.beforeStart[e]!);
  const order: number[] = [];
  for (let e = 0; e < problem.nEvents; e++) if (waiting[e] === 0) order.push(e);
  for (let i = 0; i < order.length; i++) {
    const e = order[i]!;
    for (let j = problem.afterStart[e]!; j < problem.afterStart[e + 1]!; j++) {
      const next = problem.after[j]!;
      if (--waiting[next]! === 0) order.push(next);
    }
  }
  return Int32Array.from(order);
}

/** Runs chains from one seed and averages the conditional distributions of the days. */
export function sample(
  evidence: Evidence,
  { problem }: Compiled,
  options: { seed: number; chains: number; warmUp: number; keep: number },
): Posterior {
  const shop = workshopOf(evidence, problem);
  const kinds = evidence.sources.map((s) => s.kind);
  const chains: Float64Array[] = [];
  const states: State[] = [];
  const parents: Int32Array[] = [];
  for (let c = 0; c < options.chains; c++) {
    const state = createState(problem, kinds, chance(options.seed * 1009 + c));
    const sum = new Float64Array(problem.cellStart[problem.nEvents]!);
    for (let i = 0; i < options.warmUp; i++) sweep(problem, state, shop);
    for (let i = 0; i < options.keep; i++) {
      sweep(problem, state, shop, (e, total) => {
        for (let k = problem.cellStart[e]!; k < problem.cellStart[e + 1]!; k++) sum[k]! += state.product[k]! / total;
      });
      parents.push(state.parentOf.slice());
    }
    for (let k = 0; k < sum.length; k++) sum[k]! /= options.keep;
    chains.push(sum);
    states.push(state);
  }
  const cells = new Float64Array(chains[0]!.length);
  for (const chain of chains) for (let k = 0; k < cells.length; k++) cells[k]! += chain[k]! / chains.length;
  return { cells, chains, states, parents };
}

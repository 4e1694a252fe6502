import type { Evidence } from '../evidence/index.ts';
import { chance } from '../maths/index.ts';
import { beginnings, warmUp } from './beginnings.ts';
import { sweep, type Workshop } from './chain.ts';
import { forestGroups } from './groups.ts';
import { citedOnly, kinshipOf } from './kinship.ts';
import type { Problem } from './problem.ts';
import { createState, type State } from './state.ts';
import { beginBatch, createTally, type Tally } from './tally.ts';

/** How long to sample: sweeps to begin with, and to warm up and to keep for each of some chains. */
export interface Plan {
  /** Sweeps that the trials of beginnings share. */
  readonly begin: number;
  readonly chains: number;
  readonly warmUp: number;
  readonly keep: number;
  /** Lags and parents are drawn every so many kept sweeps: with much evidence they hardly move. */
  readonly sources: number;
}

/** Effort in cell visits that a first answer, and a refined one, may take. */
const VISITS = { first: 1.5e6, refined: 9e6 } as const;

/** Sweeps of all trials together, at most. */
const LONGEST_BEGINNINGS = 120;

/** Fewer chains and sweeps where there is more evidence: more data, fewer modes. */
export function planFor(problem: Problem, effort: 'first' | 'refined'): Plan {
  const visits = Math.max(1, problem.rowStart[problem.nViews]!);
  const sweeps = VISITS[effort] / visits;
  if (sweeps < 40)
    return { begin: 0, chains: 1, warmUp: 7, keep: effort === 'first' ? 4 : 8, sources: 6 };
  const chains = sweeps < 200 || effort === 'first' ? 2 : 4;
  const all = Math.min(effort === 'first' ? 100 : 800, sweeps);
  const begin = Math.min(LONGEST_BEGINNINGS, Math.floor(all * 0.4));
  const left = Math.floor((all - begin) / chains);
  const warmUp = Math.max(6, Math.floor(left * 0.35));
  return { begin, chains, warmUp, keep: left - warmUp, sources: sweeps < 400 ? 2 : 1 };
}

/** Lays out what the chains need besides the problem. */
export function workshopOf(evidence: Evidence, problem: Problem): Workshop {
  const kin = kinshipOf(evidence, problem);
  const viewsOf = kin.runsOf.map((runs) => {
    const views: number[] = [];
    for (const r of runs) {
      for (let m = problem.runStart[r]!; m < problem.runStart[r + 1]!; m++)
        views.push(problem.runViews[m]!);
    }
    return Int32Array.from(views);
  });
  const groups = forestGroups(problem);
  const grouped = new Set(groups.flatMap(({ events }) => events));
  const eventOrder = sequenceOrder(problem).filter((e) => !grouped.has(e));
  return { kin, viewsOf, groups, eventOrder };
}

/** Events so that each comes after those that sequence facts put before it; those in a circle last. */
function sequenceOrder(problem: Problem): Int32Array {
  const waiting = new Int32Array(problem.nEvents);
  for (let e = 0; e < problem.nEvents; e++)
    waiting[e] = problem.beforeStart[e + 1]! - problem.beforeStart[e]!;
  const order: number[] = [];
  for (let e = 0; e < problem.nEvents; e++) if (waiting[e] === 0) order.push(e);
  for (let i = 0; i < order.length; i++) {
    const e = order[i]!;
    for (let j = problem.afterStart[e]!; j < problem.afterStart[e + 1]!; j++) {
      const next = problem.after[j]!;
      if (--waiting[next]! === 0) order.push(next);
    }
  }
  for (let e = 0; e < problem.nEvents; e++) if (waiting[e]! > 0) order.push(e);
  return Int32Array.from(order);
}

/** Batches of kept sweeps, all chains together, for the error of their average. */
const BATCHES = 4;

/**
 * Runs chains from one seed and gathers what their kept sweeps hold.
 *
 * @param snapshots how many kept sweeps, at most, leave a snapshot of their state
 * @returns the tally, and the last state of the last chain
 */
export function sample(
  evidence: Evidence,
  problem: Problem,
  plan: Plan,
  seed: number,
  onProgress?: (share: number) => void,
  snapshots = 0,
): { tally: Tally; state: State } {
  const shop = workshopOf(evidence, problem);
  const kinds = evidence.sources.map((s) => s.kind);
  const tally = createTally(problem, Math.ceil((plan.chains * plan.keep) / snapshots));
  // A single chain has no other to set it right, so it learns rates before it looks for copies.
  const parents = plan.chains === 1 ? 0.5 : 0;
  const all = plan.begin + plan.chains * (plan.warmUp + plan.keep);
  let done = 0;
  const swept = () => onProgress?.(Math.min(1, ++done / all));
  const begun = beginnings(problem, kinds, shop, plan, seed, swept);
  done = plan.begin;
  let state!: State;
  begun.forEach((source, c) => {
    const guarded = c % 2 === 1;
    const own = guarded ? { ...shop, kin: citedOnly(evidence, shop.kin) } : shop;
    state = createState(problem, kinds, chance(seed * 1009 + c));
    const every = Math.ceil(plan.sources / 3);
    warmUp(problem, state, own, { source, sweeps: plan.warmUp, parents, every }, swept);
    const batch = Math.ceil((plan.keep * plan.chains) / BATCHES);
    for (let i = 0; i < plan.keep; i++) {
      if (i % batch === 0) beginBatch(tally, problem, guarded);
      const sources = i % plan.sources === 0;
      sweep(problem, state, own, { lags: sources, parents: sources }, tally);
      swept();
    }
  });
  return { tally, state };
}

import { COPIED, weigh } from '../attribution.ts';
import { drawDay, fillProduct, liftDay } from '../days.ts';
import { drawGroup, forestGroups, type Group } from '../groups.ts';
import type { Problem } from '../problem.ts';
import type { State } from '../state.ts';
import { addEvent, beginBatch, createTally, type Tally } from '../tally.ts';
import type { Kept } from './kept.ts';
import { loaderFor } from './load.ts';
import type { Part } from './part.ts';

/** Rounds in which releases that bear on each other are drawn; the last one is kept. */
const ROUNDS = 3;

/**
 * Dates the releases of a part anew under each snapshot of what was learned: their conditional
 * distributions, and those of their statements' readings, with everything else held.
 *
 * @returns undefined where the sequence facts leave no day
 */
export function tallyUnder(kept: Kept, part: Part): Tally | undefined {
  const { problem } = part.compiled;
  const { state, load } = loaderFor(kept, part);
  const { lags, parents } = kept.fit.tally;
  const tally: Tally = { ...createTally(problem), lags, parents };
  const groups = forestGroups(problem);
  const grouped = new Set(groups.flatMap(({ events }) => events));
  const single = part.events.slice(0, part.anew).flatMap((_, e) => (grouped.has(e) ? [] : [e]));
  const rounds = groups.length + single.length > 1 ? ROUNDS : 1;
  for (const snapshot of kept.fit.tally.snapshots) {
    load(snapshot);
    beginBatch(tally, problem, snapshot.guarded);
    for (let round = 1; round <= rounds; round++) {
      if (!drawAll(problem, state, groups, single, round === rounds ? tally : undefined))
        return undefined;
    }
    tally.sweeps++;
    if (!snapshot.guarded) {
      tally.explained++;
      addReadings(problem, state, part.anew, tally);
    }
    tally.batchSweeps[tally.batchSweeps.length - 1]!++;
  }
  return tally;
}

/** Draws the days of all releases to be dated anew once. */
function drawAll(
  problem: Problem,
  state: State,
  groups: readonly Group[],
  single: readonly number[],
  tally: Tally | undefined,
): boolean {
  for (const group of groups) {
    if (!drawGroup(problem, state, group, tally)) return false;
  }
  for (const e of single) {
    liftDay(problem, state, e);
    fillProduct(problem, state, e);
    const total = drawDay(problem, state, e);
    if (tally) addEvent(tally, problem, state, e, total);
  }
  return true;
}

/** Cells below this probability add nothing to how statements came about. */
const FAINT = 1e-6;
const weights = new Float64Array(COPIED + 1);

/** Adds the probability of each reading of each statement, averaged over its release's days. */
function addReadings(problem: Problem, state: State, anew: number, tally: Tally): void {
  const batch = tally.batches.at(-1)!;
  const end = problem.viewStart[anew]!;
  for (let v = 0; v < end; v++) {
    if (problem.viewRate[v]! < 0) continue;
    const from = problem.cellStart[problem.viewEvent[v]!]!;
    const n = problem.rowStart[v + 1]! - problem.rowStart[v]!;
    const share = problem.viewShare[v]!;
    for (let k = 0; k < n; k++) {
      const p = batch[from + k]!;
      if (p < FAINT) continue;
      const total = weigh(problem, state, v, k, weights);
      for (let q = 0; q <= COPIED; q++)
        tally.readings[v * (COPIED + 1) + q]! += (p * share * weights[q]!) / total;
    }
  }
}

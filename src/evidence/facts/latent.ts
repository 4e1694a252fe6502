import { type Cells, cellsOf, chanceOf, commonness, ratesOf, shares } from './counts.ts';
import type { Problem } from './problem.ts';

/** What is most probably true, and how the search for it ended. */
export interface Truths {
  /** For each item the probability of each candidate, and of all other values last. */
  readonly posterior: readonly (readonly number[])[];
  /** Rate of each cell of the tying. */
  readonly rates: Float64Array;
  readonly sweeps: number;
  /** Largest change of a probability in the last sweep. */
  readonly change: number;
}

const SWEEPS = 500;

/**
 * True values behind the words of sources of unknown reliability: the EM of `dawid:1979` where
 * voices are `counted`, and its collapsed variational counterpart (`asuncion:2009`, CVB0) where a
 * voice is `left out` of its own source's rates. Starts from the shares of votes; the cost of a
 * sweep grows with voices × candidates.
 *
 * Misleads where sources share errors without their derivation being known. The collapsed form is
 * an approximation; against enumeration it is measured in `checks/witness`.
 *
 * @param start probabilities to go on from, in place of the shares of votes
 */
export function latentTruth(problem: Problem, start?: readonly (readonly number[])[]): Truths {
  const byItem = Array.from({ length: problem.items.length }, (): number[] => []);
  problem.voices.forEach(({ item }, voice) => {
    byItem[item]!.push(voice);
  });
  let posterior: readonly (readonly number[])[] =
    start ?? problem.items.map((_, i) => voteShares(problem, i, byItem[i]!));
  const cells = cellsOf(problem);
  let rates = shares(problem.tying.pseudo, problem.tying.columns);
  let change = 1;
  let sweeps = 0;
  for (; sweeps < SWEEPS && change > problem.enough; sweeps++) {
    const next = sweep(problem, cells, byItem, posterior, rates);
    change = largestChange(posterior, next.posterior);
    ({ posterior, rates } = next);
  }
  return { posterior, rates, sweeps, change };
}

function sweep(
  problem: Problem,
  cells: Cells,
  byItem: readonly (readonly number[])[],
  posterior: readonly (readonly number[])[],
  before: Float64Array,
): { posterior: number[][]; rates: Float64Array } {
  const common = commonness(problem, posterior);
  const rates = ratesOf(problem, cells, posterior, before);
  const next = problem.items.map((item, i) => {
    const own = posterior[i]!;
    const log: number[] = [];
    for (let t = 0; t < own.length; t++) {
      let sum = Math.log(common(item, own, t < item.candidates.length ? t : -1));
      for (const voice of byItem[i]!)
        sum += problem.voices[voice]!.weight * Math.log(chanceOf(problem, cells, voice, t, rates));
      log.push(sum);
    }
    return normalised(log);
  });
  return { posterior: next, rates: rates.rate };
}

function voteShares(problem: Problem, item: number, voices: readonly number[]): number[] {
  const { candidates } = problem.items[item]!;
  const votes = new Array<number>(candidates.length + 1).fill(0);
  let total = 0;
  for (const voice of voices) {
    const { value, weight, derived } = problem.voices[voice]!;
    votes[candidates.indexOf(value)]! += weight * (1 - derived);
    total += weight * (1 - derived);
  }
  return total > 0 ? votes.map((v) => v / total) : votes.fill(1 / votes.length);
}

/** Weights from their logarithms, in place, adding up to 1. */
function normalised(log: number[]): number[] {
  const top = Math.max(...log);
  let sum = 0;
  for (let t = 0; t < log.length; t++) {
    log[t] = Math.exp(log[t]! - top);
    sum += log[t]!;
  }
  for (let t = 0; t < log.length; t++) log[t]! /= sum;
  return log;
}

/** Largest difference between two sets of probabilities; infinite where they differ in number. */
export function largestChange(
  a: readonly (readonly number[])[],
  b: readonly (readonly number[])[],
): number {
  if (a.length !== b.length) return Number.POSITIVE_INFINITY;
  let largest = 0;
  for (let i = 0; i < a.length; i++)
    for (let t = 0; t < a[i]!.length; t++)
      largest = Math.max(largest, Math.abs(a[i]![t]! - b[i]![t]!));
  return largest;
}

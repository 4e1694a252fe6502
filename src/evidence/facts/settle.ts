import type { Evidence } from '../types.ts';
import { comparedPairs, orderOf, statedPairs } from './compare.ts';
import { largestChange, latentTruth } from './latent.ts';
import { parentsOf } from './parents.ts';
import type { Problem } from './problem.ts';
import { OWN, type Topic } from './statements.ts';
import type { Reliability } from './types.ts';
import { hear, problemOf } from './voices.ts';

/** Rounds of weighing values and comparing sources; a handful settles them (`dong:2009`). */
const ROUNDS = 6;
/** Rounds end when no probability changes by more. */
const SETTLED = 1e-3;
/** From this chance on a source is said to repeat another. */
const REPEATS = 0.4;

/** What one topic came to. */
export interface Settled {
  /** Probability of each value that is named. */
  readonly p: ReadonlyMap<string, number>;
  readonly p_other: number;
  /** Sources that probably took their word from another. */
  readonly repeating: readonly string[];
}

/**
 * Weighs the topics and finds out who repeats whom, in turns: first with the derivations that are
 * known, then with those that the facts themselves show under the values that are probably right.
 */
export function settle(
  evidence: Evidence,
  topics: readonly Topic[],
  known: readonly Reliability[],
): Settled[] {
  const { sources } = evidence;
  const heard = hear(evidence, topics);
  const order = orderOf(sources, known, heard);
  const ids = [OWN, ...order];
  let pairs = statedPairs(sources, known);
  let before: readonly (readonly number[])[] = [];
  for (let round = 1; ; round++) {
    const problem = problemOf(evidence, heard, known, ids, parentsOf(order, pairs));
    const { posterior, rates } = latentTruth(problem, before.length > 0 ? before : undefined);
    const settled = heard.map(({ keys }, i) => ({
      p: new Map(keys.map((key, t) => [key, posterior[i]![t]!])),
      p_other: posterior[i]!.at(-1)!,
    }));
    if (round === ROUNDS || largestChange(before, posterior) < SETTLED) {
      const repeating = repeatersOf(problem, ids);
      return settled.map((one, i) => ({ ...one, repeating: repeating[i]! }));
    }
    const p = (topic: number, key: string) => settled[topic]!.p.get(key) ?? 0;
    const error = (id: string) => rates[2 * ids.indexOf(id) + 1]!;
    before = posterior;
    pairs = comparedPairs(sources, known, heard, p, error);
  }
}

function repeatersOf({ items, voices }: Problem, ids: readonly string[]): string[][] {
  const repeating = items.map((): string[] => []);
  for (const { item, source, copied } of voices)
    if (copied >= REPEATS && ids[source] !== OWN) repeating[item]!.push(ids[source]!);
  return repeating;
}

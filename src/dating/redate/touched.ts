import { eventsOfClaim } from '../events.ts';
import { isBounded } from '../statements.ts';
import type { Kept } from './kept.ts';
import type { Moved } from './moved.ts';

/** Releases that are dated anew at most; more are better left to a dating of the whole. */
const MOST_RELEASES = 60;

/**
 * The releases that changed claims concern, with all that sequence facts tie to them; undefined where
 * these are too many.
 */
export function touchedBy(
  { fit: { evidence, compiled } }: Kept,
  { come, gone }: Moved,
): ReadonlySet<number> | undefined {
  const { problem, releases } = compiled;
  const touched = new Set<number>();
  const changed = [...gone.map((c) => evidence.claims[c]!), ...come.map(({ claim }) => claim)];
  for (const claim of changed) {
    if (isBounded(claim)) for (const e of eventsOfClaim(claim, releases)) touched.add(e);
  }
  for (const e of touched) {
    if (touched.size > MOST_RELEASES) return undefined;
    const { beforeStart, before, afterStart, after } = problem;
    for (let j = beforeStart[e]!; j < beforeStart[e + 1]!; j++) touched.add(before[j]!);
    for (let j = afterStart[e]!; j < afterStart[e + 1]!; j++) touched.add(after[j]!);
  }
  return new Set([...touched].sort((a, b) => a - b));
}

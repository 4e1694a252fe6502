import type { Evidence } from '../../src/evidence/index.ts';
import type { Answer } from './engine.ts';
import { answerOf } from './posterior.ts';

/**
 * Plain majority vote: each exact on-sale day that is stated of a printing has one vote, ties go
 * to the earliest. Printings without an exact day get the middle of their coarse claims.
 */
export function majority(evidence: Evidence): Answer {
  const votes = new Map(evidence.printings.map((p) => [p.id, new Map<number, number>()]));
  const coarse = new Map<string, number>();
  for (const claim of evidence.claims) {
    const range = claim.date?.ranges[0];
    if (claim.property !== 'on-sale' || range === undefined || claim.printings.length !== 1)
      continue;
    const id = claim.printings[0]!;
    if (range.first === range.last) {
      const days = votes.get(id)!;
      days.set(range.first, (days.get(range.first) ?? 0) + 1);
    } else if (!coarse.has(id)) coarse.set(id, Math.round((range.first + range.last) / 2));
  }
  const printings = evidence.printings.map(({ id }) => {
    const days = votes.get(id)!;
    const guess = coarse.get(id);
    if (days.size === 0 && guess !== undefined) days.set(guess, 1);
    return answerOf(id, days);
  });
  return { printings };
}

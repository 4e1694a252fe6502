import type { Evidence } from '../../src/evidence/index.ts';
import type { Answer } from './engine.ts';
import type { Score } from './figures.ts';
import { binned } from './figures.ts';
import type { Truth } from './types.ts';

/** Whether on-sale claims are right as often as stated, and sources as accurate as stated. */
export function scoreClaims(
  answer: Answer,
  evidence: Evidence,
  truth: Truth,
): Pick<Score, 'right' | 'accuracy'> {
  const plain = new Set(evidence.claims.filter((c) => c.printings.length === 1).map((c) => c.row));
  const stated = new Map<number, number>();
  for (const printing of answer.printings) {
    for (const claim of printing.claims ?? []) {
      if (claim.property === 'on-sale' && plain.has(claim.row))
        stated.set(claim.row, claim.p_right);
    }
  }
  const pairs = [...stated].map(([row, p]) => [p, truth.claims.get(row)!.right] as const);
  return { right: binned(pairs), accuracy: scoreAccuracy(answer, evidence, truth) };
}

/** How many stated 95 % intervals of accuracy hold the true share of right on-sale claims. */
function scoreAccuracy(answer: Answer, evidence: Evidence, truth: Truth): Score['accuracy'] {
  const shares = new Map<string, { right: number; all: number }>();
  for (const claim of evidence.claims) {
    if (claim.property !== 'on-sale') continue;
    const share = shares.get(claim.source) ?? { right: 0, all: 0 };
    share.all += 1;
    if (truth.claims.get(claim.row)!.right) share.right += 1;
    shares.set(claim.source, share);
  }
  let stated = 0;
  let held = 0;
  for (const { id, accuracy95 } of answer.sources ?? []) {
    const share = shares.get(id);
    if (accuracy95 === null || share === undefined) continue;
    const value = share.right / share.all;
    stated += 1;
    if (accuracy95[0] - 1e-9 <= value && value <= accuracy95[1] + 1e-9) held += 1;
  }
  return { stated, held };
}

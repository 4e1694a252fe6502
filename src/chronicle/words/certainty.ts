import type { Certainty } from './types.ts';

/**
 * Least probability for each word, the surest first. The steps at 0.99, 0.9 and 0.66 are those of
 * `mastrandrea:2010`; which word stands at which step: Judgement, no source.
 */
const LEAST: readonly (readonly [Certainty, number])[] = [
  ['almost-certain', 0.99],
  ['most-probable', 0.9],
  ['probable', 0.66],
];

/** A word for how sure a statement is, and the probabilities for which it stands. */
export interface CertaintyStep {
  readonly word: Certainty;
  readonly least: number;
  /** Not reached; above 1 for the surest word. */
  readonly below: number;
}

/** The words, the surest first. */
export function certaintySteps(): readonly CertaintyStep[] {
  return [...LEAST, ['perhaps', 0] as const].map(([word, least], i) => ({
    word,
    least,
    below: LEAST[i - 1]?.[1] ?? Number.POSITIVE_INFINITY,
  }));
}

/** The word for how sure a statement of probability `p` is. */
export function certaintyOf(p: number): Certainty {
  return LEAST.find(([, least]) => p >= least)?.[0] ?? 'perhaps';
}

import type { Hypothesis } from './types.ts';

/** Copies of a known counterfeit, and of a known alteration, for each true copy. Judgement, no source. */
const SHARE = { counterfeit: 0.03, alteration: 0.03 } as const;
/** The chance that a copy is of no listed printing and of no known kind. Judgement, no source. */
const UNLISTED = 0.02;

/**
 * The probability of each hypothesis before a trait is seen, in their order: by how many of each
 * are about. `about` gives expected numbers by id, on any one scale; a printing without a number
 * has the mean of the others, a kind of counterfeit a small share of what it passes for.
 */
export function priorOf(
  hypotheses: readonly Hypothesis[],
  about: ReadonlyMap<string, number>,
): Float64Array {
  const told = hypotheses.flatMap(({ id, kind }) => {
    const number = kind === 'printing' ? about.get(id) : undefined;
    return number === undefined ? [] : [number];
  });
  const mean = told.length > 0 ? sum(told) / told.length : 1;
  const rows = new Map<string, number>();
  for (const { id } of hypotheses) rows.set(id, (rows.get(id) ?? 0) + 1);
  const weights = hypotheses.map(({ id, kind, printing }) => {
    const number = about.get(id);
    if (kind === 'unlisted') return 0;
    if (kind === 'printing') return number ?? mean;
    const alike = rows.get(id) ?? 1;
    return (number ?? SHARE[kind] * (about.get(printing) ?? mean)) / alike;
  });
  const all = sum(weights);
  if (!(all > 0)) throw new RangeError('about must have a number above 0');
  return Float64Array.from(hypotheses, ({ kind }, h) =>
    kind === 'unlisted' ? UNLISTED : ((1 - UNLISTED) * (weights[h] as number)) / all,
  );
}

function sum(all: readonly number[]): number {
  return all.reduce((so, one) => so + one, 0);
}

import { isoOf } from '../../src/evidence/index.ts';
import type { Answer } from './engine.ts';
import { scoreClaims } from './score-claims.ts';
import { scoreDerivations } from './score-derivations.ts';
import type { Simulated } from './types.ts';

/** The least probability that a true day is scored with. */
export const FLOOR = 1e-4;

/** Stated probability, what came true, and how many there were. */
export interface Bin {
  readonly stated: number;
  readonly came: number;
  readonly count: number;
}

/** Figures of one dossier, or, by `pool`, of many. Shares lie between 0 and 1. */
export interface Score {
  readonly printings: number;
  readonly exact: number;
  /** Mean natural logarithm of the probability of the true day, never below log `FLOOR`. */
  readonly log: number;
  readonly covered: number;
  readonly claimed: number;
  readonly p_best: number;
  /** Printings whose days do not add up to one, with a thousandth left for what is cut off. */
  readonly not_one: number;
  readonly bins: readonly Bin[];
  readonly right: readonly Bin[];
  readonly accuracy: { readonly stated: number; readonly held: number };
  readonly derived: {
    readonly named: number;
    readonly named_right: number;
    readonly true: number;
    readonly found: number;
    readonly bins: readonly Bin[];
  };
}

/** Sorts stated probabilities into ten bins of equal width, each with its mean and what came true. */
export function binned(pairs: readonly (readonly [p: number, came: boolean])[]): Bin[] {
  const sums = Array.from({ length: 10 }, () => ({ stated: 0, came: 0, count: 0 }));
  for (const [p, came] of pairs) {
    const bin = sums[Math.min(9, Math.floor(p * 10))]!;
    bin.stated += p;
    bin.came += came ? 1 : 0;
    bin.count += 1;
  }
  return sums.map(({ stated, came, count }) => ({
    stated: count > 0 ? stated / count : 0,
    came: count > 0 ? came / count : 0,
    count,
  }));
}

/** Compares an answer with the truth of the dossier it was made from. */
export function score(answer: Answer, { evidence, truth }: Simulated, floor = FLOOR): Score {
  const dated = answer.printings.map((one) => {
    const day = isoOf(truth.days.get(one.id)!);
    const p = one.days.find(([other]) => other === day)?.[1] ?? 0;
    const inside = one.interval95 !== null && one.interval95[0] <= day && day <= one.interval95[1];
    const sum = one.days.reduce((total, [, q]) => total + q, 0);
    return { one, exact: one.best === day, log: Math.log(Math.max(floor, p)), inside, sum };
  });
  const mean = (of: (item: (typeof dated)[number]) => number) =>
    dated.reduce((sum, item) => sum + of(item), 0) / dated.length;
  return {
    printings: dated.length,
    exact: mean((item) => (item.exact ? 1 : 0)),
    log: mean((item) => item.log),
    covered: mean((item) => (item.inside ? 1 : 0)),
    claimed: mean((item) => item.one.p_interval),
    p_best: mean((item) => item.one.p_best),
    not_one: dated.filter(({ sum }) => sum < 0.9985 || sum > 1.0001).length,
    bins: binned(dated.map(({ one, exact }) => [one.p_best, exact])),
    ...scoreClaims(answer, evidence, truth),
    derived: scoreDerivations(answer, truth),
  };
}

import type { Dating } from '../../../src/dating/index.ts';
import { isoOf } from '../../../src/evidence/index.ts';

/** The least probability that a true day is scored with. */
export const FLOOR = 1e-4;

/** Shares and means over the printings of a set. */
export interface RealScore {
  readonly exact: number;
  /** Mean natural logarithm of the probability given to the true day, never below log `FLOOR`. */
  readonly log: number;
  readonly covered: number;
  readonly claimed: number;
  readonly p_best: number;
}

/** What `score` looks at; a whole `Dating` fits. */
export interface Scored {
  readonly printings: readonly Pick<
    Dating['printings'][number],
    'id' | 'best' | 'p_best' | 'interval95' | 'p_interval' | 'days'
  >[];
}

/** Compares days that were computed with the maker's own. */
export function scoreReal(dating: Scored, truth: ReadonlyMap<string, number>): RealScore {
  const sums = { exact: 0, log: 0, covered: 0, claimed: 0, p_best: 0 };
  for (const printing of dating.printings) {
    const day = isoOf(truth.get(printing.id)!);
    const p = printing.days.find(([iso]) => iso === day)?.[1] ?? 0;
    const interval = printing.interval95;
    sums.exact += printing.best === day ? 1 : 0;
    sums.log += Math.log(Math.max(FLOOR, p));
    sums.covered += interval !== null && interval[0] <= day && day <= interval[1] ? 1 : 0;
    sums.claimed += printing.p_interval;
    sums.p_best += printing.p_best;
  }
  const n = dating.printings.length;
  const mean = (sum: number) => sum / n;
  return {
    exact: mean(sums.exact),
    log: mean(sums.log),
    covered: mean(sums.covered),
    claimed: mean(sums.claimed),
    p_best: mean(sums.p_best),
  };
}

import { isoOf } from '../../src/evidence/index.ts';
import type { Answer } from './engine.ts';
import { binned, type Score } from './figures.ts';
import { scoreClaims } from './score-claims.ts';
import { scoreDerivations } from './score-derivations.ts';
import type { Simulated } from './types.ts';

/** The least probability that a true day is scored with. */
export const FLOOR = 1e-4;

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

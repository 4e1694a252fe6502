import type { Evidence } from '../../../src/evidence/index.ts';
import type { Answer } from '../engine.ts';
import { answerOf } from '../posterior.ts';
import { findCopies } from './copies.ts';
import { begin, expect, prune, type State } from './posteriors.ts';
import { countWeekday, modelOf, type Tally } from './rates.ts';
import { count } from './tally.ts';

const ROUNDS = 5;
/** Rounds after which copies are looked for, once the first days stand. */
const COPIES_FROM = 2;
/** Average chance of a slip of the pen, and of being right, in the simulator. */
const TOLD = { pen: 0.015, right: 0.62 };

/**
 * The baseline of the table: expectation maximisation over kinds of error
 * (`dawid:1979` with days in place of categories), told the simulator's shapes and average rates.
 * Each source's rates are plugged in, so it believes its own answers too much.
 */
export function em(evidence: Evidence): Answer {
  const state = begin(evidence, TOLD.pen);
  const ids = evidence.sources.map((source) => source.id);
  const ends = state.days.flatMap((days) => [days[0]!, days[days.length - 1]!]);
  const years = Math.max(1, (Math.max(...ends) - Math.min(...ends)) / 365);
  let tally: Tally = { sources: new Map(), weekdays: new Map(), leads: new Map() };
  let parent: ReturnType<typeof findCopies> = () => undefined;
  for (let round = 0; round < ROUNDS; round++) {
    const model = modelOf(tally, ids, years, TOLD.right, parent);
    expect(state, model);
    if (state.groups.length > 20) prune(state, 1e-9);
    if (round >= COPIES_FROM) parent = findCopies(state);
    tally = { sources: new Map(), weekdays: new Map(), leads: new Map() };
    for (const group of state.groups) {
      const g = group.index;
      countWeekday(tally, group, state.days[g]!, state.p[g]!);
      for (const item of state.byGroup.get(g) ?? []) {
        count(tally, item, state.turned[g]!, state.p[g]!, model, state.siblings);
      }
    }
  }
  return { printings: answers(state) };
}

/** The answers of a state, each printing with its group's day. */
export function answers(state: State): Answer['printings'] {
  return state.groups.flatMap((group) => {
    const days = state.days[group.index]!;
    const weights = new Map(
      Array.from(days, (day, i) => [day, state.p[group.index]![i]!] as const),
    );
    return group.printings.map((id) => answerOf(id, weights));
  });
}

import { describe, expect, it } from 'vitest';
import { type Claim, dayOf, type Evidence, isoOf, parseEdtf } from '../evidence/index.ts';
import { chance } from '../maths/index.ts';
import { sweep } from './chain.ts';
import { compile } from './compile.ts';
import { fillProduct, liftDay, setDay } from './days.ts';
import { fillLikelihood } from './likelihood.ts';
import type { Problem } from './problem.ts';
import { workshopOf } from './run.ts';
import { createState, type State } from './state.ts';
import { weekdayWeights } from './weekdays.ts';

const MARKETS = ['FI', 'KR', 'CL', 'PT'];
const SOURCES = ['s', 't', 'u'];

/**
 * Two products in four markets. Each source lists all releases on Fridays or a market's day behind
 * them, so that what it says of one may be taken from a sibling, from the row beside, or from both.
 */
function evidence(): Evidence {
  const releases = ['box', 'tin'].flatMap((product) =>
    MARKETS.map((market) => ({ id: `${product}-${market}`, product, market })),
  );
  const claims = SOURCES.flatMap((source, s) =>
    releases.map(({ id }, i): Omit<Claim, 'row'> => {
      const value = isoOf(dayOf(1999, 5, 14) + 7 * ((i + s * (i % 3)) % 3) + (i > 3 ? 90 : 0));
      const reading = parseEdtf(value);
      if (!reading.ok) throw new RangeError(value);
      return { printings: [id], source, property: 'on-sale', value, date: reading.date };
    }),
  );
  return {
    printings: releases,
    products: [],
    contents: [],
    sources: SOURCES.map((id) => ({ id, kind: 'checklist', cites: [] })),
    claims: claims.map((claim, j) => ({ ...claim, row: j + 2 })),
    orders: [],
  };
}

/** Prior of an event's day and likelihood of every statement of the dossier, if it has this day. */
function joint(problem: Problem, state: State, e: number, k: number): number {
  const cell = problem.cellStart[e]! + k;
  const day = problem.cellLo[cell]!;
  const week = weekdayWeights(problem, state, e);
  const pull = ((problem.last - problem.first + 1) * state.together) / (1 - state.together);
  let p = week[problem.cellWeek[cell]! + problem.cellWeekday[cell]!]!;
  for (let j = problem.sharedStart[e]!; j < problem.sharedStart[e + 1]!; j++)
    if (problem.sharedDay[j] === day && state.day[problem.sharedEvent[j]!] === day) p *= 1 + pull;
  setDay(problem, state, e, k, day);
  for (let v = 0; v < problem.nViews; v++) {
    const at = problem.viewEvent[v]!;
    fillLikelihood(problem, state, v, problem.cellStart[at + 1]! - problem.cellStart[at]!);
    p *= state.row[state.cell[at]!]!;
  }
  liftDay(problem, state, e);
  return p;
}

function compare(problem: Problem, state: State, e: number) {
  const [own, day] = [state.cell[e]!, state.day[e]!];
  liftDay(problem, state, e);
  fillProduct(problem, state, e);
  const from = problem.cellStart[e]!;
  const found = state.product.slice(from, problem.cellStart[e + 1]!);
  const singles = Array.from(found, (_, k) => k).filter((k) => problem.cellWeekday[from + k]! >= 0);
  const wanted = singles.map((k) => joint(problem, state, e, k));
  const all = Math.max(...singles.map((k) => found[k]!));
  const most = Math.max(...wanted);
  // Some thirty doubles are multiplied: measured 1e-14, allowed 1e-12.
  singles.forEach((k, j) => {
    const gap = found[k]! / all - wanted[j]! / most;
    expect(Math.abs(gap), `event ${e}, ${isoOf(problem.cellLo[from + k]!)}`).toBeLessThan(1e-12);
  });
  setDay(problem, state, e, own, day);
}

describe('the conditional of a day', () => {
  it('goes with the likelihood of all that is stated, wherever it is stated', () => {
    const known = evidence();
    const { problem } = compile(known);
    const shop = workshopOf(known, problem);
    const kinds = known.sources.map(({ kind }) => kind);
    const state = createState(problem, kinds, chance(3));
    for (let i = 0; i < 12; i++) {
      sweep(problem, state, shop, { lags: true, parents: true });
      for (let e = 0; e < problem.nEvents; e++) compare(problem, state, e);
    }
  });
});

import { describe, expect, it } from 'vitest';
import { type Claim, dayOf, type Evidence, parseEdtf } from '../evidence/index.ts';
import { chance } from '../maths/index.ts';
import { compile } from './compile.ts';
import { fillProduct } from './days.ts';
import type { Problem } from './problem.ts';
import { createState } from './state.ts';
import { thinned } from './thin.ts';

const SOURCES = Array.from({ length: 12 }, (_, s) => `s${s}`);
/** What each source says of `a`, `b` and `c`; three of them hold a day of `a` that the others do not. */
const saidOf: Readonly<Record<string, (s: number) => string>> = {
  a: (s) => (s < 3 ? '1999-07-12' : '2001-03-05'),
  b: () => '2001-03-05',
  c: (s) => (s < 6 ? '1999' : '1999-02-01'),
};

function evidenceOf(orders: Evidence['orders']): Evidence {
  const claims = Object.entries(saidOf).flatMap(([id, value]) =>
    SOURCES.map((source, s): Claim => {
      const reading = parseEdtf(value(s));
      if (!reading.ok) throw new Error('a date of the test is none');
      const { date } = reading;
      return { row: 2, printings: [id], source, property: 'on-sale', value: date.text, date };
    }),
  );
  return {
    printings: ['a', 'b', 'c'].map((id) => ({ id, market: 'FI', product: `box ${id}` })),
    products: [],
    contents: [],
    sources: SOURCES.map((id) => ({ id, kind: 'checklist', cites: [] })),
    claims,
    orders,
  };
}

const evidence = evidenceOf([]);
const kinds = evidence.sources.map(({ kind }) => kind);

/** Weight of each cell of an event, by its first and last day. */
function weightsOf(problem: Problem, e: number): Map<string, number> {
  const state = createState(problem, kinds, chance(1));
  fillProduct(problem, state, e);
  const from = problem.cellStart[e]!;
  return new Map(
    Array.from({ length: problem.cellStart[e + 1]! - from }, (_, k) => [
      `${problem.cellLo[from + k]}–${problem.cellHi[from + k]}`,
      state.product[from + k]!,
    ]),
  );
}

describe('a thinned problem', () => {
  const { problem } = compile(evidence);
  const thin = thinned(problem, kinds);

  it.each([0, 1, 2])('weighs what it keeps as before, and loses nothing that counts: %i', (e) => {
    const before = weightsOf(problem, e);
    const after = weightsOf(thin, e);
    expect(after.size).toBeLessThan(before.size * 0.6);
    for (const [cell, weight] of before) {
      if (after.has(cell)) expect(after.get(cell)).toBe(weight);
      else expect(weight).toBeLessThan(1e-30);
    }
  });

  it('keeps every day that a claim names', () => {
    for (const day of [dayOf(1999, 7, 12), dayOf(2001, 3, 5)])
      expect(weightsOf(thin, 0).has(`${day}–${day}`)).toBe(true);
  });

  it('keeps the days that a sequence needs against all evidence', () => {
    const orders = [{ row: 2, earlier: 'b', later: 'c' }];
    const { problem: inOrder } = compile(evidenceOf(orders));
    const sequence = thinned(inOrder, kinds);
    const reach = [1, 2].map((e) => [...weightsOf(sequence, e).keys()].map((k) => k.split('–')));
    // b is named in 2001 and c in 1999, yet b came first: either may have come on the other's day.
    const earliest = Math.min(...reach[0]!.map(([lo]) => Number(lo)));
    const latest = Math.max(...reach[1]!.map(([, hi]) => Number(hi)));
    expect(earliest).toBeLessThan(dayOf(1999, 2, 1));
    expect(latest).toBeGreaterThan(dayOf(2001, 3, 5));
  });
});

import { describe, expect, it } from 'vitest';
import { isoOf } from '../../src/evidence/index.ts';
import { em } from './em/index.ts';
import { informed } from './informed.ts';
import { majority } from './majority.ts';
import { figure } from './pool.ts';
import { answerOf, shortestRun } from './posterior.ts';
import { FLOOR, score } from './score.ts';
import { simulate } from './simulate.ts';

const dossiers = Array.from({ length: 12 }, (_, i) =>
  simulate({ seed: 500 + i, printings: 12, claims: 80, difficulty: 'medium' }),
);

describe('score', () => {
  const one = dossiers[0]!;
  const sure = (shift: number) => ({
    printings: one.evidence.printings.map(({ id }) =>
      answerOf(id, new Map([[one.truth.days.get(id)! + shift, 1]])),
    ),
  });

  it('is perfect for the truth itself', () => {
    expect(score(sure(0), one)).toMatchObject({
      exact: 1,
      log: 0,
      covered: 1,
      claimed: 1,
      not_one: 0,
    });
  });

  it('floors a sure answer that is a day off', () => {
    expect(score(sure(1), one)).toMatchObject({ exact: 0, covered: 0 });
    expect(score(sure(1), one).log).toBeCloseTo(Math.log(FLOOR), 12);
  });

  it('notices days that do not add up to one', () => {
    const printings = sure(0).printings.map((p) => ({ ...p, days: [[p.best!, 0.7]] as const }));
    expect(score({ printings }, one).not_one).toBe(12);
  });

  it('counts derivations whichever way round they are stated', () => {
    const derived = {
      ...one,
      truth: {
        ...one.truth,
        derivations: [
          { source: 's01', from: 's02', products: ['box-1'], rate: 1, cited: false },
          { source: 's03', from: 's04', products: ['box-1'], rate: 1, cited: false },
        ],
      },
    };
    const source = (id: string, from: string, p: number) => ({
      id,
      accuracy: null,
      accuracy95: null,
      derives: [{ from, p }],
    });
    const answer = {
      ...sure(0),
      sources: [source('s02', 's01', 0.9), source('s05', 's01', 0.6), source('s03', 's04', 0.3)],
    };
    expect(score(answer, derived).derived).toMatchObject({
      named: 2,
      named_right: 1,
      true: 2,
      found: 1,
    });
  });
});

describe('the shortest run', () => {
  it('leaves out what it need not hold', () => {
    const days = [
      [1, 0.03],
      [10, 0.5],
      [11, 0.46],
      [90, 0.01],
    ] as const;
    expect(shortestRun(days, 0.95)).toEqual([10, 11, 0.96]);
    expect(shortestRun(days, 0.97)[0]).toBe(1);
  });
});

describe('the baselines', () => {
  it('stand in the order of what they are told', () => {
    const of = (answer: (one: (typeof dossiers)[number]) => ReturnType<typeof majority>) =>
      figure(dossiers.map((one) => score(answer(one), one).log)).mean;
    const votes = of((one) => majority(one.evidence));
    const told = of((one) => em(one.evidence));
    const limit = of((one) => informed(one.evidence, one.truth));
    expect(votes).toBeLessThan(told - 0.5);
    expect(told).toBeLessThan(limit);
  });

  it('vote for the day with most rows, the earliest of equals', () => {
    const base = dossiers[0]!.evidence;
    const first = base.printings[0]!.id;
    const claim = (row: number, day: number) => ({
      row,
      printings: [first],
      source: 's01',
      property: 'on-sale',
      value: isoOf(day),
      date: {
        text: isoOf(day),
        level: 0 as const,
        form: 'day' as const,
        ranges: [{ first: day, last: day }],
        approximate: false,
        uncertain: false,
      },
    });
    const voted = (days: number[]) =>
      majority({ ...base, claims: days.map((day, i) => claim(i + 2, day)) }).printings[0]!;
    expect(voted([900, 900, 800]).best).toBe(isoOf(900));
    expect(voted([900, 800]).best).toBe(isoOf(800));
    expect(voted([900, 900, 800]).p_best).toBeCloseTo(2 / 3, 12);
  });
});

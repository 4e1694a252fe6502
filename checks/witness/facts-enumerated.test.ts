// The weighing of facts against every assignment of truths gone through (facts-enumerated.ts, which
// shares no code with it). The cases are drawn at random and are of ordinary, unequal sizes.
import { expect, it } from 'vitest';
import { latentTruth, type Problem, type Voice } from '../../src/evidence/index.ts';
import { chance } from '../../src/maths/index.ts';
import { enumerateTruths } from './facts-enumerated.ts';

const VALUES = 3;

/** Four items with values out of three, four sources that speak of most of them, some derived. */
function draw(seed: number): { problem: Problem; prior: [number, number][] } {
  const random = chance(seed);
  const prior = [0, 1, 2, 3].map((): [number, number] => [
    1 + 4 * random.uniform(),
    0.3 + 1.5 * random.uniform(),
  ]);
  const voices: Voice[] = [];
  const truth = [0, 1, 2, 3].map(() => random.below(VALUES));
  truth.forEach((right, item) => {
    for (let source = 0; source < 4; source++) {
      if (random.uniform() < 0.25) continue;
      const value = random.uniform() < 0.7 ? right : random.below(VALUES);
      const parent = voices.find((v) => v.item === item && v.source === source - 1);
      const derived = parent !== undefined && source === 3 ? 0.6 : 0;
      const copied = parent?.value === value ? derived : 0;
      voices.push({ item, source, value, weight: 1, copied, derived });
    }
  });
  const candidates = (item: number) =>
    [...new Set(voices.filter((v) => v.item === item).map((v) => v.value))].sort();
  return {
    prior,
    problem: {
      items: truth.map((_, item) => ({ group: 0, candidates: candidates(item) })),
      voices,
      tying: {
        columns: 2,
        pseudo: Float64Array.from(prior.flat()),
        cell: (source, right, value) => 2 * source + (right === value ? 0 : 1),
        share: (_, right, value) => (right === value ? 1 : 1 / (VALUES - 1)),
      },
      vocabulary: [VALUES],
      classPseudo: 1,
      own: 'left out',
      enough: 1e-9,
    },
  };
}

it('comes near the exact answer on forty small dossiers', () => {
  const errors: number[] = [];
  for (let seed = 1; seed <= 40; seed++) {
    const { problem, prior } = draw(seed);
    const exact = enumerateTruths(problem, prior);
    latentTruth(problem).posterior.forEach((ours, item) => {
      ours.forEach((p, t) => {
        errors.push(Math.abs(p - exact[item]![t]!));
      });
    });
  }
  errors.sort((a, b) => a - b);
  const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length;
  // The collapsed form is an approximation: measured 0.0112, 0.055 and 0.112.
  expect(mean).toBeLessThan(0.013);
  expect(errors[Math.floor(0.95 * errors.length)]!).toBeLessThan(0.06);
  expect(errors.at(-1)!).toBeLessThan(0.13);
});

it('is exact where rates are all but known', () => {
  // With a million pseudo-observations nothing is learned: measured 3e-7, allowed 1e-5.
  for (let seed = 1; seed <= 10; seed++) {
    const { problem, prior } = draw(seed);
    const firm = prior.map(([a, b]): [number, number] => [1e6 * a, 1e6 * b]);
    const tying = { ...problem.tying, pseudo: Float64Array.from(firm.flat()) };
    const known = { ...problem, tying, classPseudo: 1e6 };
    const exact = enumerateTruths(known, firm);
    latentTruth(known).posterior.forEach((ours, item) => {
      ours.forEach((p, t) => {
        expect(Math.abs(p - exact[item]![t]!)).toBeLessThan(1e-5);
      });
    });
  }
});

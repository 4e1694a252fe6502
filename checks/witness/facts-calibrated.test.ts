// Dossiers drawn from the model's own prior: what is called 80 % sure must come true 80 times in 100.
import { expect, it } from 'vitest';
import { latentTruth, type Problem, type Voice } from '../../src/evidence/index.ts';
import { type Chance, chance } from '../../src/maths/index.ts';

const ITEMS = 12;
const VALUES = 4;
/** Pseudo-observations of being right and wrong; the second source repeats the first by 0.5. */
const PRIORS = [
  [4, 1],
  [2, 1],
  [3, 1],
  [1.5, 1],
  [4, 2],
] as const;

function beta(random: Chance, a: number, b: number): number {
  const x = random.gamma(a);
  return x / (x + random.gamma(b));
}

function simulate(random: Chance): { problem: Problem; truth: number[] } {
  const rates = PRIORS.map(([a, b]) => beta(random, a, b));
  const truth = Array.from({ length: ITEMS }, () => random.below(VALUES));
  const voices: Voice[] = [];
  truth.forEach((right, item) => {
    let first = -1;
    rates.forEach((rate, source) => {
      if (random.uniform() < 0.4) return;
      const wrong = (right + 1 + random.below(VALUES - 1)) % VALUES;
      const alone = random.uniform() < rate ? right : wrong;
      const derived = source === 1 && first >= 0 ? 0.5 : 0;
      const value = random.uniform() < derived ? first : alone;
      if (source === 0) first = value;
      voices.push({
        item,
        source,
        value,
        weight: 1,
        copied: value === first ? derived : 0,
        derived,
      });
    });
  });
  const candidates = (item: number) =>
    [...new Set(voices.filter((v) => v.item === item).map((v) => v.value))].sort();
  const problem: Problem = {
    items: truth.map((_, item) => ({ group: 0, candidates: candidates(item) })),
    voices,
    tying: {
      columns: 2,
      pseudo: Float64Array.from(PRIORS.flat()),
      cell: (source, right, value) => 2 * source + (right === value ? 0 : 1),
      share: (_, right, value) => (right === value ? 1 : 1 / (VALUES - 1)),
    },
    vocabulary: [VALUES],
    classPseudo: 100,
    own: 'left out',
    enough: 1e-7,
  };
  return { problem, truth };
}

it('says as often right as it claims', () => {
  const random = chance(19);
  const bins = Array.from({ length: 10 }, () => ({ stated: 0, came: 0, count: 0 }));
  for (let run = 0; run < 200; run++) {
    const { problem, truth } = simulate(random);
    latentTruth(problem).posterior.forEach((posterior, item) => {
      problem.items[item]!.candidates.forEach((value, t) => {
        const bin = bins[Math.min(9, Math.floor(10 * posterior[t]!))]!;
        bin.stated += posterior[t]!;
        bin.came += value === truth[item] ? 1 : 0;
        bin.count += 1;
      });
    });
  }
  for (const { stated, came, count } of bins) {
    // Bias of the approximation, measured 0.04 at most over 400 dossiers, and three standard errors.
    expect(Math.abs(stated - came) / count).toBeLessThan(0.03 + 3 * Math.sqrt(0.25 / count));
  }
});

// Dawid & Skene 1979, Applied Statistics 28:20-28, table 1: 45 patients, 5 observers, one of them
// three times. The ratings as two public transcriptions have them; the answers by an EM in R 4.2.2
// (fixtures/dawid-skene/em.json says how), which agrees with the two decimals that the paper prints.
import { describe, expect, it } from 'vitest';
import { latentTruth } from '../../src/evidence/index.ts';
import { dawidSkeneAnswers, dawidSkeneProblem } from './dawid-skene.ts';

const answers = dawidSkeneAnswers();

function largest(ours: ArrayLike<number>[], theirs: readonly (readonly number[])[]): number {
  return Math.max(...theirs.flatMap((row, i) => row.map((p, t) => Math.abs(p - ours[i]![t]!))));
}

describe.each([
  ['maximum likelihood', 0, answers.mle],
  ['one pseudo-observation in each cell', 1, answers.smoothed],
] as const)('Dawid and Skene’s patients, %s', (_, pseudo, expected) => {
  const problem = dawidSkeneProblem(pseudo);
  const { posterior, rates, change } = latentTruth(problem);

  it('settles', () => expect(change).toBeLessThan(1e-12));

  it('gives each patient the same classes', () => {
    // The fixture has 8 decimals: measured 5.0e-9, allowed 1e-8.
    expect(largest([...posterior], expected.posterior)).toBeLessThan(1e-8);
  });

  it('gives each observer the same errors', () => {
    for (const { observer, rows_true_cols_reported } of expected.error_rates) {
      const start = (observer - 1) * 16;
      const matrix = [0, 4, 8, 12].map((row) => rates.slice(start + row, start + row + 4));
      // 8 decimals in the fixture: measured 4.95e-9, allowed 1e-8.
      expect(largest(matrix, rows_true_cols_reported)).toBeLessThan(1e-8);
    }
  });

  it('gives the same marginals', () => {
    const n = posterior.length + 4 * pseudo;
    expected.marginals.forEach((share, t) => {
      const ours = (posterior.reduce((sum, p) => sum + p[t]!, 0) + pseudo) / n;
      expect(Math.abs(ours - share)).toBeLessThan(1e-8);
    });
  });
});

it('agrees with the two decimals of the paper (marginals and observer 1)', () => {
  const { rates, posterior } = latentTruth(dawidSkeneProblem(0));
  const { marginals, observer1 } = answers.published;
  marginals.forEach((share, t) => {
    const ours = posterior.reduce((sum, p) => sum + p[t]!, 0) / posterior.length;
    expect(Math.abs(ours - share)).toBeLessThanOrEqual(0.005 + 1e-9);
  });
  const matrix = [0, 4, 8, 12].map((row) => rates.slice(row, row + 4));
  // A rounding of 0.005 at most.
  expect(largest(matrix, observer1)).toBeLessThanOrEqual(0.005 + 1e-9);
});

import { expect, test } from 'vitest';
import {
  ace,
  chao,
  chapman,
  coverage,
  schnabel,
  schumacherEschmeyer,
} from '../../src/population/index.ts';
import { tableOf, valuesOf } from './fixture.ts';

const reference = valuesOf('capture_recapture_results.json');
const sunfish = tableOf('schnabel_gerking_1953.csv').map((row) => ({
  caught: Number(row.caught),
  again: Number(row.recaptured),
  known: Number(row.marked_at_large),
}));

// Gerking 1953; Krebs prints 447.5 and 423. R gives eight decimals: half of the last one is allowed.
test('the sunfish of Gerking by Schnabel, and by Schumacher and Eschmeyer', () => {
  const { estimate, interval95 } = schnabel(sunfish);
  expect(estimate).toBe(reference.schnabel.estimate);
  const [low, high] = reference.schnabel.ci95_poisson_exact_on_sum_R;
  expect(Math.abs(interval95[0] - low)).toBeLessThan(1e-6);
  expect(Math.abs(interval95[1] - high)).toBeLessThan(1e-6);
  expect(
    Math.abs(schumacherEschmeyer(sunfish) - reference.schumacher_eschmeyer.estimate),
  ).toBeLessThan(0.51e-8);
});

test('three samples of a course text by Schnabel', () => {
  const { C, R, M, estimate } = reference.three_sample_schnabel;
  const occasions = C.map((caught: number, i: number) => ({ caught, again: R[i], known: M[i] }));
  expect(schnabel(occasions).estimate).toBe(estimate);
});

test('two samples by Chapman, with the variance of Seber', () => {
  for (const { M, C, R, chapman: estimate, chapman_var_seber: variance } of reference.two_sample) {
    const ours = chapman(M, C, R);
    expect(Math.abs(ours.estimate - estimate)).toBeLessThan(0.51e-8);
    expect(Math.abs(ours.variance - variance)).toBeLessThan(0.51e-6);
    expect(ours.interval95[0]).toBeGreaterThanOrEqual(M + C - R);
  }
});

test('trees of Barro Colorado by Chao, with his interval', () => {
  const { plots, small, pooled_50_plots: pooled } = valuesOf('chao_ace_coverage.json');
  let intervals = 0;
  for (const one of [...plots, pooled, ...small]) {
    const times: number[] = one.abundances ?? [];
    const count = (n: number) => times.filter((time) => time === n).length;
    const ours = chao(
      one.S ?? times.length,
      one.f1 ?? count(1),
      one.f2 ?? count(2),
      one.n ?? times.reduce((a, b) => a + b, 0),
    );
    expect(Math.abs(ours.estimate - one.chao1_classic_with_n_factor)).toBeLessThan(0.51e-8);
    if (typeof one.var_with_n_factor !== 'number') continue;
    intervals += 1;
    expect(Math.abs(ours.variance - one.var_with_n_factor)).toBeLessThan(1e-7);
    for (const end of [0, 1] as const)
      expect(Math.abs(ours.interval95[end] - one.ci95_log[end])).toBeLessThan(1e-7);
  }
  expect(intervals).toBe(10);
});

test('trees of Barro Colorado by their coverage, beside vegan', () => {
  const { plots, small } = valuesOf('chao_ace_coverage.json');
  let held = 0;
  for (const { abundances: times, vegan_estimateR: vegan, chao_jost_coverage: covered } of [
    ...plots,
    ...small,
  ]) {
    const often = Array.from(
      { length: Math.max(...times) },
      (_, i) => times.filter((time: number) => time === i + 1).length,
    );
    const looks = times.reduce((a: number, b: number) => a + b, 0);
    if (typeof vegan['S.ACE'] === 'number') {
      held += 1;
      expect(Math.abs(ace(often) - vegan['S.ACE'])).toBeLessThan(0.51e-8);
    }
    // Where none was seen twice R's expression has no value.
    if (typeof covered !== 'number') continue;
    held += 1;
    expect(Math.abs(coverage(often[0] ?? 0, often[1] ?? 0, looks) - covered)).toBeLessThan(0.51e-8);
  }
  expect(held).toBe(20);
  expect(ace([3])).toBe(Number.POSITIVE_INFINITY);
});

test('more seen again than seen is a bad call', () => {
  expect(() => chapman(3, 4, 5)).toThrow(RangeError);
});

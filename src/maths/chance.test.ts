import { describe, expect, it } from 'vitest';
import { chance, dirichlet, pick } from './index.ts';

const N = 40_000;
const drawn = (draw: () => number) => Array.from({ length: N }, draw);
const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
const moment = (values: readonly number[], k: number, about = 0) =>
  mean(values.map((v) => (v - about) ** k));

/** The mean lies within 4 standard errors of what it should be: once in 16,000 it would not. */
function expectMean(values: readonly number[], wanted: number): void {
  const error = Math.sqrt(moment(values, 2, mean(values)) / values.length);
  expect(Math.abs(mean(values) - wanted)).toBeLessThan(4 * error);
}

describe('chance', () => {
  it('gives the same numbers for a seed, and others for another', () => {
    const list = (seed: number) => {
      const random = chance(seed);
      return [random.uniform(), random.normal(), random.gamma(0.3), random.below(1000)];
    };
    expect(list(12)).toEqual(list(12));
    for (const other of [13, -12, 12 + 2 ** 32]) expect(list(other)).not.toEqual(list(12));
  });

  it.each([0.5, Number.NaN, 2 ** 60, Number.POSITIVE_INFINITY])('refuses the seed %f', (seed) => {
    expect(() => chance(seed)).toThrow(RangeError);
  });

  it('draws uniform numbers between 0 and 1, both left out', () => {
    const random = chance(1);
    const values = drawn(random.uniform);
    expect(values.every((v) => v > 0 && v < 1)).toBe(true);
    expectMean(values, 1 / 2);
    expectMean(
      values.map((v) => v * v),
      1 / 3,
    );
    // Neighbours do not go together.
    expectMean(
      values.slice(1).map((v, i) => (v - 0.5) * (values[i]! - 0.5)),
      0,
    );
  });

  it('draws standard normal numbers', () => {
    const random = chance(2);
    const values = drawn(random.normal);
    [0, 1, 0, 3, 0, 15].forEach((wanted, k) => {
      expectMean(
        values.map((v) => v ** (k + 1)),
        wanted,
      );
    });
    // Standard normal distribution function at 1: 0.841345 (Abramowitz and Stegun, table 26.1).
    expectMean(
      values.map((v) => (v < 1 ? 1 : 0)),
      0.841345,
    );
    expectMean(
      values.slice(1).map((v, i) => v * values[i]!),
      0,
    );
  });

  it.each([0.2, 0.9, 1, 2.5, 40])('draws gamma numbers of shape %f', (shape) => {
    const random = chance(3);
    const values = drawn(() => random.gamma(shape));
    expect(Math.min(...values)).toBeGreaterThanOrEqual(0);
    expectMean(values, shape);
    expectMean(
      values.map((v) => (v - shape) ** 2),
      shape,
    );
    expectMean(
      values.map((v) => (v - shape) ** 3),
      2 * shape,
    );
  });

  it('knows the gamma of shape 1 as exponential', () => {
    const random = chance(4);
    expectMean(
      drawn(() => (random.gamma(1) > 1 ? 1 : 0)),
      Math.exp(-1),
    );
  });

  it('refuses a gamma without shape', () => {
    expect(() => chance(1).gamma(0)).toThrow(RangeError);
    expect(() => chance(1).gamma(Number.NaN)).toThrow(RangeError);
  });

  it('draws whole numbers below, each as often', () => {
    const random = chance(5);
    const values = drawn(() => random.below(7));
    for (let n = 0; n < 7; n++)
      expectMean(
        values.map((v) => (v === n ? 1 : 0)),
        1 / 7,
      );
  });

  it('draws shares of a Dirichlet distribution', () => {
    const random = chance(6);
    const alpha = [0.5, 2, 3.5];
    const draws = drawn(() => 0).map(() => {
      const out = new Float64Array(3);
      dirichlet(random, alpha, out);
      return [...out];
    });
    for (const d of draws.slice(0, 500)) expect(d[0]! + d[1]! + d[2]!).toBeCloseTo(1, 12);
    alpha.forEach((a, i) => {
      expectMean(
        draws.map((d) => d[i]!),
        a / 6,
      );
      // Variance a (A − a) / (A² (A + 1)).
      expectMean(
        draws.map((d) => (d[i]! - a / 6) ** 2),
        (a * (6 - a)) / (36 * 7),
      );
    });
  });

  it('picks in proportion to weights, never one without weight', () => {
    const random = chance(7);
    const weights = [0, 3, 0, 1, 4];
    const values = drawn(() => pick(random, weights, 8));
    weights.forEach((w, i) => {
      if (w === 0) expect(values).not.toContain(i);
      else
        expectMean(
          values.map((v) => (v === i ? 1 : 0)),
          w / 8,
        );
    });
  });
});

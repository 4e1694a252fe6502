import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jeffreys, shrinkage, wilson } from '../../src/maths/index.ts';
import { tableOf, valuesOf } from './fixture.ts';

const table = tableOf('binomial_intervals.csv');
const furthest = (pairs: readonly (readonly [number, number])[]) =>
  Math.max(...pairs.map(([a, b]) => Math.abs(a - b)));

// R gives ten digits; measured 5.3e-11 and 2.1e-10 (rounding of the table's last digit), allowed 1e-9.
test.each([
  ['wilson', wilson],
  ['jeffreys', jeffreys],
] as const)('%s is the interval that R computes, at all 198 places', (name, interval) => {
  expect(table).toHaveLength(198);
  const off = table.flatMap((row) => {
    const [low, high] = interval(Number(row.x), Number(row.n), Number(row.conf));
    return [
      [low, Number(row[`${name}_lo`])],
      [high, Number(row[`${name}_hi`])],
    ] as const;
  });
  expect(furthest(off)).toBeLessThan(1e-9);
});

// Newcombe 1998, table I, prints four decimals: half of the last one is allowed.
test('wilson gives the limits that Newcombe prints', () => {
  const rows = tableOf('newcombe_1998_table1.csv').filter(({ method }) => method === 'wilson');
  expect(rows).toHaveLength(4);
  const off = rows.flatMap((row) => {
    const [low, high] = wilson(Number(row.x), Number(row.n));
    return [
      [low, Number(row.published_lo)],
      [high, Number(row.published_hi)],
    ] as const;
  });
  expect(furthest(off)).toBeLessThanOrEqual(0.5e-4);
});

test('an interval mirrors with its share, and more copies of one share narrow it', () => {
  const share = fc
    .tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 0, max: 400 }))
    .map(([n, x]) => ({ n, x: Math.min(n, x) }));
  for (const interval of [wilson, jeffreys]) {
    fc.assert(
      fc.property(share, ({ x, n }) => {
        const [low, high] = interval(x, n);
        const [mirrored, other] = interval(n - x, n);
        // The quantile of the beta distribution is searched to 1e-8 of its scale or so.
        expect(mirrored).toBeCloseTo(1 - high, 7);
        expect(other).toBeCloseTo(1 - low, 7);
        const [lower, higher] = interval(4 * x, 4 * n);
        expect(higher - lower).toBeLessThan(high - low);
      }),
      { seed: 5 },
    );
  }
});

test('a share of nothing, of more than all, or at no level is a bad call', () => {
  expect(() => wilson(0, 0)).toThrow(RangeError);
  expect(() => jeffreys(6, 5)).toThrow(RangeError);
  expect(() => wilson(1, 5, 1)).toThrow(RangeError);
});

const groups = tableOf('rat_tumours_tarone_1982.csv').map(({ y, n }) => ({
  x: Number(y),
  n: Number(n),
}));
const rats = valuesOf('rat_tumours_results.json');

// R's grid of 601 × 901 ends at log(a + b) = 5.5, ours of 41 × 41 goes where the posterior does:
// measured 8.3e-5 and 4.7e-4 of the parameters, 3e-7 of the means; allowed about three times that.
test('the tumours of 71 groups of rats give the posterior of Gelman and others', () => {
  const learned = shrinkage(groups);
  expect(Math.abs(learned.alpha - rats.hierarchical_all71.E_alpha)).toBeLessThan(3e-4);
  expect(Math.abs(learned.beta - rats.hierarchical_all71.E_beta)).toBeLessThan(1.5e-3);
  expect(Math.abs(learned.mean - rats.hierarchical_all71.E_mu)).toBeLessThan(1e-6);
  const means = groups.map(({ x, n }, i) => [
    learned.of(x, n).mean,
    rats.group_posterior_mean_hier[i] as number,
  ]);
  expect(furthest(means as [number, number][])).toBeLessThan(1e-6);
});

// The grid is thinned to some forty points for the ends: measured 0.0008, allowed 0.0015.
test('and the interval of a group is that of the whole grid to 0.0015', () => {
  const learned = shrinkage(groups);
  const [low, , high] = rats.group71_hier_quantiles_025_50_975 as number[];
  const [low1, , high1] = rats.group1_hier_quantiles as number[];
  const [ours, ourHigh] = learned.of(4, 14).interval95;
  const [ours1, ourHigh1] = learned.of(0, 20).interval95;
  const off = [
    [ours, low],
    [ourHigh, high],
    [ours1, low1],
    [ourHigh1, high1],
  ] as [number, number][];
  expect(furthest(off)).toBeLessThan(0.0015);
});

// Efron and Morris 1975: Stein's estimator on the raw scale leaves 0.283 of the squared error of the
// averages themselves. The likelihood of a + b is nearly flat here and ours is integrated: measured
// 0.284, allowed 0.3.
test('batting averages are shrunk about as well as by Stein’s estimator', () => {
  const players = tableOf('efron_morris_1975_baseball.csv').map((row) => ({
    x: Number(row.hits_first45),
    n: Number(row.at_bats_first),
    later: Number(row.remaining_average),
    stein: Number(row.js_raw_scale),
  }));
  expect(players).toHaveLength(18);
  const learned = shrinkage(players);
  const error = (guess: (one: (typeof players)[number]) => number) =>
    players.reduce((sum, one) => sum + (guess(one) - one.later) ** 2, 0);
  const raw = error(({ x, n }) => x / n);
  expect(error(({ stein }) => stein) / raw).toBeCloseTo(0.283, 3);
  expect(error(({ x, n }) => learned.of(x, n).mean) / raw).toBeLessThan(0.3);
});

test('groups in another order, and empty ones, tell the same', () => {
  const learned = shrinkage(groups);
  const turned = shrinkage([...groups, { x: 0, n: 0 }].reverse());
  // Sums in another order differ in their last digits.
  expect(turned.of(3, 20).mean).toBeCloseTo(learned.of(3, 20).mean, 10);
});

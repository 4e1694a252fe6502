import gammaln from '@stdlib/math-base-special-gammaln';
import betaQuantile from '@stdlib/stats-base-dists-beta-quantile';
import type { Interval } from './binomial.ts';

/** `x` of `n`; neither need be whole, `n` may be 0. */
export interface Counted {
  readonly x: number;
  readonly n: number;
}

/** What many shares of one kind tell of each single one. */
export interface Shrinkage {
  /** Posterior means of the two parameters of the beta distribution that the shares come from. */
  readonly alpha: number;
  readonly beta: number;
  /** The mean of all shares. */
  readonly mean: number;
  /** A share of that kind of which `x` of `n` were seen: posterior mean and central 95 %. */
  of(x: number, n: number): { readonly mean: number; readonly interval95: Interval };
}

/** A point of the grid over log(a/b) and log(a+b), with its share of the posterior. */
interface Point {
  readonly a: number;
  readonly b: number;
  readonly weight: number;
}

interface Box {
  readonly ratio: Interval;
  readonly sum: Interval;
}

const SIDE = 41;
/** log(a/b) to a share of 0.0003 or 0.9997, log(a+b) from 0.6 to 8,000 copies' worth. */
const WIDE: Box = { ratio: [-8, 8], sum: [-0.5, 9] };
/** Points lighter than this against the heaviest one are left out. */
const LIGHT = 1e-5;

/**
 * Learns the beta distribution that the shares of many groups come from, its two parameters
 * integrated over a grid under the prior p(a, b) ∝ (a + b)^(−5/2) (`gelman:2013`, chapter 5).
 * Without any group the answer is the prior alone. The grid ends at a + b = 8,000, so that shares
 * which are all alike are not taken for equal.
 */
export function shrinkage(groups: readonly Counted[]): Shrinkage {
  const tallies = talliesOf(groups);
  let box = WIDE;
  let points = pointsIn(box, tallies);
  for (let round = 0; round < 3; round++) {
    box = around(points, box);
    points = pointsIn(box, tallies);
  }
  const heaviest = Math.max(...points.map(({ weight }) => weight));
  const kept = points.filter(({ weight }) => weight > LIGHT * heaviest);
  const mean = (value: (point: Point) => number) => averaged(kept, value);
  return {
    alpha: mean(({ a }) => a),
    beta: mean(({ b }) => b),
    mean: mean(({ a, b }) => a / (a + b)),
    of: (x, n) => shrunk(kept, x, n),
  };
}

/** How often each value stands among the groups: sums of log Γ need each only once. */
interface Tallies {
  readonly x: ReadonlyMap<number, number>;
  readonly rest: ReadonlyMap<number, number>;
  readonly n: ReadonlyMap<number, number>;
  readonly groups: number;
}

function talliesOf(groups: readonly Counted[]): Tallies {
  const used = groups.filter(({ n }) => n > 0);
  const tally = (value: (group: Counted) => number) => {
    const counts = new Map<number, number>();
    for (const group of used) counts.set(value(group), (counts.get(value(group)) ?? 0) + 1);
    return counts;
  };
  return {
    x: tally(({ x }) => x),
    rest: tally(({ x, n }) => n - x),
    n: tally(({ n }) => n),
    groups: used.length,
  };
}

function sumOfLogs(counts: ReadonlyMap<number, number>, shift: number): number {
  let sum = 0;
  for (const [value, count] of counts) sum += count * gammaln(shift + value);
  return sum;
}

function pointsIn({ ratio, sum }: Box, tallies: Tallies): Point[] {
  const logs: { a: number; b: number; log: number }[] = [];
  for (let i = 0; i < SIDE; i++) {
    const total = Math.exp(step(sum, i));
    const ofTotal = tallies.groups * gammaln(total) - sumOfLogs(tallies.n, total);
    for (let j = 0; j < SIDE; j++) {
      const b = total / (1 + Math.exp(step(ratio, j)));
      const a = total - b;
      const prior = Math.log(a) + Math.log(b) - 2.5 * Math.log(total);
      const groups =
        sumOfLogs(tallies.x, a) +
        sumOfLogs(tallies.rest, b) -
        tallies.groups * (gammaln(a) + gammaln(b));
      logs.push({ a, b, log: prior + ofTotal + groups });
    }
  }
  const most = logs.reduce((best, { log }) => Math.max(best, log), Number.NEGATIVE_INFINITY);
  const whole = logs.reduce((so, { log }) => so + Math.exp(log - most), 0);
  return logs.map(({ a, b, log }) => ({ a, b, weight: Math.exp(log - most) / whole }));
}

function step([from, to]: Interval, i: number): number {
  return from + ((to - from) * i) / (SIDE - 1);
}

/** The part of the box that holds the posterior, and a step more on each side. */
function around(points: readonly Point[], box: Box): Box {
  const heaviest = Math.max(...points.map(({ weight }) => weight));
  const heavy = points.filter(({ weight }) => weight > LIGHT * heaviest);
  const span = (value: (point: Point) => number, [from, to]: Interval): Interval => {
    const values = heavy.map(value);
    const margin = (to - from) / (SIDE - 1);
    return [
      Math.max(from, Math.min(...values) - margin),
      Math.min(to, Math.max(...values) + margin),
    ];
  };
  return {
    ratio: span(({ a, b }) => Math.log(a / b), box.ratio),
    sum: span(({ a, b }) => Math.log(a + b), box.sum),
  };
}

function averaged(points: readonly Point[], value: (point: Point) => number): number {
  let sum = 0;
  let weights = 0;
  for (const point of points) {
    sum += point.weight * value(point);
    weights += point.weight;
  }
  return sum / weights;
}

/** The mixture of betas over the grid, its ends those of the beta of the same mean and variance. */
function shrunk(points: readonly Point[], x: number, n: number) {
  let first = 0;
  let second = 0;
  let weights = 0;
  for (const { a, b, weight } of points) {
    const total = a + b + n;
    const mean = (a + x) / total;
    first += weight * mean;
    second += weight * mean * ((a + x + 1) / (total + 1));
    weights += weight;
  }
  const mean = first / weights;
  const variance = Math.max(second / weights - mean * mean, 1e-14);
  const size = (mean * (1 - mean)) / variance - 1;
  const at = (p: number) => betaQuantile(p, mean * size, (1 - mean) * size);
  return { mean, interval95: [at(0.025), at(0.975)] as Interval };
}

import gammaln from '@stdlib/math-base-special-gammaln';
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
  const few = thinned(points, tallies.groups > MANY ? 14 : 5);
  const mean = (value: (point: Point) => number) => averaged(kept, value);
  return {
    alpha: mean(({ a }) => a),
    beta: mean(({ b }) => b),
    mean: mean(({ a, b }) => a / (a + b)),
    of: remembered((x, n) => ({
      mean: mean(({ a, b }) => (a + x) / (a + b + n)),
      interval95: interval95(few, x, n),
    })),
  };
}

/** Above so many groups the posterior is narrow, and fewer points tell it. */
const MANY = 400;

/** Groups alike are asked about again and again. */
function remembered(of: Shrinkage['of']): Shrinkage['of'] {
  const known = new Map<string, ReturnType<Shrinkage['of']>>();
  return (x, n) => {
    const key = `${x} ${n}`;
    const answer = known.get(key) ?? of(x, n);
    known.set(key, answer);
    return answer;
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

/** Nodes at which the density of one share is summed, and how far they reach, in standard deviations. */
const NODES = 160;
const REACH = 8;

/** Central 95 % of the mixture of betas over the grid, by summing its density on the logit scale. */
function interval95(points: readonly Point[], x: number, n: number): Interval {
  let centre = 0;
  let square = 0;
  for (const { a, b, weight } of points) {
    const [one, rest] = [a + x, b + n - x];
    const logit = Math.log(one / rest);
    centre += weight * logit;
    square += weight * (logit * logit + 1 / one + 1 / rest + 0.5 / one ** 2 + 0.5 / rest ** 2);
  }
  const reach = REACH * Math.sqrt(square - centre * centre);
  const density = new Float64Array(NODES);
  const at = (i: number) => centre + reach * ((2 * (i + 0.5)) / NODES - 1);
  for (const { a, b, weight } of points) {
    const [one, rest] = [a + x, b + n - x];
    const scale = Math.log(weight) + gammaln(one + rest) - gammaln(one) - gammaln(rest);
    for (let i = 0; i < NODES; i++) {
      const u = at(i);
      const log = u > 30 ? u : Math.log1p(Math.exp(u));
      density[i]! += Math.exp(scale + one * u - (one + rest) * log);
    }
  }
  const all = density.reduce((sum, one) => sum + one, 0);
  const end = (p: number) => 1 / (1 + Math.exp(-crossing(density, p * all, at)));
  return [end(0.025), end(0.975)];
}

/** Where the running sum of a density passes a value, straight between the nodes' borders. */
function crossing(density: Float64Array, value: number, at: (i: number) => number): number {
  let left = value;
  for (let i = 0; i < density.length; i++) {
    const here = density[i] as number;
    if (left <= here) return at(i - 0.5 + left / Math.max(here, 1e-300));
    left -= here;
  }
  return at(density.length);
}

/** The grid thinned to blocks of neighbours, each put as one point of their weighted mean logs. */
function thinned(points: readonly Point[], block: number): Point[] {
  const blocks = new Map<number, { ratio: number; sum: number; weight: number }>();
  points.forEach(({ a, b, weight }, at) => {
    const [row, column] = [Math.floor(at / SIDE), at % SIDE];
    const key = Math.floor(row / block) * SIDE + Math.floor(column / block);
    const so = blocks.get(key) ?? { ratio: 0, sum: 0, weight: 0 };
    so.ratio += weight * Math.log(a / b);
    so.sum += weight * Math.log(a + b);
    so.weight += weight;
    blocks.set(key, so);
  });
  const heaviest = Math.max(...[...blocks.values()].map(({ weight }) => weight));
  const kept = [...blocks.values()].filter(({ weight }) => weight > 1e-3 * heaviest);
  const all = kept.reduce((sum, { weight }) => sum + weight, 0);
  return kept.map(({ ratio, sum, weight }) => {
    const total = Math.exp(sum / weight);
    const b = total / (1 + Math.exp(ratio / weight));
    return { a: total - b, b, weight: weight / all };
  });
}

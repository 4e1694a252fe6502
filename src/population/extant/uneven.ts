import gammaln from '@stdlib/math-base-special-gammaln';
import type { Interval } from '../../maths/index.ts';

/** What is believed of the number of copies after so many were seen so often. */
export interface Uneven {
  readonly median: number;
  readonly interval95: Interval;
  /** Probability that copies turn up about alike: their rates vary by less than a half of the mean. */
  readonly pEven: number;
}

/** How unlike the copies' chances are: shape of a gamma, large for even ones. Judgement, no source. */
const SHAPES = [0.5, 0.75, 1.1, 1.7, 2.6, 4, 7, 15, 60];
const PRIOR = [0.06, 0.08, 0.1, 0.12, 0.13, 0.13, 0.13, 0.125, 0.125];
const STEPS = 40;
const NUMBERS = 120;

/**
 * The number of copies behind counts of how often each was seen, where copies differ in how often they
 * turn up: the counts are negative binomial, the shape, the mean and the number are integrated
 * over a grid, the number under a prior of 1/N (`royle:2008`). A bound from above cuts it off.
 *
 * @param often how many copies were seen once, twice, …
 * @param most the number cannot be larger; may be infinite
 */
export function uneven(often: readonly number[], most: number): Uneven {
  const seen = often.reduce((sum, count) => sum + count, 0);
  const times = often.reduce((sum, count, i) => sum + count * (i + 1), 0);
  const numbers = gridOf(seen, Math.max(seen, most));
  const ways = numbers.map((n) => gammaln(n + 1) - gammaln(n - seen + 1));
  const weights = new Float64Array(numbers.length);
  const least = logAtTwice(often, seen, times);
  let even = 0;
  let all = 0;
  SHAPES.forEach((shape, s) => {
    let here = 0;
    for (let i = 0; i < STEPS; i++) {
      const mean = meanAt(i, times, seen);
      const likelihood = ofCounts(often, shape, mean) - least;
      const unseen = -shape * Math.log(1 + mean / shape);
      for (let at = 0; at < numbers.length; at++) {
        const n = numbers[at] as number;
        const log = (ways[at] as number) + (n - seen) * unseen + likelihood;
        if (log < FAINT) continue;
        const weight = (PRIOR[s] as number) * Math.exp(log);
        weights[at]! += weight;
        here += (weight * widthAt(numbers, at)) / n;
      }
    }
    all += here;
    if (shape >= 4) even += here;
  });
  return { ...endsOf(numbers, weights), pEven: even / all };
}

/** Logs this far below that of the usual case add nothing. */
const FAINT = -45;

/** The log of even copies, twice as many as seen: near the largest, so that none overflows. */
function logAtTwice(often: readonly number[], seen: number, times: number): number {
  const n = 2 * seen;
  const mean = times / n;
  const unseen = -60 * Math.log(1 + mean / 60);
  return gammaln(n + 1) - gammaln(n - seen + 1) + (n - seen) * unseen + ofCounts(often, 60, mean);
}

function widthAt(numbers: readonly number[], at: number): number {
  const n = numbers[at] as number;
  return n - (numbers[at - 1] ?? n - 1);
}

/** Mean times that a copy is seen, evenly on the log scale below what the seen ones were. */
function meanAt(i: number, times: number, seen: number): number {
  const highest = (1.3 * times) / seen;
  return highest * Math.exp((-7 * i) / (STEPS - 1));
}

function ofCounts(often: readonly number[], shape: number, mean: number): number {
  let log = 0;
  often.forEach((count, i) => {
    if (count === 0) return;
    const k = i + 1;
    const one =
      gammaln(shape + k) -
      gammaln(shape) -
      gammaln(k + 1) -
      shape * Math.log(1 + mean / shape) +
      k * Math.log(mean / (mean + shape));
    log += count * one;
  });
  return log;
}

function gridOf(seen: number, most: number): number[] {
  const last = Math.min(most, 400 * seen + 1000);
  const numbers = new Set<number>();
  for (let i = 0; i < NUMBERS; i++) {
    const rest = last - seen;
    numbers.add(seen + Math.round(Math.expm1((Math.log1p(rest) * i) / (NUMBERS - 1))));
  }
  return [...numbers].sort((a, b) => a - b);
}

function endsOf(numbers: readonly number[], weights: Float64Array) {
  const masses = numbers.map((n, at) => ((weights[at] as number) * widthAt(numbers, at)) / n);
  const all = masses.reduce((sum, mass) => sum + mass, 0);
  const at = (p: number) => {
    let left = p * all;
    const i = masses.findIndex((mass) => {
      left -= mass;
      return left <= 0;
    });
    return numbers[i < 0 ? numbers.length - 1 : i] as number;
  };
  return { median: at(0.5), interval95: [at(0.025), at(0.975)] as Interval };
}

import { inverseOfSymmetric, solveSymmetric } from '../../maths/index.ts';
import { type DentProblem, dentProblem, type Laid } from './dent-problem.ts';
import { SHAPE, SHAPE_SIZE } from './dent-shape.ts';
import { glossShareOf } from './gloss-share.ts';
import type { Lighting } from './lighting.ts';
import { clumpingOf, scatterOf } from './residuals.ts';
import type { Window } from './window.ts';

/** What a fit of a dent to a window found. */
export interface DentFit {
  /** The numbers of `SHAPE`, places from the card's centre. */
  readonly shape: Float64Array;
  /** Their covariance, rows of as many; the residuals' scatter and their correlation counted in. */
  readonly covariance: Float64Array;
  /** By how much scatter and correlation of the residuals widened the covariance; 1 where noise explains all. */
  readonly inflation: number;
  /** Share of the gloss in the light of the flat card about the dent. */
  readonly glossShare: number;
  /** Mean square of the residuals in standard errors; 1 where the noise is as learned. */
  readonly scatter: number;
  /** The same within the dent's foot only; far above `scatter` where the model does not fit. */
  readonly scatterInside: number;
  /** Light within the dent's foot that the dent leaves unexplained beyond its surroundings, as a share. */
  readonly misfit: number;
}

/** Rounds of weights, and steps in each of them. */
const REWEIGHINGS = 3;
const STEPS = 12;

/**
 * Fits a dent to the light of all lamps at once, the colour of every pixel unknown and eliminated
 * (variable projection, `golub:1973`), by Levenberg's and Marquardt's steps with Cauchy's weights.
 * Each lamp's strength and the gloss are fitted along, within their doubt.
 */
export function dentFit(window: Window, lighting: Lighting, start: Float64Array): DentFit {
  const problem = dentProblem(window, lighting, start);
  let theta = problem.start;
  let now = problem.lay(theta);
  for (let round = 0; round < REWEIGHINGS; round++) {
    if (round > 0) {
      problem.reweigh();
      now = problem.lay(theta);
    }
    [theta, now] = descend(problem, theta, now);
  }
  return summary(problem, theta, now, window);
}

function descend(
  problem: DentProblem,
  from: Float64Array,
  laid: Laid,
): readonly [Float64Array, Laid] {
  let theta = from;
  let now = laid;
  let damping = 1e-3;
  for (let step = 0; step < STEPS && damping < 1e6; step++) {
    const next = moved(theta, now, damping);
    problem.confine(next);
    const then = problem.lay(next);
    if (then.cost >= now.cost) {
      damping *= 10;
      continue;
    }
    const settled = now.cost - then.cost < 1e-6 * now.cost;
    theta = next;
    now = then;
    damping /= 10;
    if (settled) break;
  }
  if (problem.last() !== now) now = problem.lay(theta);
  return [theta, now];
}

function moved(theta: Float64Array, { normal, slope }: Laid, damping: number): Float64Array {
  const n = theta.length;
  const matrix = normal.slice();
  for (let i = 0; i < n; i++)
    matrix[i * n + i] = (normal[i * n + i] as number) * (1 + damping) + 1e-12;
  const step = slope.slice();
  solveSymmetric(matrix, step, n);
  return theta.map((value, i) => value + (step[i] as number));
}

function summary(
  problem: DentProblem,
  theta: Float64Array,
  { normal }: Laid,
  window: Window,
): DentFit {
  const n = theta.length;
  const residuals = problem.residuals();
  const scatter = scatterOf(window, residuals);
  const inflation = Math.max(scatter, 1) * clumpingOf(window, residuals, scatter);
  const inverse = inverseOfSymmetric(normal, n);
  const covariance = new Float64Array(SHAPE_SIZE * SHAPE_SIZE);
  for (let i = 0; i < SHAPE_SIZE; i++)
    for (let j = 0; j < SHAPE_SIZE; j++)
      covariance[i * SHAPE_SIZE + j] = (inverse[i * n + j] as number) * inflation;
  const shape = theta.slice(0, SHAPE_SIZE);
  const foot = 0.8 * Math.exp(shape[SHAPE.logWidth] as number);
  const inside = (i: number) =>
    Math.hypot(
      (window.x[i] as number) - (shape[SHAPE.x] as number),
      (window.y[i] as number) - (shape[SHAPE.y] as number),
    ) < foot;
  const scatterInside = scatterOf(window, residuals, inside);
  return {
    shape,
    covariance,
    inflation,
    glossShare: glossShareOf(window, theta),
    scatter,
    scatterInside,
    misfit: misfitOf(window, scatterInside, scatter, inside),
  };
}

/** By chance alone residuals inside scatter so many times more than those around. */
const CHANCE = 1.2;

function misfitOf(
  { x, light, sd }: Window,
  inside: number,
  around: number,
  chosen: (block: number) => boolean,
): number {
  const each = light.length / x.length;
  let sum = 0;
  let count = 0;
  for (let i = 0; i < light.length; i++) {
    if (!chosen(Math.floor(i / each))) continue;
    sum += ((sd[i] as number) / Math.max(light[i] as number, 1e-3)) ** 2;
    count++;
  }
  return Math.sqrt((Math.max(0, inside - CHANCE * around) * sum) / Math.max(count, 1));
}

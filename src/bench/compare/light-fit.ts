import { leastSquares } from '../../maths/index.ts';
import type { Three } from '../colour/spaces.ts';

/** Mean light of one place in two pictures, red, green and blue. */
export interface PairOfLight {
  /** From the middle of the card, in card heights. */
  readonly u: number;
  readonly v: number;
  readonly first: Three;
  readonly second: Three;
}

/** Added to light before its logarithm, so that black is no abyss. */
const DARK = 0.01;

/**
 * Light of the second picture as the first one foretells it: each channel's logarithm by a lamp that
 * falls off evenly, a gain, and the logarithms of all three channels, fitted robustly over all places, so that another lamp,
 * white balance or exposure is no difference of the print. A difference that all places share is
 * lost with it.
 */
export function foretold(pairs: readonly PairOfLight[]): readonly Three[] {
  const channels = ([0, 1, 2] as const).map((c) => {
    const rows = pairs.map(({ u, v, first }) => [
      1,
      u,
      v,
      ...first.map((light) => Math.log(light + DARK)),
    ]);
    const targets = pairs.map(({ second }) => Math.log(second[c] + DARK));
    const fit = robust(rows, targets);
    return rows.map((row) => Math.max(0, Math.exp(dot(row, fit)) - DARK));
  });
  return pairs.map((_, i) => channels.map((channel) => channel[i] as number) as unknown as Three);
}

/** Least squares with Huber's weights, ten rounds (`huber:2009`). */
function robust(
  rows: readonly (readonly number[])[],
  targets: readonly number[],
): readonly number[] {
  let weights = targets.map(() => 1);
  let fit = leastSquares(rows, targets, weights);
  for (let round = 0; round < 10; round++) {
    const off = rows.map((row, i) => Math.abs((targets[i] as number) - dot(row, fit)));
    const scale = 1.345 * 1.4826 * ([...off].sort((a, b) => a - b)[off.length >> 1] ?? 0) + 1e-9;
    weights = off.map((value) => Math.min(1, scale / Math.max(value, 1e-12)));
    fit = leastSquares(rows, targets, weights);
  }
  return fit;
}

function dot(row: readonly number[], fit: readonly number[]): number {
  return row.reduce((sum, value, i) => sum + value * (fit[i] as number), 0);
}

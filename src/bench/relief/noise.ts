import { solveSymmetric } from '../../maths/index.ts';
import type { Noise } from './lighting.ts';
import type { Samples } from './samples.ts';

/** Least noise of eight-bit pictures: rounding in the dark and in the light (common practice, no source). */
const LEAST = { floor: 3e-4, relative: 0.002, edge: 0.003 } as const;

/** Standard error of a light, given the step of light beside it. */
export function sdOf(noise: Noise, light: number, edge: number): number {
  const floor = noise.floor * noise.floor;
  const relative = (noise.relative * light) ** 2;
  return Math.sqrt(floor + relative + (noise.edge * edge) ** 2);
}

/**
 * Noise learned anew from residuals (in standard errors of `noise`) of the flat card: squares laid
 * out as a sum of a floor, a share of the light and a share of the step beside it, by reweighted
 * least squares; what lies beyond three standard errors counts as three.
 */
export function noiseOf(samples: Samples, residuals: Float64Array, noise: Noise): Noise {
  let now = noise;
  for (let round = 0; round < 3; round++) now = roundOf(samples, residuals, noise, now);
  return now;
}

function roundOf(samples: Samples, residuals: Float64Array, was: Noise, now: Noise): Noise {
  const { light, edge } = samples;
  const lamps = light.length / edge.length;
  const normal = new Float64Array(9);
  const right = new Float64Array(3);
  const row = new Float64Array(3);
  for (let i = 0; i < light.length; i++) {
    const seen = light[i] as number;
    const step = edge[Math.floor(i / lamps)] as number;
    const expected = sdOf(now, seen, step) ** 2;
    const raw = ((residuals[i] as number) * sdOf(was, seen, step)) ** 2;
    const square = Math.min((raw * lamps) / (lamps - 1), 9 * expected);
    row.set([1, seen * seen, step * step]);
    for (let a = 0; a < 3; a++) {
      right[a] = (right[a] as number) + ((row[a] as number) * square) / expected ** 2;
      for (let b = 0; b < 3; b++)
        normal[a * 3 + b] =
          (normal[a * 3 + b] as number) + ((row[a] as number) * (row[b] as number)) / expected ** 2;
    }
  }
  for (let a = 0; a < 3; a++) normal[a * 4] = (normal[a * 4] as number) * (1 + 1e-9);
  solveSymmetric(normal, right, 3);
  const root = (a: number, least: number) => Math.sqrt(Math.max(right[a] as number, least * least));
  return {
    floor: root(0, LEAST.floor),
    relative: root(1, LEAST.relative),
    edge: root(2, LEAST.edge),
    block: was.block,
  };
}

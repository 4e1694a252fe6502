import { encodedOf, linearOf } from '../light/srgb.ts';
import type { Lab } from './ciede2000.ts';
import type { Reading } from './reading.ts';
import { labOfLight, type Three } from './spaces.ts';

/**
 * What is fitted: nine entries of the matrix from the camera's light to linear sRGB, by rows; five
 * of the light field; two of the tone curve.
 */
export const SIZE = 16;

/** How far each of the field's and curve's values is believed to lie from 0. Judgement, no source. */
export const BELIEVED = [0.25, 0.25, 0.2, 0.04, 0.04, 0.15, 0.3] as const;

const MATRIX = 9;

/**
 * Lab (D50) of a reading under a correction: the curve is straightened, the light field taken out,
 * then the camera's channels are mixed (in that order, since lamps multiply what the matrix mixes
 * and the curve comes last in a camera).
 */
export function corrected(values: Float64Array, { light, at }: Pick<Reading, 'light' | 'at'>): Lab {
  const field = fieldAt(values, at);
  const [r, g, b] = light.map((one) => straightened(values, one) / field) as unknown as Three;
  const row = (i: number) =>
    (values[i] as number) * r + (values[i + 1] as number) * g + (values[i + 2] as number) * b;
  return labOfLight([row(0), row(3), row(6)]);
}

/** Light that falls on a place against the picture's centre: a ramp, a fall-off and a slight saddle. */
function fieldAt(values: Float64Array, [x, y]: Reading['at']): number {
  const value = (i: number) => values[MATRIX + i] as number;
  return Math.exp(
    value(0) * x +
      value(1) * y +
      value(2) * (x * x + y * y) +
      value(3) * (x * x - y * y) +
      value(4) * x * y,
  );
}

/** Takes a camera's curve out: a bend and an S of the coded value, both nothing at black and white. */
function straightened(values: Float64Array, light: number): number {
  const coded = encodedOf(light);
  const bend = (values[MATRIX + 5] as number) + (values[MATRIX + 6] as number) * (coded - 0.5);
  return linearOf(coded + bend * coded * (1 - coded));
}

/**
 * Standard deviations of L, a and b that the noise of a reading comes to under a correction.
 * The channels' noise is taken as independent.
 */
export function noiseOf(values: Float64Array, reading: Reading): Lab {
  const own = corrected(values, reading);
  const sums = [0, 0, 0];
  for (const channel of [0, 1, 2] as const) {
    const light = [...reading.light] as [number, number, number];
    light[channel] += reading.sd[channel];
    corrected(values, { light, at: reading.at }).forEach((value, i) => {
      sums[i] = (sums[i] as number) + (value - (own[i] as number)) ** 2;
    });
  }
  return sums.map(Math.sqrt) as unknown as Lab;
}

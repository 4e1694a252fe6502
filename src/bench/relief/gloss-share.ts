import { SHAPE_SIZE } from './dent-shape.ts';
import { LAMP_STRIDE } from './lighting.ts';
import type { Window } from './window.ts';

/**
 * Share of the gloss in the light that a window shows, 0 to 1, as a flat card would throw it back: the
 * mean over its blocks and lamps.
 *
 * @param theta the unknowns of the fit: shape, lamps, then strength and logarithm of the exponent
 */
export function glossShareOf({ x, lamps, directions, light }: Window, theta: Float64Array): number {
  const strength = theta[SHAPE_SIZE + lamps] as number;
  const exponent = Math.exp(theta[SHAPE_SIZE + lamps + 1] as number);
  let sum = 0;
  for (let i = 0; i < x.length * lamps; i++) {
    const hz = directions[i * LAMP_STRIDE + 5] as number;
    const lobe = (directions[i * LAMP_STRIDE + 6] as number) * hz ** exponent;
    const [r, g, b] = light.subarray(3 * i, 3 * i + 3) as unknown as [number, number, number];
    sum += Math.min(1, (3 * strength * lobe) / Math.max(r + g + b, 1e-6));
  }
  return sum / (x.length * lamps);
}

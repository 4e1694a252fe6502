import { lightTable } from '../light/srgb.ts';
import type { Picture } from '../picture.ts';

/** Light below which a scan tells nothing, so that black does not count as endless density. */
const DARKEST = 0.004;

/** Optical density of every sample value that a picture can hold: minus the logarithm of light. */
export function densityTable(picture: Pick<Picture, 'samples'>): Float32Array {
  return lightTable(picture).map((light) => -Math.log10((light + DARKEST) / (1 + DARKEST)));
}

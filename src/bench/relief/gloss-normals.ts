import { solveSymmetric } from '../../maths/index.ts';
import type { Lighting } from './lighting.ts';

/** Numbers by lamp in a picture's axes: direction right, down, up; half-way direction right, down, up; strength. */
export const PICTURE_STRIDE = 7;

/** A block's albedo and slopes, and the variance of a slope for a variance of one of each light. */
export interface Normal {
  albedo: number;
  right: number;
  down: number;
  spread: number;
}

const ROUNDS = 4;
/** Most that a slope changes in a round: a lobe of gloss is answered alike by its other side. */
const STEP = 0.25;

const normal = new Float64Array(9);
const pull = new Float64Array(3);
const row = new Float64Array(3);

/**
 * Betters albedo and slopes of a block by Gauss's and Newton's steps on the whole model of light,
 * gloss that leans with the surface included, from the flat on, so that the gentler of two answers is
 * found; in place. What would lean farther than 45 degrees stays as it was.
 *
 * @param lights of the block, by lamp
 */
export function withGloss(
  lights: Float64Array,
  lamps: Float64Array,
  { gloss, ambient }: Lighting,
  found: Normal,
): void {
  let [a, r, d] = [found.albedo, 0, 0];
  for (let round = 0; round < ROUNDS; round++) {
    lay(lights, lamps, gloss, ambient.value, a, r, d);
    const [before, across, along] = [normal[0] as number, normal[4] as number, normal[8] as number];
    if (!(before > 0 && across > 0 && along > 0)) return;
    solveSymmetric(normal, pull, 3);
    a += pull[0] as number;
    r += Math.min(Math.max(pull[1] as number, -STEP), STEP);
    d += Math.min(Math.max(pull[2] as number, -STEP), STEP);
    if (!(a > 0 && Math.abs(r) < 1 && Math.abs(d) < 1)) return;
  }
  lay(lights, lamps, gloss, ambient.value, a, r, d);
  const information = normal.slice();
  let spread = 0;
  for (const axis of [1, 2]) {
    pull.fill(0);
    pull[axis] = 1;
    solveSymmetric(information, pull, 3);
    spread += (pull[axis] as number) / 2;
  }
  found.albedo = a;
  found.right = r;
  found.down = d;
  found.spread = spread;
}

/** Normal matrix and pull of albedo and both slopes. */
function lay(
  lights: Float64Array,
  lamps: Float64Array,
  { strength, exponent }: Lighting['gloss'],
  ambient: number,
  a: number,
  r: number,
  d: number,
): void {
  normal.fill(0);
  pull.fill(0);
  const up = 1 / Math.sqrt(1 + r * r + d * d);
  for (let k = 0, at = 0; k < lights.length; k++, at += PICTURE_STRIDE) {
    const lr = lamps[at] as number;
    const ld = lamps[at + 1] as number;
    const lz = lamps[at + 2] as number;
    const hr = lamps[at + 3] as number;
    const hd = lamps[at + 4] as number;
    const f = lamps[at + 6] as number;
    const nl = (lz - r * lr - d * ld) * up;
    if (nl < 0.05) continue;
    const nh = Math.max(((lamps[at + 5] as number) - r * hr - d * hd) * up, 1e-6);
    const matt = f * (nl + 0.5 * lz * ambient * (1 + up));
    const shine = f * strength * nh ** exponent;
    const steep = (shine * exponent) / nh;
    row[0] = matt;
    row[1] = (-a * f * (lr + nl * r * up) - steep * (hr + nh * r * up)) * up;
    row[2] = (-a * f * (ld + nl * d * up) - steep * (hd + nh * d * up)) * up;
    const off = (lights[k] as number) - a * matt - shine;
    for (let i = 0; i < 3; i++) {
      pull[i] = (pull[i] as number) + (row[i] as number) * off;
      for (let j = 0; j < 3; j++)
        normal[i * 3 + j] = (normal[i * 3 + j] as number) + (row[i] as number) * (row[j] as number);
    }
  }
}

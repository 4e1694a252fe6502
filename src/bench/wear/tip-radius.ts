import type { CardMap } from '../geometry/card-map.ts';
import type { Picture } from '../picture.ts';
import { type BorderStrip, borderStripOf } from './border-strip.ts';
import { raysOf, tipDistance } from './round-outline.ts';

const REACH = 6;
const GUESS = 3;
const STEP_MM = 0.05;
const RADII = Array.from({ length: 56 }, (_, i) => 0.1 * i);

/**
 * Radius of the round tips in mm, 0 to 5.5, the same for all four: the arc along which the change
 * of colour square to it is greatest, summed over the tips. Misleads where the ground looks like
 * the border at most of the tips.
 */
export function tipRadiusOf(picture: Picture, map: CardMap): number {
  const rays = raysOf(map.sizeMm, GUESS, REACH, 0.3).filter(({ part }) => part % 2 === 1);
  const window = { fromMm: -2, toMm: 3, stepMm: STEP_MM };
  const strip = borderStripOf(picture, map, rays, window);
  const change = changeOf(strip, 3);
  const scores = RADII.map((radius) => scoreOf(strip, change, radius));
  const best = scores.indexOf(Math.max(...scores));
  const [before, here, after] = [best - 1, best, best + 1].map((i) => scores[i] ?? scores[best]);
  const bend = (before as number) - 2 * (here as number) + (after as number);
  const shift = bend < 0 ? ((before as number) - (after as number)) / (2 * bend) : 0;
  return (RADII[best] as number) + 0.1 * shift;
}

/** Change of colour along each column, from the `span` rows above to the `span` rows below. */
export function changeOf(strip: BorderStrip, span: number): Float32Array {
  const { rows, rays, values } = strip;
  const change = new Float32Array(rays.length * rows);
  for (const light of values)
    for (let column = 0; column < rays.length; column++) {
      const start = column * rows;
      for (let row = span; row + span <= rows; row++) {
        let sum = 0;
        for (let k = 0; k < span; k++)
          sum += (light[start + row + k] as number) - (light[start + row - 1 - k] as number);
        change[start + row] = (change[start + row] as number) + (sum / span) ** 2;
      }
    }
  for (let i = 0; i < change.length; i++) change[i] = Math.sqrt(change[i] as number) || 0;
  return change;
}

function scoreOf(strip: BorderStrip, change: Float32Array, radius: number): number {
  const tips = [0, 0, 0, 0];
  strip.rays.forEach((ray, column) => {
    const angle = Math.atan2(Math.abs(ray.inX), Math.abs(ray.inY));
    const depth = tipDistance(GUESS, REACH, angle) - tipDistance(radius, REACH, angle);
    const row = (depth - strip.firstMm) / strip.stepMm + 0.5;
    const at = Math.floor(row);
    if (at < 0 || at + 1 >= strip.rows) return;
    const [a, b] = [change[column * strip.rows + at], change[column * strip.rows + at + 1]];
    const value = (a as number) + (row - at) * ((b as number) - (a as number));
    const tip = (ray.part - 1) / 2;
    tips[tip] = (tips[tip] as number) + value;
  });
  return tips.reduce((sum, tip) => sum + Math.sqrt(tip), 0);
}

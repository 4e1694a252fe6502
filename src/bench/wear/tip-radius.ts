import { quantileOf } from '../../maths/index.ts';
import type { CardMap } from '../geometry/card-map.ts';
import type { Picture } from '../picture.ts';
import { type BorderStrip, borderStripOf } from './border-strip.ts';
import { movedTo, type SideEdge } from './moved-rays.ts';
import { raysOf, tipDistance } from './round-outline.ts';

const REACH = 6;
const GUESS = 3;
const STEP_MM = 0.05;
const RADII = Array.from({ length: 56 }, (_, i) => 0.1 * i);

/** Depths about the cut edge over which a tip's edge is held against those of its sides, mm. */
const LOOK_MM = 0.6;
/** One ray of a side in so many is looked at. */
const SIDE_RAYS = 4;

/**
 * Radius of the round tips in mm, 0 to 5.5, the same for all four: the arc along which the change of
 * colour square to it is most like that along the sides, where the cut edge is known, so that a
 * shadow or a side face beside the card draws it neither way. Misleads where the ground looks like
 * the border at most of the tips.
 *
 * @param edges how far the cut edge lies inside the given outline, as `cutEdgesOf` gives it
 */
export function tipRadiusOf(picture: Picture, map: CardMap, edges: readonly SideEdge[]): number {
  const all = movedTo(edges, raysOf(map.sizeMm, GUESS, REACH, 0.3));
  const rays = all.filter(({ part }, i) => part % 2 === 1 || i % SIDE_RAYS === 0);
  const window = { fromMm: -2, toMm: 3, stepMm: STEP_MM };
  const strip = borderStripOf(picture, map, rays, window);
  const likeness = likenessOf(strip, changeOf(strip, 3));
  const scores = RADII.map((radius) => scoreOf(strip, likeness, radius));
  const best = peakOf(scores);
  const [before, here, after] = [best - 1, best, best + 1].map((i) => scores[i] ?? scores[best]);
  const bend = (before as number) - 2 * (here as number) + (after as number);
  const shift = bend < 0 ? ((before as number) - (after as number)) / (2 * bend) : 0;
  return (RADII[best] as number) + 0.1 * shift;
}

/**
 * The highest peak, a radius counting less the larger it is: rounder tips than most cards have are
 * more often the inner rim of wear. Judgement, no source.
 */
function peakOf(scores: readonly number[]): number {
  const usual = (radius: number) => Math.exp(-0.5 * (Math.max(0, radius - 3.5) / 0.8) ** 2);
  const weighed = scores.map((score, i) => score * usual(RADII[i] as number));
  let best = weighed.indexOf(Math.max(...weighed));
  while ((scores[best + 1] ?? 0) > (scores[best] as number)) best++;
  while ((scores[best - 1] ?? 0) > (scores[best] as number)) best--;
  return best;
}

/** How much the change of colour about each place of the tips is like that about the cut edge of the two sides. */
function likenessOf({ rays, rows, firstMm, stepMm }: BorderStrip, change: Float32Array) {
  const reach = Math.round(LOOK_MM / stepMm);
  const edge = Math.round(-firstMm / stepMm);
  const sides = [0, 2, 4, 6].map((part) => {
    const columns = rays.flatMap((ray, column) => (ray.part === part ? [column] : []));
    return Array.from({ length: 2 * reach + 1 }, (_, k) =>
      quantileOf(
        columns.map((column) => change[column * rows + edge + k - reach] as number),
        0.5,
      ),
    );
  });
  const usual = sides.map((side, i) => {
    const both = side.map((value, k) => value + (sides[(i + 1) % 4]?.[k] as number));
    const mean = both.reduce((sum, value) => sum + value, 0) / both.length;
    const long = Math.hypot(...both.map((value) => value - mean)) || 1;
    return both.map((value) => (value - mean) / long);
  });
  const likeness = new Float32Array(change.length);
  rays.forEach(({ part }, column) => {
    if (part % 2 === 0) return;
    const profile = usual[(part - 1) / 2] as readonly number[];
    for (let row = reach; row + reach < rows; row++) {
      let sum = 0;
      for (let k = 0; k < profile.length; k++)
        sum += (profile[k] as number) * (change[column * rows + row + k - reach] as number);
      likeness[column * rows + row] = sum;
    }
  });
  return likeness;
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

function scoreOf(strip: BorderStrip, likeness: Float32Array, radius: number): number {
  const tips = [0, 0, 0, 0];
  strip.rays.forEach((ray, column) => {
    if (ray.part % 2 === 0) return;
    const angle = Math.atan2(Math.abs(ray.inX), Math.abs(ray.inY));
    const depth = tipDistance(GUESS, REACH, angle) - tipDistance(radius, REACH, angle);
    const row = (depth - strip.firstMm) / strip.stepMm;
    const at = Math.floor(row);
    if (at < 0 || at + 1 >= strip.rows) return;
    const [a, b] = [likeness[column * strip.rows + at], likeness[column * strip.rows + at + 1]];
    const value = (a as number) + (row - at) * ((b as number) - (a as number));
    const tip = (ray.part - 1) / 2;
    tips[tip] = (tips[tip] as number) + value;
  });
  return tips.reduce((sum, tip) => sum + Math.sqrt(Math.max(0, tip)), 0);
}

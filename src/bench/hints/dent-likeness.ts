import type { CardMap } from '../geometry/card-map.ts';
import type { PointMm } from '../geometry/points.ts';
import type { Plane } from '../picture.ts';
import { viewPointOf } from '../rectify/view.ts';
import type { Lobes } from './lobes.ts';
import { depthInside } from './on-card.ts';
import type { RelitCard } from './relit-card.ts';

/** A place that looks like a hollow under a low lamp, and what tells it from print and lines. */
export interface DentLikeness {
  readonly centreMm: PointMm;
  readonly widthMm: number;
  /** Angle on the card, radians, from the dark lobe through the centre to the light one: a hollow's points away from the lamp. */
  readonly angle: number;
  /** Strength in standard deviations of the card, and of the ring around. */
  readonly strength: number;
  readonly around: number;
  /** Correlation with the slopes of a round bowl. */
  readonly fit: number;
  /** Strength on both sides in the worst direction, as a share of that in the middle: a line goes on. */
  readonly goesOn: number;
  /** Standard deviation of the logarithm of the print beneath. */
  readonly printed: number;
}

/** Strength from which a place is looked at. */
const LEAST = 4.5;
/** Each width looked for is so many times the one before. */
const STEP = 1.5;
/** Card beside the cut edge that is left to the wear of edges, mm. */
const RIM_MM = 1.2;

/** Places that look like hollows, none within another, the strongest first. */
export function dentLikenessesOf(
  card: RelitCard,
  even: Plane,
  scales: readonly Lobes[],
  { sizeMm }: CardMap,
): readonly DentLikeness[] {
  const peaks = scales
    .flatMap((lobes) => peaksOf(lobes, even).map((at) => ({ lobes, ...at })))
    .sort((a, b) => b.strength - a.strength);
  const kept: DentLikeness[] = [];
  for (const { lobes, x, y, strength } of peaks) {
    const centreMm = viewPointOf(card.view, [x, y]);
    if (depthInside(centreMm, sizeMm) < RIM_MM + lobes.widthMm / 2) continue;
    const apart = ({ centreMm: [a, b], widthMm }: DentLikeness) =>
      Math.hypot(a - centreMm[0], b - centreMm[1]) > 1.2 * Math.max(widthMm, lobes.widthMm);
    if (!kept.every(apart)) continue;
    kept.push({
      centreMm,
      widthMm: widthAt(scales, y * even.width + x),
      strength,
      ...looksOf(card, even, lobes, x, y),
    });
  }
  return kept;
}

/** The width whose filter answers most at a place, between those that were tried by a parabola. */
function widthAt(scales: readonly Lobes[], i: number): number {
  const sizes = scales.map(({ across, down }) =>
    Math.hypot(across[i] as number, down[i] as number),
  );
  const best = sizes.indexOf(Math.max(...sizes));
  const [before, here, after] = [best - 1, best, best + 1].map((k) => sizes[k]);
  const { widthMm } = scales[best] as Lobes;
  if (before === undefined || here === undefined || after === undefined) return widthMm;
  const offset = (before - after) / (2 * (before - 2 * here + after));
  return widthMm * STEP ** Math.max(-0.5, Math.min(0.5, offset));
}

function peaksOf({ across, down, sd }: Lobes, { width, height }: Plane) {
  const peaks: { x: number; y: number; strength: number }[] = [];
  const size = (i: number) => (across[i] as number) ** 2 + (down[i] as number) ** 2;
  const least = (LEAST * sd) ** 2;
  for (let y = 2; y < height - 2; y++)
    for (let x = 2; x < width - 2; x++) {
      const i = y * width + x;
      const here = size(i);
      if (here < least) continue;
      let top = true;
      for (let dy = -2; dy <= 2 && top; dy++)
        for (let dx = -2; dx <= 2; dx++)
          if (size(i + dy * width + dx) > here) {
            top = false;
            break;
          }
      if (top) peaks.push({ x, y, strength: Math.sqrt(here) / sd });
    }
  return peaks;
}

const WAYS = Array.from({ length: 8 }, (_, k) => [
  Math.cos((k * Math.PI) / 8),
  Math.sin((k * Math.PI) / 8),
]) as readonly (readonly [number, number])[];

function looksOf(card: RelitCard, even: Plane, lobes: Lobes, x: number, y: number) {
  const { across, down, sigma, sd } = lobes;
  const { width, height } = even;
  const i = y * width + x;
  const [vx, vy] = [across[i] as number, down[i] as number];
  const size = Math.hypot(vx, vy);
  const at = (u: number, v: number) => {
    const [px, py] = [Math.round(x + u), Math.round(y + v)];
    if (px < 0 || py < 0 || px >= width || py >= height) return 0;
    return Math.hypot(across[py * width + px] as number, down[py * width + px] as number);
  };
  const far = 3.8 * sigma;
  const goesOn =
    Math.max(...WAYS.map(([c, s]) => Math.min(at(far * c, far * s), at(-far * c, -far * s)))) /
    size;
  let ring = 0;
  for (const reach of [5, 6.5, 8])
    for (const [c, s] of WAYS)
      for (const turn of [1, -1])
        ring += at(turn * reach * sigma * c, turn * reach * sigma * s) ** 2;
  const around = size / Math.max(Math.sqrt(ring / 48 / 2), sd);
  return {
    angle: Math.atan2(vy, vx),
    around,
    goesOn,
    ...fitOf(card, even, lobes, x, y, [vx / size, vy / size]),
  };
}

function fitOf(
  { soft }: RelitCard,
  even: Plane,
  { sigma }: Lobes,
  x: number,
  y: number,
  [cx, cy]: readonly [number, number],
) {
  const { width, height } = even;
  const reach = Math.ceil(3 * sigma);
  let [tt, tv, vv, n, s1, s2] = [1e-9, 0, 1e-9, 0, 0, 0];
  for (let dy = -reach; dy <= reach; dy++)
    for (let dx = -reach; dx <= reach; dx++) {
      const [px, py] = [x + dx, y + dy];
      if (dx * dx + dy * dy > reach * reach || px < 0 || py < 0 || px >= width || py >= height)
        continue;
      const j = py * width + px;
      const u = (dx * cx + dy * cy) / sigma;
      const template = u * Math.exp(-(dx * dx + dy * dy) / (2 * sigma * sigma) + 0.5);
      const value = even.values[j] as number;
      tt += template * template;
      tv += template * value;
      vv += value * value;
      const print = Math.log((soft.values[j] as number) + 0.01);
      n++;
      s1 += print;
      s2 += print * print;
    }
  return {
    fit: tv / Math.sqrt(tt * vv),
    printed: Math.sqrt(Math.max(0, s2 / n - (s1 / n) ** 2)),
  };
}

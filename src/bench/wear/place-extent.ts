import type { BoxMm, DefectKind } from '../defects.ts';
import type { PointMm } from '../geometry/points.ts';
import type { BorderStrip } from './border-strip.ts';
import { columnOf } from './place-features.ts';
import type { Excess, WornPlace } from './worn-places.ts';

/** Where a worn place lies and how large it is. */
export interface PlaceExtent {
  readonly kind: DefectKind;
  readonly areaMm2: number;
  readonly lengthMm: number;
  readonly boxMm: BoxMm;
  readonly centreMm: PointMm;
  readonly polygonMm: readonly PointMm[];
}

/**
 * The extent of a place out to half its plateau of whiteness, so that blur moves its limits
 * neither way, and out to the cut edge, where ground mixes in.
 */
export function extentOf(
  strip: BorderStrip,
  excess: Excess,
  place: WornPlace,
  plateau: number,
): PlaceExtent | null {
  return extentAlong(strip, place.first, depthsOf(strip, excess, place, plateau / 2));
}

/** The extent of a place from the cut edge down to a depth, mm, in each column from `first` on. */
export function extentAlong(
  strip: BorderStrip,
  first: number,
  depths: readonly number[],
): PlaceExtent | null {
  const reached = depths.flatMap((depth, k) => (depth > 0 ? [k] : []));
  if (reached.length === 0) return null;
  const [from, to] = [reached[0] as number, reached.at(-1) as number];
  const outer: PointMm[] = [];
  const inner: PointMm[] = [];
  let [area, tipArea, length, sumX, sumY] = [0, 0, 0, 0, 0];
  for (let k = from; k <= to; k++) {
    const ray = strip.rays[columnOf(strip, first + k)] as (typeof strip.rays)[number];
    const depth = depths[k] as number;
    const piece = depth * (ray.width - (ray.narrows * depth) / 2);
    area += piece;
    length += ray.width;
    if (ray.part % 2 === 1) tipArea += piece;
    sumX += piece * (ray.x + (depth / 2) * ray.inX);
    sumY += piece * (ray.y + (depth / 2) * ray.inY);
    outer.push([ray.x, ray.y]);
    inner.push([ray.x + depth * ray.inX, ray.y + depth * ray.inY]);
  }
  const polygonMm = [...outer, ...inner.reverse()];
  return {
    kind: tipArea > area / 2 ? 'corner-wear' : 'edge-wear',
    areaMm2: area,
    lengthMm: length,
    boxMm: boxOf(polygonMm),
    centreMm: [sumX / area, sumY / area],
    polygonMm,
  };
}

/** Depth to which each column of the place is worn, mm, with the share of a row at its limit. */
function depthsOf(
  { rows, firstMm, stepMm, ...strip }: BorderStrip,
  { share }: Excess,
  place: WornPlace,
  half: number,
): readonly number[] {
  const depths = new Array<number>(place.last - place.first + 1).fill(0);
  for (const cell of place.cells) {
    if ((share[cell] as number) < half) continue;
    const column = Math.floor(cell / rows);
    const count = strip.rays.length;
    const k = (((column - place.first) % count) + count) % count;
    const [here, below] = [share[cell] as number, share[cell + 1] as number];
    const beyond = below < half ? (here - half) / (here - below) : 0.5;
    depths[k] = Math.max(depths[k] as number, firstMm + ((cell % rows) + beyond) * stepMm);
  }
  return depths;
}

/** Left, top, right and bottom of points. */
export function boxOf(points: readonly PointMm[]): BoxMm {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

import type { PointPx } from '../geometry/points.ts';
import { lightAt } from '../light/light-at.ts';
import type { Picture } from '../picture.ts';
import { type Figure, seenCorners, seenPoint } from './figure.ts';

/** How the tips of a fine figure look at full size. */
export interface Arcs {
  /** Radius, in millimetres, at which the four tips together are roundest. */
  readonly radiusMm: number;
  /** Of each tip: edge along the arc, as a share of that across its sides, −1 to 1.5. */
  readonly arc: Float64Array;
  /** Of each tip: edge along the straight prolongation of its sides, likewise. */
  readonly straight: Float64Array;
}

const LEAST_RADIUS = 1.4;
const RADIUS_STEP = 0.3;
const RADII = 12;
const ON_ARC = 13;
const ON_SIDES = 12;

/** Millimetres, and pixels at least, to each side of an edge at which its colours are taken. */
const APART_MM = 0.22;
const APART_PX = 1.3;

/** Square of the contrast, in light, that counts half. */
const HALF_CONTRAST = 0.012 ** 2;

/** Edges along the round tips of a figure and along the straight prolongations of its sides. */
export function arcsOf(
  picture: Picture,
  figure: Figure,
  perMm: readonly [number, number, number, number],
): Arcs {
  const sum = new Float64Array(RADII);
  const arcs = new Float64Array(4 * RADII);
  const straight = new Float64Array(4);
  const seen = seenCorners(figure);
  for (let i = 0; i < 4; i++) {
    const tip = tipOf(figure, seen, i, perMm);
    const contrast = contrastOf(picture, tip);
    straight[i] = meanAlong(picture, tip, contrast, straightPlaces);
    for (let r = 0; r < RADII; r++) {
      const radius = LEAST_RADIUS + r * RADIUS_STEP;
      const share = meanAlong(picture, tip, contrast, (k) => arcPlace(radius, k));
      arcs[i * RADII + r] = share;
      sum[r] = (sum[r] as number) + Math.min(1, Math.max(-0.5, share));
    }
  }
  const best = sum.indexOf(Math.max(...sum));
  return {
    radiusMm: LEAST_RADIUS + best * RADIUS_STEP,
    arc: straight.map((_, i) => arcs[i * RADII + best] as number),
    straight,
  };
}

/** A corner with one millimetre along each of its two sides, in pixels. */
interface TipPx {
  readonly at: PointPx;
  readonly a: PointPx;
  readonly b: PointPx;
}

function tipOf(
  figure: Figure,
  seen: readonly PointPx[],
  i: number,
  perMm: readonly [number, number, number, number],
): TipPx {
  const at = seen[i] as PointPx;
  const before = (i + 3) % 4;
  const along = (point: PointPx, scale: number): PointPx => {
    const length = Math.hypot(point[0] - at[0], point[1] - at[1]);
    return [((point[0] - at[0]) / length) * scale, ((point[1] - at[1]) / length) * scale];
  };
  return {
    at,
    a: along(seenPoint(figure, i, 0.06), perMm[i] as number),
    b: along(seenPoint(figure, before, 0.94), perMm[before] as number),
  };
}

/** A place in millimetres along both sides, with the direction outward across the edge there. */
type Place = readonly [a: number, b: number, na: number, nb: number];

function arcPlace(radius: number, k: number): Place {
  const angle = (Math.PI / 2) * (0.15 + (0.7 * (k + 0.5)) / ON_ARC);
  const ca = Math.cos(angle);
  const sa = Math.sin(angle);
  return [radius * (1 - ca), radius * (1 - sa), -ca, -sa];
}

/** Places on the straight prolongation, near the corner, by turns on one side and the other. */
function straightPlaces(k: number): Place {
  const t = 0.15 + (0.75 * (k + 0.5)) / ON_ARC;
  return k % 2 === 0 ? [t, 0, 0, -1] : [0, t, -1, 0];
}

const inside = new Float64Array(3);
const outside = new Float64Array(3);

/** Mean change of colour outward across the sides beyond a tip, 4 to 12 mm from the corner. */
function contrastOf(picture: Picture, tip: TipPx): Float64Array {
  const mean = new Float64Array(3);
  for (let k = 0; k < ON_SIDES; k++) {
    const t = 4.5 + (7 * (k >> 1)) / ON_SIDES;
    change(picture, tip, k % 2 === 0 ? [t, 0, 0, -1] : [0, t, -1, 0]);
    for (let c = 0; c < 3; c++)
      mean[c] = (mean[c] as number) + ((outside[c] as number) - (inside[c] as number)) / ON_SIDES;
  }
  return mean;
}

/** Mean of the changes at some places, as a share of the contrast; little where there is little. */
function meanAlong(
  picture: Picture,
  tip: TipPx,
  contrast: Float64Array,
  placeAt: (k: number) => Place,
): number {
  let dot = 0;
  for (let k = 0; k < ON_ARC; k++) {
    change(picture, tip, placeAt(k));
    for (let c = 0; c < 3; c++)
      dot += ((outside[c] as number) - (inside[c] as number)) * (contrast[c] as number);
  }
  const square =
    (contrast[0] as number) ** 2 + (contrast[1] as number) ** 2 + (contrast[2] as number) ** 2;
  return Math.min(1.5, Math.max(-1, dot / ON_ARC / (square + HALF_CONTRAST)));
}

/** Puts the colours just outside and just inside of a place into `outside` and `inside`. */
function change(picture: Picture, { at, a, b }: TipPx, [u, v, nu, nv]: Place): void {
  const x = at[0] + u * a[0] + v * b[0];
  const y = at[1] + u * a[1] + v * b[1];
  const nx = nu * a[0] + nv * b[0];
  const ny = nu * a[1] + nv * b[1];
  const apart = Math.max(APART_MM, APART_PX / Math.hypot(nx, ny));
  light(picture, x + apart * nx, y + apart * ny, outside);
  light(picture, x - apart * nx, y - apart * ny, inside);
}

/** Square root of the light at a point between the pixels. */
function light(picture: Picture, x: number, y: number, into: Float64Array): void {
  lightAt(picture, x, y, into);
  for (let c = 0; c < 3; c++) into[c] = Math.sqrt(into[c] as number);
}

import { medianOf } from '../../maths/index.ts';
import type { PointMm } from '../geometry/points.ts';

/** A shift that varies evenly over the card: shift = a + b · (x − cx) + c · (y − cy), for x and y. */
export interface EvenShift {
  readonly centreMm: PointMm;
  readonly x: readonly [a: number, b: number, c: number];
  readonly y: readonly [a: number, b: number, c: number];
}

/** A shift seen at a place. */
export interface ShiftAt {
  readonly at: PointMm;
  readonly shift: PointMm;
  readonly weight: number;
  /** How firmly each coordinate is known, 0 to 1; a coordinate that is not counts for nothing. */
  readonly held: readonly [x: number, y: number];
}

/** Half the width of Tukey's weights, in robust standard deviations (`huber:2009`). */
const TUKEY = 4.685;

/**
 * The even shift that most places agree on: least squares with Tukey's biweight, its scale from the
 * median distance. Returns the robust spread of one coordinate, in millimetres, too.
 * @throws RangeError for fewer than six places
 */
export function evenShiftOf(
  places: readonly ShiftAt[],
  centreMm: PointMm,
): { readonly shift: EvenShift; readonly spreadMm: number } {
  if (places.length < 6) throw new RangeError(`Six places are wanted, found ${places.length}.`);
  let weights = places.map(({ weight }) => weight);
  const middle = [0, 1].map((k) => medianOf(places.map(({ shift }) => shift[k as 0 | 1])));
  let shift: EvenShift = {
    centreMm,
    x: [middle[0] as number, 0, 0],
    y: [middle[1] as number, 0, 0],
  };
  let spreadMm = 0;
  for (let round = 0; round < 12; round++) {
    const away = places.map((place) => distance(shift, place));
    // The median length of a normal error in the plane is 1.1774 of one coordinate's deviation.
    spreadMm = Math.max(medianOf(away) / 1.1774, 1e-6);
    weights = places.map(({ weight }, i) => weight * biweight((away[i] as number) / spreadMm));
    shift = {
      centreMm,
      x: planeOf(places, weights, centreMm, 0),
      y: planeOf(places, weights, centreMm, 1),
    };
  }
  return { shift, spreadMm };
}

/** The shift at a place. */
export function shiftAt({ centreMm: [cx, cy], x, y }: EvenShift, [px, py]: PointMm): PointMm {
  const [u, v] = [px - cx, py - cy];
  return [x[0] + x[1] * u + x[2] * v, y[0] + y[1] * u + y[2] * v];
}

/** How far a seen shift lies from the even one, in millimetres, as far as it is known. */
export function distance(even: EvenShift, { at, shift, held }: ShiftAt): number {
  const [dx, dy] = shiftAt(even, at);
  return Math.hypot(held[0] * (shift[0] - dx), held[1] * (shift[1] - dy));
}

function biweight(u: number): number {
  const share = u / TUKEY;
  return share >= 1 ? 0 : (1 - share * share) ** 2;
}

function planeOf(
  places: readonly ShiftAt[],
  weights: readonly number[],
  [cx, cy]: PointMm,
  k: 0 | 1,
): readonly [number, number, number] {
  let [s, su, sv, suu, suv, svv, t, tu, tv] = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  places.forEach(({ at, shift, held }, i) => {
    const w = (weights[i] as number) * held[k];
    const [u, v] = [at[0] - cx, at[1] - cy];
    s += w;
    su += w * u;
    sv += w * v;
    suu += w * u * u;
    suv += w * u * v;
    svv += w * v * v;
    t += w * shift[k];
    tu += w * u * shift[k];
    tv += w * v * shift[k];
  });
  // Cramer's rule for the three normal equations.
  const det = s * (suu * svv - suv * suv) - su * (su * svv - suv * sv) + sv * (su * suv - suu * sv);
  if (Math.abs(det) < 1e-12) return [s > 0 ? t / s : 0, 0, 0];
  const a = t * (suu * svv - suv * suv) - su * (tu * svv - suv * tv) + sv * (tu * suv - suu * tv);
  const b = s * (tu * svv - suv * tv) - t * (su * svv - suv * sv) + sv * (su * tv - tu * sv);
  const c = s * (suu * tv - tu * suv) - su * (su * tv - tu * sv) + t * (su * suv - suu * sv);
  return [a / det, b / det, c / det];
}

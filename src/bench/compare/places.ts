import type { PointMm } from '../geometry/points.ts';
import { type View, viewPointOf } from '../rectify/view.ts';
import { boxMeans } from './planes.ts';
import { PX_PER_MM } from './registration.ts';

/** A place of a print, in pixels of a view and in card millimetres. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly atMm: PointMm;
}

/** A difference of two prints by places, and where it is largest. */
export interface OverPlaces {
  /** Root of the mean square over all places. */
  readonly rms: number;
  readonly worst: { readonly atMm: PointMm; readonly value: number };
}

/** Places 4 mm apart, 4 mm from the cut edge at least, so that wear of the rim is none of them. */
export function placesOf(view: View): readonly Place[] {
  const step = 4 * PX_PER_MM;
  const places: Place[] = [];
  for (let y = step; y <= view.height - step; y += step)
    for (let x = step; x <= view.width - step; x += step)
      places.push({ x, y, atMm: viewPointOf(view, [x, y]) });
  return places;
}

/** Means of red, green and blue light about each pixel of a view. */
export type Means = readonly [Float32Array, Float32Array, Float32Array];

/** Means over 2 mm of each channel. */
export function meansOf(light: Float32Array, { width, height }: View): Means {
  return [0, 1, 2].map((c) => {
    const values = Float32Array.from(
      { length: width * height },
      (_, i) => light[3 * i + c] as number,
    );
    return boxMeans({ width, height, values }, PX_PER_MM);
  }) as unknown as Means;
}

/** The differences at places, summed up. */
export function over<T extends { readonly atMm: PointMm }>(
  places: readonly T[],
  differenceAt: (place: T, k: number) => number,
): OverPlaces {
  let squares = 0;
  let worst: OverPlaces['worst'] = { atMm: [0, 0], value: -1 };
  places.forEach((place, k) => {
    const value = differenceAt(place, k);
    squares += value * value;
    if (value > worst.value) worst = { atMm: place.atMm, value };
  });
  return { rms: Math.sqrt(squares / Math.max(1, places.length)), worst };
}

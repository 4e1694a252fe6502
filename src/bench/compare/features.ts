import { ciede2000 } from '../colour/ciede2000.ts';
import { labOfLight, type Three } from '../colour/spaces.ts';
import type { PointMm, SizeMm } from '../geometry/points.ts';
import type { Plane } from '../picture.ts';
import { cardViewOf, type View } from '../rectify/view.ts';
import { type Charted, chartedOver } from './charted.ts';
import { foretold, type PairOfLight } from './light-fit.ts';
import { type Means, meansOf, type OverPlaces, over, placesOf } from './places.ts';
import { bandOf } from './planes.ts';
import {
  detailOf,
  lightOf,
  movedMap,
  PX_PER_MM,
  type Registration,
  registered,
  registeredPlanes,
} from './registration.ts';
import type { Seen } from './seen.ts';
import { strokeRatio } from './strokes.ts';
import { correlation, tileShift } from './tile-shift.ts';

/** How the second of two registered prints differs from the first. */
export interface Features {
  readonly registration: Registration;
  /** Colour differences that no lamp explains, in CIEDE2000. */
  readonly colour: OverPlaces;
  /** Colour differences as charts beside both cards correct them; null where one has none. */
  readonly charted: Charted | null;
  /** Difference of detail (lines and text), 0 the same to 1 opposite. */
  readonly detail: OverPlaces;
  /** Logarithm of how much wider the second's dark strokes are; null where there are too few. */
  readonly strokes: number | null;
  /** Logarithm of how much sharper the second shows the finest lines. */
  readonly sharpness: number;
  /** Where red and blue lie from green's place in the second, from their like in the first, in mm. */
  readonly plates: { readonly red: PointMm; readonly blue: PointMm; readonly sdMm: number } | null;
}

/** Compares two faces; null where their prints do not lie on each other. */
export function featuresOf(a: Seen, b: Seen, sizeMm: SizeMm): Features | null {
  const registration = registered(a, b, sizeMm);
  if (!registration) return null;
  const view = cardViewOf(sizeMm, PX_PER_MM, 0);
  const moved = { ...b, map: movedMap(b.map, sizeMm, registration.shift) };
  const first = lightOf(a, sizeMm, view);
  const second = lightOf(moved, sizeMm, view);
  return {
    registration,
    colour: colourOver(first, second, view),
    charted: chartedOver([a, first], [moved, second], view),
    detail: detailOver(detailOf(first, view), detailOf(second, view), view),
    strokes: strokeRatio(greyOf(first, view), greyOf(second, view), 4 * PX_PER_MM),
    sharpness: sharpnessOf(second, view) - sharpnessOf(first, view),
    plates: platesOf(first, second, view),
  };
}

function colourOver(first: Float32Array, second: Float32Array, view: View): OverPlaces {
  const [a, b] = [first, second].map((light) => meansOf(light, view)) as [Means, Means];
  const places = placesOf(view);
  const pairs = places.map(({ x, y }): PairOfLight => {
    const i = y * view.width + x;
    return {
      u: x / view.height - 0.5 * (view.width / view.height),
      v: y / view.height - 0.5,
      first: a.map((channel) => channel[i] as number) as unknown as PairOfLight['first'],
      second: b.map((channel) => channel[i] as number) as unknown as PairOfLight['second'],
    };
  });
  const expected = foretold(pairs);
  return over(places, (_, k) =>
    ciede2000(labOfLight(expected[k] as Three), labOfLight((pairs[k] as PairOfLight).second)),
  );
}

function detailOver(first: Plane, second: Plane, view: View): OverPlaces {
  const half = 2 * PX_PER_MM;
  const places = placesOf(view).filter(({ x, y }) => hasTexture(first, x, y, half));
  return over(places, ({ x, y }) => {
    const found = tileShift(first, second, { x, y, half: half - 3 }, [0, 0], 2);
    const ncc = found?.ncc ?? correlation(first, second, { x, y, half: half - 3 }, 0, 0);
    return Math.sqrt((1 - ncc) / 2);
  });
}

/** Whether a place has lines at all: a deviation of 3 % of its light. */
function hasTexture({ width, values }: Plane, x: number, y: number, half: number): boolean {
  let [sum, squares] = [0, 0];
  for (let v = -half; v < half; v++)
    for (let u = -half; u < half; u++) {
      const value = values[(y + v) * width + x + u] ?? 0;
      sum += value;
      squares += value * value;
    }
  const n = 4 * half * half;
  return squares / n - (sum / n) ** 2 > 0.03 ** 2;
}

/** Logarithm of the energy of the finest lines over that of lines of half a millimetre. */
function sharpnessOf(light: Float32Array, view: View): number {
  const { width, height, values } = greyOf(light, view);
  const plane = { width, height, values: values.map((grey) => Math.log(grey + 0.01)) };
  return 0.5 * Math.log(energy(bandOf(plane, 0, 1)) / energy(bandOf(plane, 1, 4)));
}

/** The mean of the three channels. */
function greyOf(light: Float32Array, { width, height }: View): Plane {
  const values = Float32Array.from(
    { length: width * height },
    (_, i) =>
      ((light[3 * i] as number) + (light[3 * i + 1] as number) + (light[3 * i + 2] as number)) / 3,
  );
  return { width, height, values };
}

function energy({ width, height, values }: Plane): number {
  const rim = 4 * PX_PER_MM;
  let sum = 1e-12;
  for (let y = rim; y < height - rim; y++)
    for (let x = rim; x < width - rim; x++) sum += (values[y * width + x] as number) ** 2;
  return sum;
}

function platesOf(first: Float32Array, second: Float32Array, view: View): Features['plates'] {
  const shifts = ([0, 1, 2] as const).map((channel) =>
    registeredPlanes(
      detailOf(first, view, channel),
      detailOf(second, view, channel),
      view,
      [0, 0],
      2,
    ),
  );
  const [red, green, blue] = shifts;
  if (!red || !green || !blue) return null;
  const from = (one: Registration): PointMm => [
    one.shift.x[0] - green.shift.x[0],
    one.shift.y[0] - green.shift.y[0],
  ];
  const sdMm = Math.hypot(Math.max(red.sdMm, blue.sdMm), green.sdMm);
  return { red: from(red), blue: from(blue), sdMm };
}

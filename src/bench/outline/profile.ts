import { lightAt } from '../light/light-at.ts';
import type { Picture } from '../picture.ts';
import { type Figure, seenPoint } from './figure.ts';

/** Mean light across one side of a figure, from inside outwards. */
export interface Profile {
  /** Pixels outward of the side, evenly spaced. */
  readonly off: Float64Array;
  /** Linear light of three channels at each, interleaved. */
  readonly light: Float64Array;
}

/** Places along a side, of which the middle half by light is averaged at each distance. */
const PLACES = 96;
const STEP = 0.5;

const point = new Float64Array(3);
const taken = [0, 1, 2].map(() => new Float64Array(PLACES));

/**
 * The light across a side that most of it shares: at every distance the mean of the middle half of
 * the places along it, so that what covers a quarter of the side does not count.
 */
export function profileOf(
  picture: Picture,
  figure: Figure,
  side: number,
  span: { readonly inside: number; readonly outside: number; readonly margin: number },
): Profile {
  const count = Math.round((span.inside + span.outside) / STEP) + 1;
  const off = Float64Array.from({ length: count }, (_, i) => i * STEP - span.inside);
  const places = Array.from({ length: PLACES }, (_, k) =>
    placeAt(figure, side, span.margin + (1 - 2 * span.margin) * ((k + 0.5) / PLACES)),
  );
  const light = new Float64Array(3 * count);
  for (let i = 0; i < count; i++) {
    places.forEach(([x, y, nx, ny], k) => {
      take(picture, x + (off[i] as number) * nx, y + (off[i] as number) * ny, k);
    });
    for (let c = 0; c < 3; c++) light[3 * i + c] = middleMean(taken[c] as Float64Array);
  }
  return { off, light };
}

/** A place on a side with its normal outward. */
function placeAt(figure: Figure, side: number, t: number): [number, number, number, number] {
  const [x, y] = seenPoint(figure, side, t);
  const [ax, ay] = seenPoint(figure, side, t - 0.01);
  const [bx, by] = seenPoint(figure, side, t + 0.01);
  const length = Math.hypot(bx - ax, by - ay);
  return [x, y, (by - ay) / length, -(bx - ax) / length];
}

function take(picture: Picture, x: number, y: number, k: number): void {
  lightAt(picture, x, y, point);
  for (let c = 0; c < 3; c++) (taken[c] as Float64Array)[k] = point[c] as number;
}

function middleMean(values: Float64Array): number {
  values.sort();
  let sum = 0;
  for (let i = PLACES / 4; i < (3 * PLACES) / 4; i++) sum += values[i] as number;
  return sum / (PLACES / 2);
}

import { type CardMap, cardMapOf, pixelOf } from '../geometry/card-map.ts';
import type { Corners, PointMm, SizeMm } from '../geometry/points.ts';
import type { Plane } from '../picture.ts';
import { coloursView } from '../rectify/rectified.ts';
import { cardViewOf, type View, viewPointOf } from '../rectify/view.ts';
import { distance, type EvenShift, evenShiftOf, type ShiftAt, shiftAt } from './affine.ts';
import { bandOf } from './planes.ts';
import type { Seen } from './seen.ts';
import { correlation, type Square, tileShift } from './tile-shift.ts';

/** Pixels a millimetre at which prints are laid on each other. */
export const PX_PER_MM = 8;

/** How the print of one picture lies on the print of another. */
export interface Registration {
  /** Where the second print lies from the first one's place, in millimetres of the card. */
  readonly shift: EvenShift;
  /** Standard error of the shift at the centre, one coordinate. */
  readonly sdMm: number;
  /** Places with texture, and the share of them that agree within 0.2 mm. */
  readonly places: number;
  readonly agree: number;
}

/** Fewer places, or a smaller share that agrees, and the two are not one design. Judgement, no source. */
const LEAST = { places: 12, agree: 0.5, withinMm: 0.2 };

/**
 * Lays the print of `b` on that of `a`: normalised correlation of squares of 5 mm, first coarsely
 * within 2 mm, then each within half a millimetre, and the even shift that most of them agree on.
 * Null where the two prints do not lie on each other.
 */
export function registered(a: Seen, b: Seen, sizeMm: SizeMm): Registration | null {
  const view = cardViewOf(sizeMm, PX_PER_MM, 0);
  const [first, second] = [a, b].map((seen) => detailOf(lightOf(seen, sizeMm, view), view));
  const from = coarseShift(first as Plane, second as Plane);
  return registeredPlanes(first as Plane, second as Plane, view, from, 4);
}

/** The same for two planes of detail over one view, each square sought `reach` pixels around `from`. */
export function registeredPlanes(
  first: Plane,
  second: Plane,
  view: View,
  from: readonly [number, number],
  reach: number,
): Registration | null {
  const places = squaresOf(view).flatMap(({ square, at }): readonly ShiftAt[] => {
    const found = tileShift(first, second, square, from, reach);
    if (!found || found.ncc < 0.5) return [];
    const { dx, dy, ncc, held } = found;
    return [{ at, shift: [dx / PX_PER_MM, dy / PX_PER_MM], weight: ncc ** 2, held }];
  });
  if (places.length < LEAST.places) return null;
  const { shift, spreadMm } = evenShiftOf(places, middleOf(view));
  const agreeing = places.filter((place) => distance(shift, place) < LEAST.withinMm).length;
  const agree = agreeing / places.length;
  if (agree < LEAST.agree) return null;
  return { shift, sdMm: spreadMm / Math.sqrt(agreeing), places: places.length, agree };
}

/** The map of a card moved so that its print lies where that of the first picture does. */
export function movedMap(map: CardMap, sizeMm: SizeMm, shift: EvenShift): CardMap {
  const [width, height] = sizeMm;
  const own = cardMapOf(map.corners, sizeMm, map.lens);
  const corners = (
    [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ] as const
  ).map((corner) => {
    const [dx, dy] = shiftAt(shift, corner);
    return pixelOf(own, [corner[0] + dx, corner[1] + dy]);
  });
  return cardMapOf(corners as unknown as Corners, sizeMm, map.lens);
}

/** Linear light of red, green and blue, interleaved, of a face taken to be of `sizeMm`. */
export function lightOf({ picture, map }: Seen, sizeMm: SizeMm, view: View): Float32Array {
  return coloursView(picture, cardMapOf(map.corners, sizeMm, map.lens), view);
}

/** The detail of a print between 0.4 and 2.6 mm in the logarithm of its light, whatever the lamp. */
export function detailOf(light: Float32Array, view: View, channel?: 0 | 1 | 2): Plane {
  const values = new Float32Array(view.width * view.height);
  for (let i = 0; i < values.length; i++) {
    const [r, g, b] = [light[3 * i], light[3 * i + 1], light[3 * i + 2]] as [
      number,
      number,
      number,
    ];
    const value = channel === undefined ? (r + g + b) / 3 : (light[3 * i + channel] as number);
    values[i] = Math.log(value + 0.01);
  }
  return bandOf({ width: view.width, height: view.height, values }, 1, 10);
}

function coarseShift(a: Plane, b: Plane): readonly [number, number] {
  const [first, second] = [a, b].map((plane) => shrunk(plane, 4)) as [Plane, Plane];
  const reach = 4;
  const half = Math.floor(Math.min(first.width, first.height) / 2) - reach - 1;
  const square: Square = { x: first.width >> 1, y: first.height >> 1, half };
  let best = { score: -2, dx: 0, dy: 0 };
  for (let dy = -reach; dy <= reach; dy++)
    for (let dx = -reach; dx <= reach; dx++) {
      const score = correlation(first, second, square, dx, dy);
      if (score > best.score) best = { score, dx, dy };
    }
  return [best.dx * 4, best.dy * 4];
}

function shrunk({ width, height, values }: Plane, by: number): Plane {
  const small = { width: Math.floor(width / by), height: Math.floor(height / by) };
  const out = new Float32Array(small.width * small.height);
  for (let y = 0; y < small.height * by; y++)
    for (let x = 0; x < small.width * by; x++) {
      const to = Math.floor(y / by) * small.width + Math.floor(x / by);
      out[to] = (out[to] as number) + (values[y * width + x] as number) / (by * by);
    }
  return { ...small, values: out };
}

/** Squares of 5 mm, 6 mm apart, two millimetres from the cut edge at least. */
function squaresOf(view: View): readonly { readonly square: Square; readonly at: PointMm }[] {
  const half = Math.round(2.5 * PX_PER_MM);
  const from = Math.round(2 * PX_PER_MM) + half;
  const step = 6 * PX_PER_MM;
  const squares: { square: Square; at: PointMm }[] = [];
  for (let y = from; y < view.height - from; y += step)
    for (let x = from; x < view.width - from; x += step)
      squares.push({ square: { x, y, half }, at: viewPointOf(view, [x, y]) });
  return squares;
}

function middleOf(view: View): PointMm {
  return viewPointOf(view, [(view.width - 1) / 2, (view.height - 1) / 2]);
}

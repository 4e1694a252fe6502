import { LUMINANCE } from '../light/srgb.ts';
import type { Plane } from '../picture.ts';
import { coloursView } from '../rectify/rectified.ts';
import { cardViewOf, type View } from '../rectify/view.ts';
import { shiftOf } from '../surface/align.ts';
import { relitOf } from '../surface/relit.ts';
import type { Placed } from '../surface/scratch-marks.ts';

/** A card under a low lamp, with what soft light lets expect of it, on one grid of the card. */
export interface RelitCard {
  readonly view: View;
  /** What the low lamp's light differs by from what was expected, as a share of that. */
  readonly left: Plane;
  /** Luminance that the print and the lamp's field let expect under the low lamp. */
  readonly expected: Plane;
  /** Luminance under soft light. */
  readonly soft: Plane;
}

/** Pixels of the grid to the millimetre: the smallest hollow looked for is three wide. */
export const PX_PER_MM = 5;
/** Half the side of the square in which a lamp's light is a line of the other's, pixels: 4 mm. */
const REACH_PX = 20;

/**
 * Divides the print out of a low lamp's picture: each channel by itself is a line of the same
 * channel under soft light, slope and level smooth over the card, so that the print's colours, the
 * lamps' colours and fields, veil and gloss drop out. The soft picture is moved until it fits.
 */
export function relitCardOf(raking: Placed, soft: Placed): RelitCard {
  const [[ax, ay], [bx, by]] = raking.map.corners;
  const fine = Math.hypot(bx - ax, by - ay) / raking.map.sizeMm[0];
  const samples = Math.max(1, Math.floor(fine / (2 * PX_PER_MM)));
  const view = {
    ...cardViewOf(raking.map.sizeMm, PX_PER_MM, 0),
    most: [samples, samples] as const,
  };
  const low = channelsOf(coloursView(raking.picture, raking.map, view), view);
  let originMm = view.originMm;
  for (let round = 0; ; round++) {
    const twin = channelsOf(coloursView(soft.picture, soft.map, { ...view, originMm }), view);
    const expected = summed(
      low.map((plane, c) => relitOf(plane, twin[c] as Plane, REACH_PX).expected),
    );
    const seen = summed(low);
    const values = seen.values.map((value, i) => value / (expected.values[i] as number) - 1);
    const left = { ...seen, values };
    const [x, y] = shiftOf(left, expected);
    if (round === 3 || Math.hypot(x, y) < 0.04) return { view, left, expected, soft: summed(twin) };
    originMm = [originMm[0] - x / PX_PER_MM, originMm[1] - y / PX_PER_MM];
  }
}

function channelsOf(colours: Float32Array, { width, height }: View): readonly Plane[] {
  return [0, 1, 2].map((c) => {
    const values = new Float32Array(width * height);
    for (let i = 0; i < values.length; i++) values[i] = colours[3 * i + c] as number;
    return { width, height, values };
  });
}

/** Luminance from linear red, green and blue. */
function summed([red, green, blue]: readonly Plane[]): Plane {
  const [r, g, b] = [red, green, blue] as [Plane, Plane, Plane];
  const values = r.values.map(
    (value, i) =>
      LUMINANCE[0] * value +
      LUMINANCE[1] * (g.values[i] as number) +
      LUMINANCE[2] * (b.values[i] as number),
  );
  return { ...r, values };
}

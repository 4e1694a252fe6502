import type { Measured } from '../colour/chart.ts';
import { differenceFrom } from '../colour/difference.ts';
import { readingOf } from '../colour/reading.ts';
import type { Three } from '../colour/spaces.ts';
import { pixelOf } from '../geometry/card-map.ts';
import type { View } from '../rectify/view.ts';
import { meansOf, type OverPlaces, over, type Place, placesOf } from './places.ts';
import type { Seen } from './seen.ts';

/** Differences of colour as charts in both pictures correct them. */
export interface Charted extends OverPlaces {
  /** What the doubt of both corrections alone would show, root mean square, in CIEDE2000. */
  readonly noise: number;
}

/** Light that a channel of the camera cannot tell from more of it. */
const BLOWN = 0.97;

/**
 * Compares the colours of two faces that lie on each other, each corrected by the chart beside it, so
 * that what all places share is seen too. Null where one picture has no chart.
 */
export function chartedOver(
  one: readonly [seen: Seen, light: Float32Array],
  other: readonly [seen: Seen, light: Float32Array],
  view: View,
): Charted | null {
  const all = placesOf(view);
  const [first, second] = [coloursAt(all, one, view), coloursAt(all, other, view)];
  if (!first || !second) return null;
  const pairs = all.flatMap((place, k) => {
    const [a, b] = [first[k], second[k]];
    return a && b ? [{ ...place, a, b }] : [];
  });
  const chance = pairs.reduce(
    (sum, { a, b }) =>
      sum + differenceFrom(a, b.lab).byChance ** 2 + differenceFrom(b, a.lab).byChance ** 2,
    0,
  );
  return {
    ...over(pairs, ({ a, b }) => differenceFrom(a, b.lab).dE00),
    noise: Math.sqrt(chance / Math.max(1, pairs.length)),
  };
}

function coloursAt(
  places: readonly Place[],
  [{ picture, map, chart }, light]: readonly [Seen, Float32Array],
  view: View,
): readonly (Measured | null)[] | null {
  if (!chart) return null;
  const means = meansOf(light, view);
  return places.map(({ x, y, atMm }) => {
    const shown = means.map((channel) => channel[y * view.width + x]) as unknown as Three;
    if (Math.max(...shown) > BLOWN) return null;
    return chart.measure(readingOf(shown, picture, pixelOf(map, atMm)));
  });
}

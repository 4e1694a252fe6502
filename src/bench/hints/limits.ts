import { quantileOf } from '../../maths/index.ts';
import type { Plane } from '../picture.ts';
import type { LampSide } from './lamp-side.ts';
import type { Lobes } from './lobes.ts';
import { creaseOdds, dentOdds } from './odds.ts';
import { PX_PER_MM } from './relit-card.ts';

/** Lobes or flanks a tenth of the light apart lie so far above and below it. */
const SHARE = 0.05;
/** Standard deviation of the logarithm of usual print beneath a mark, and its change from pixel to pixel. */
const USUAL = { printed: 0.2, change: 0.03 } as const;

/** The narrowest width looked for at which a dent with lobes a tenth apart in light has even odds, mm. */
export function dentLimitOf(
  left: Plane,
  even: Plane,
  lobes: readonly Lobes[],
  side: LampSide,
): number | null {
  const share = SHARE * gainOf(left, even);
  for (const { widthMm, sigma, sd } of lobes) {
    // A bowl's slope of height 1, squared and summed, is e·π/2·σ²; noise fills the disc of 3 σ.
    const signal = share * sigma * Math.sqrt((Math.E * Math.PI) / 2);
    const strength = signal / sd;
    const fit = signal / Math.hypot(signal, 3 * sigma * Math.sqrt(Math.PI));
    const angle = (side.angle ?? 0) + Math.PI;
    const seen = {
      strength,
      around: strength,
      fit,
      goesOn: 0.3,
      printed: USUAL.printed,
      angle,
    };
    if (dentOdds(seen, side) > 0) return widthMm;
  }
  return null;
}

/** Response along a piece of a fold 1 mm wide with flanks of height 1, in pixels of the grid. */
const FOLD_RESPONSE = 16.5;
const [SHORTEST_MM, LONGEST_MM] = [5, 40];

/** The length at which a fold 1 mm wide with flanks a tenth apart in light has even odds, mm. */
export function creaseLimitOf(left: Plane, even: Plane, median: number): number | null {
  const strength = (FOLD_RESPONSE * SHARE * gainOf(left, even)) / median;
  for (let mm = SHORTEST_MM; mm <= LONGEST_MM; mm++) {
    const line = { strength, printed: USUAL.change, around: 1.5, askew: 0.5, straight: 1 };
    if (creaseOdds({ ...line, lengthPx: mm * PX_PER_MM }) > 0) return mm;
  }
  return null;
}

/** Usual noise of one over the usual noise of the light, which is that by which a share of the light counts. */
function gainOf(left: Plane, even: Plane): number {
  const sizes = ({ values }: Plane) =>
    quantileOf(values.filter((_, i) => i % 37 === 0).map(Math.abs), 0.5);
  return sizes(even) / Math.max(sizes(left), 1e-5);
}

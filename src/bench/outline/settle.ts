import type { Picture } from '../picture.ts';
import { withSideErrors } from './covariance.ts';
import { cutEdgesOf } from './cut-edge.ts';
import { centreOf, figureOfSides } from './figure.ts';
import type { Fit } from './fit.ts';
import { profileOf } from './profile.ts';

/** Pixels, in widths of the picture's blur, over which the light beside a side is looked at. */
const INSIDE = 5;
const OUTSIDE = 6;

/** Millimetres within which no print lies, and the widest side face that is seen. Common practice, no source. */
const PLAIN_MM = 1;
const WIDEST_FACE_MM = 0.45;

/**
 * A fit whose sides are moved from the steepest change onto the cut edge, each as a whole, by what
 * lies beside it; the doubt about that is added to the covariance.
 */
export function settledFit(
  picture: Picture,
  fit: Fit,
  how: { readonly perMm: number; readonly blur: number; readonly margin: readonly number[] },
): Fit {
  const span = {
    inside: Math.min(INSIDE * how.blur, PLAIN_MM * how.perMm),
    outside: OUTSIDE * how.blur,
  };
  const profiles = [0, 1, 2, 3].map((side) =>
    profileOf(picture, fit.figure, side, { ...span, margin: how.margin[side] as number }),
  );
  const edges = cutEdgesOf(profiles, how.blur, WIDEST_FACE_MM * how.perMm);
  const { unit } = centreOf(fit.figure.lens);
  const c = fit.figure.c.map((at, side) => at + (edges[side]?.off ?? 0) / unit);
  const figure = figureOfSides(fit.figure.angle, c, fit.figure.lens);
  const covariance = withSideErrors(
    fit.covariance,
    figure,
    edges.map(({ sd }) => sd),
  );
  return { ...fit, figure, covariance };
}

import { centreOf, type Figure, figureOfSides, seenCorners } from './figure.ts';
import { carriedCovariance, inverseOfSymmetric } from './normal-equations.ts';

/** Covariance of the seen corners and k1, from that of the sides, each with its own scatter. */
export function covarianceOf(
  normal: Float64Array,
  scatterPx: Float64Array,
  figure: Figure,
  floor: number,
): Float64Array {
  const { unit } = centreOf(figure.lens);
  const scatter = Math.sqrt(scatterPx.reduce((sum, s) => sum + s * s, 0) / 4) / unit;
  const sides = inverseOfSymmetric(normal, 9);
  for (let i = 0; i < 81; i++) {
    const a = Math.floor(i / 9) % 4;
    const b = (i % 9) % 4;
    const own = Math.floor(i / 9) < 8 ? (scatterPx[a] as number) / unit : scatter;
    const other = i % 9 < 8 ? (scatterPx[b] as number) / unit : scatter;
    sides[i] = (sides[i] as number) * own * other;
  }
  for (let i = 4; i < 8; i++) sides[i * 10] = (sides[i * 10] as number) + (floor / unit) ** 2;
  return carriedCovariance(slopesOf(figure), sides, 9, 9);
}

/** A covariance with further errors of the four sides, each moved as a whole, in pixels. */
export function withSideErrors(
  covariance: Float64Array,
  figure: Figure,
  sdPx: readonly number[],
): Float64Array {
  const { unit } = centreOf(figure.lens);
  const sides = new Float64Array(81);
  sdPx.forEach((sd, i) => {
    sides[(4 + i) * 10] = (sd / unit) ** 2;
  });
  const further = carriedCovariance(slopesOf(figure), sides, 9, 9);
  return covariance.map((value, i) => value + (further[i] as number));
}

/** How the seen corners and k1 follow the sides and k1, by small differences. */
function slopesOf(figure: Figure): Float64Array {
  const base = seenCorners(figure).flat();
  const slopes = new Float64Array(81);
  const small = 1e-6;
  for (let p = 0; p < 9; p++) {
    const angle = figure.angle.slice();
    const c = figure.c.slice();
    if (p < 4) angle[p] = (angle[p] as number) + small;
    else if (p < 8) c[p - 4] = (c[p - 4] as number) + small;
    const lens = { ...figure.lens, k1: figure.lens.k1 + (p === 8 ? small : 0) };
    const moved = seenCorners(figureOfSides(angle, c, lens)).flat();
    for (let i = 0; i < 8; i++)
      slopes[i * 9 + p] = ((moved[i] as number) - (base[i] as number)) / small;
  }
  slopes[80] = 1;
  return slopes;
}

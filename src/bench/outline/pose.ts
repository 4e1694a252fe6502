import { sideOf } from './quads.ts';

/** How a figure can be a card's picture. */
export interface Pose {
  /** Squares of the misfit to a rectangle of the wanted size, over their variances. */
  readonly misfit: number;
  /** Short side over long side of the card itself. */
  readonly aspect: number;
  /** Focal length in half diagonals of the picture. */
  readonly focal: number;
}

/** Shortest focal length looked for, in half diagonals; about 26 mm on a small-picture camera is 1.2. */
const SHORTEST = 0.8;
const USUAL_FOCAL = 1.5;
const FOCAL_SPREAD = 0.7;
const FIRST_STEP = 0.35;
const STEPS = 9;
const HALVINGS = 4;

/**
 * The likeliest pose of four corners, clockwise and counted from the picture's centre in half
 * diagonals: the map of a flat rectangle under a camera with square pixels has orthogonal columns
 * of equal scale (`zhang:2000`), and what is left of that over all focal lengths is the misfit.
 */
export function poseOf(p: Float64Array, aspect: number | null, sd: number): Pose {
  const columns = columnsOf(p);
  const lying = sideOf(p, 0) + sideOf(p, 2) > sideOf(p, 1) + sideOf(p, 3);
  const at = (log: number) => poseAt(columns, lying, Math.exp(log), aspect, sd);
  let middle = Math.log(SHORTEST);
  let best = at(middle);
  for (let i = 1; i < STEPS; i++) {
    const other = at(Math.log(SHORTEST) + i * FIRST_STEP);
    if (other.misfit < best.misfit) [best, middle] = [other, Math.log(other.focal)];
  }
  for (let step = FIRST_STEP / 2, k = 0; k < HALVINGS; k++, step /= 2)
    for (const log of [middle - step, middle + step]) {
      const other = at(log);
      if (other.misfit < best.misfit) [best, middle] = [other, log];
    }
  return best;
}

function poseAt(
  [h1, h2]: readonly [Column, Column],
  lying: boolean,
  focal: number,
  aspect: number | null,
  sd: number,
): Pose {
  const w = 1 / (focal * focal);
  const one = w * (h1[0] ** 2 + h1[1] ** 2) + h1[2] ** 2;
  const two = w * (h2[0] ** 2 + h2[1] ** 2) + h2[2] ** 2;
  const cosine = (w * (h1[0] * h2[0] + h1[1] * h2[1]) + h1[2] * h2[2]) / Math.sqrt(one * two);
  const own = Math.sqrt(lying ? two / one : one / two);
  const misfit =
    (cosine / sd) ** 2 +
    (offAspect(own, aspect) / sd) ** 2 +
    (Math.log(focal / USUAL_FOCAL) / FOCAL_SPREAD) ** 2;
  return { misfit, aspect: own, focal };
}

/** Logarithm by which an aspect lies off the known one, or outside 0.6 to 0.8. */
function offAspect(own: number, aspect: number | null): number {
  if (aspect) return Math.log(own / Math.min(aspect, 1 / aspect));
  if (own < 0.6) return Math.log(own / 0.6);
  return own > 0.8 ? Math.log(own / 0.8) : 0;
}

type Column = readonly [number, number, number];

/** First two columns of the homography from the unit square (`heckbert:1989`). */
function columnsOf(p: Float64Array): readonly [Column, Column] {
  const [x0, y0, x1, y1, x2, y2, x3, y3] = p as unknown as readonly number[] as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const sx = x0 - x1 + x2 - x3;
  const sy = y0 - y1 + y2 - y3;
  const det = (x1 - x2) * (y3 - y2) - (x3 - x2) * (y1 - y2);
  const g = (sx * (y3 - y2) - (x3 - x2) * sy) / det;
  const h = ((x1 - x2) * sy - sx * (y1 - y2)) / det;
  return [
    [x1 - x0 + g * x1, y1 - y0 + g * y1, g],
    [x3 - x0 + h * x3, y3 - y0 + h * y3, h],
  ];
}

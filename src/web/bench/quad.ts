import type { BenchOutline } from '../../contract/index.ts';
import type { Place } from './part.ts';

/** Four corners in a picture, from the card's upper left clockwise. */
export type Quad = NonNullable<BenchOutline['corners']>;

/** A corner put elsewhere. */
export function cornerMoved(quad: Quad, at: number, [x, y]: Place): Quad {
  return quad.map((corner, k) => (k === at ? [x, y] : corner)) as Quad;
}

/**
 * The side from corner `at` to the next moved parallel to itself, by as much of a step as goes across
 * it; its two corners slide along the neighbouring sides.
 */
export function sideMoved(quad: Quad, at: number, [dx, dy]: Place): Quad {
  const [before, from, to, after] = [3, 0, 1, 2].map((k) => quad[(at + k) % 4]) as Quad;
  const normal: Place = [to[1] - from[1], from[0] - to[0]];
  const across = dx * normal[0] + dy * normal[1];
  const slid = (corner: Place, beside: Place): Place => {
    const along: Place = [corner[0] - beside[0], corner[1] - beside[1]];
    const share = across / (along[0] * normal[0] + along[1] * normal[1]);
    return [corner[0] + share * along[0], corner[1] + share * along[1]];
  };
  return cornerMoved(cornerMoved(quad, at, slid(from, before)), (at + 1) % 4, slid(to, after));
}

/** The middle of the side from corner `at` to the next. */
export function middleOf(quad: Quad, at: number): Place {
  const [from, to] = [quad[at], quad[(at + 1) % 4]] as [Place, Place];
  return [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
}

/** A quadrilateral drawn smaller about its middle, by a share of it. */
export function shrunk(quad: Quad, share: number): Quad {
  const middle = [0, 1].map((axis) =>
    quad.reduce((sum, corner) => sum + (corner[axis] ?? 0) / 4, 0),
  );
  return quad.map((corner) =>
    corner.map((at, axis) => at + share * ((middle[axis] ?? 0) - at)),
  ) as Quad;
}

import type { PointMm, SizeMm } from '../geometry/points.ts';
import type { Plane } from '../picture.ts';
import { type View, viewPointOf } from '../rectify/view.ts';

/** Radius of the round corners, mm. Judgement, no source. */
const CORNER_MM = 3;
/** Beside the cut edge light comes from the edge itself, mm. */
const EDGE_MM = 0.6;

/** How far inside the round outline of a card a point lies, mm; below 0 outside. */
export function depthInside([x, y]: PointMm, [width, height]: SizeMm): number {
  const [left, top] = [Math.min(x, width - x), Math.min(y, height - y)];
  const [u, v] = [CORNER_MM - left, CORNER_MM - top];
  return u > 0 && v > 0 ? CORNER_MM - Math.hypot(u, v) : Math.min(left, top);
}

/** A plane over a card with nothing outside its round outline and along its cut edge. */
export function onCardAlone(plane: Plane, view: View, sizeMm: SizeMm): Plane {
  const values = plane.values.map((value, i) => {
    const at = viewPointOf(view, [i % plane.width, Math.floor(i / plane.width)]);
    return depthInside(at, sizeMm) < EDGE_MM ? 0 : value;
  });
  return { ...plane, values };
}

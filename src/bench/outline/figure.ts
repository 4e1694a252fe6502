import { bowed, halfDiagonalOf, type Lens, straightened } from '../geometry/lens.ts';
import type { Corners, PointPx } from '../geometry/points.ts';

/**
 * Four straight sides seen through a lens: side i lies on cos · x + sin · y = c in the picture
 * without bow, about its centre in half diagonals, and runs from corner i to corner i + 1.
 */
export interface Figure {
  readonly lens: Lens;
  readonly angle: Float64Array;
  readonly c: Float64Array;
  /** Corners without the bow, in pixels. */
  readonly ideal: readonly PointPx[];
}

/** The figure whose virtual corners are seen at `corners`, clockwise. */
export function figureOf(corners: readonly PointPx[], lens: Lens): Figure {
  const ideal = corners.map((corner) => straightened(lens, corner));
  const { cx, cy, unit } = centreOf(lens);
  const angle = new Float64Array(4);
  const c = new Float64Array(4);
  for (let i = 0; i < 4; i++) {
    const [ax, ay] = ideal[i] as PointPx;
    const [bx, by] = ideal[(i + 1) % 4] as PointPx;
    const normal = Math.atan2(-(bx - ax), by - ay);
    angle[i] = normal;
    c[i] = (Math.cos(normal) * (ax - cx) + Math.sin(normal) * (ay - cy)) / unit;
  }
  return { lens, angle, c, ideal };
}

/** The figure of given sides; its corners are where they meet. */
export function figureOfSides(angle: Float64Array, c: Float64Array, lens: Lens): Figure {
  const { cx, cy, unit } = centreOf(lens);
  const ideal = [0, 1, 2, 3].map((i): PointPx => {
    const j = (i + 3) % 4;
    const a = angle[i] as number;
    const b = angle[j] as number;
    const turn = Math.sin(b - a);
    const x = ((c[i] as number) * Math.sin(b) - (c[j] as number) * Math.sin(a)) / turn;
    const y = ((c[j] as number) * Math.cos(a) - (c[i] as number) * Math.cos(b)) / turn;
    return [cx + x * unit, cy + y * unit];
  });
  return { lens, angle, c, ideal };
}

/** Where the virtual corners of a figure are seen. */
export function seenCorners({ lens, ideal }: Figure): Corners {
  return ideal.map((corner) => bowed(lens, corner)) as unknown as Corners;
}

/** Where a place along a side is seen: t from 0 at its first to 1 at its second corner. */
export function seenPoint({ lens, ideal }: Figure, side: number, t: number): PointPx {
  const [ax, ay] = ideal[side] as PointPx;
  const [bx, by] = ideal[(side + 1) % 4] as PointPx;
  return bowed(lens, [ax + t * (bx - ax), ay + t * (by - ay)]);
}

/** Centre of a picture and half its diagonal, in pixels. */
export function centreOf(lens: Lens): { cx: number; cy: number; unit: number } {
  return { cx: (lens.width - 1) / 2, cy: (lens.height - 1) / 2, unit: halfDiagonalOf(lens) };
}

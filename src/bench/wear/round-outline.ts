import type { SizeMm } from '../geometry/points.ts';

/** One ray that crosses the outline of a card with round tips, from outside to inside. */
export interface Ray {
  /** 0 the top side, 1 the tip at its right end, and so on clockwise to 7, the top left tip. */
  readonly part: number;
  /** Where the ray crosses the ideal outline, card millimetres. */
  readonly x: number;
  readonly y: number;
  /** Unit vector inwards. */
  readonly inX: number;
  readonly inY: number;
  /** Millimetres along the outline that the ray stands for, at depth 0. */
  readonly width: number;
  /** What is left of that width a millimetre further in, 0 beside a side. */
  readonly narrows: number;
}

/**
 * Rays across the rounded outline, about `stepMm` apart: square to the sides, and at the tips
 * spread about a centre `reach` from both sides, so that depths up to `reach` never meet.
 *
 * @param radius of the tips, mm, 0 to `reach`
 */
export function raysOf(
  size: SizeMm,
  radius: number,
  reach: number,
  stepMm: number,
): readonly Ray[] {
  const [width, height] = size;
  const corner = tipRays(radius, reach, stepMm);
  const rays: Ray[] = [];
  for (let turn = 0; turn < 4; turn++) {
    const long = turn % 2 === 0 ? width : height;
    const count = Math.max(1, Math.round((long - 2 * reach) / stepMm));
    const step = (long - 2 * reach) / count;
    for (let i = 0; i < count; i++) {
      const x = reach + (i + 0.5) * step;
      const ray = { part: 2 * turn, x, y: 0, inX: 0, inY: 1, width: step, narrows: 0 };
      rays.push(turned(ray, turn, size));
    }
    for (const { x, y, inX, inY, width: wide, narrows } of corner) {
      const ray = { part: 2 * turn + 1, x: long - x, y, inX, inY, width: wide, narrows };
      rays.push(turned(ray, turn, size));
    }
  }
  return rays;
}

/** Rays of the tip at the right end of a side that runs from left to right, x counted from there. */
function tipRays(radius: number, reach: number, stepMm: number): readonly Omit<Ray, 'part'>[] {
  const count = Math.max(8, Math.round((reach * Math.PI) / 2 / stepMm));
  const step = Math.PI / 2 / count;
  return Array.from({ length: count }, (_, i) => {
    const angle = (i + 0.5) * step;
    const [outX, outY] = [Math.sin(angle), -Math.cos(angle)];
    const long = tipDistance(radius, reach, angle);
    return {
      x: reach - long * outX,
      y: reach + long * outY,
      inX: -outX,
      inY: -outY,
      width: long * step,
      narrows: step,
    };
  });
}

/** From the point `reach` from both sides to the rounded outline, `angle` from one side's normal. */
export function tipDistance(radius: number, reach: number, angle: number): number {
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  const straight = reach / Math.max(sin, cos);
  const gap = reach - radius;
  const along = gap * (sin + cos);
  const root = along * along - 2 * gap * gap + radius * radius;
  if (root < 0) return straight;
  const round = along + Math.sqrt(root);
  const onArc = round * sin >= gap && round * cos >= gap;
  return onArc ? round : straight;
}

/** A ray of the top side or its right end, carried to the side that is `turn` quarters clockwise. */
function turned(ray: Ray, turn: number, [width, height]: SizeMm): Ray {
  const { part, x, y, inX, inY, width: wide, narrows } = ray;
  const carried = (toX: number, toY: number, outX: number, outY: number): Ray => {
    return { part, x: toX, y: toY, inX: outX, inY: outY, width: wide, narrows };
  };
  if (turn === 1) return carried(width - y, x, -inY, inX);
  if (turn === 2) return carried(width - x, height - y, -inX, -inY);
  if (turn === 3) return carried(y, height - x, inY, -inX);
  return ray;
}

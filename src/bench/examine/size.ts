import { type Corners, distanceBetween, type PointPx } from '../geometry/points.ts';
import type { Outline, OutlineKnown } from '../outline/types.ts';
import type { MeasuredSize } from './types.ts';

/** How far a scanner's own scale may be off, as a share. Judgement, no source. */
const SCALE_SD = 0.001;
const MM_AN_INCH = 25.4;

/**
 * The size of a card: of a scan, the means of opposite sides at its dots an inch, also where a size
 * was told, since a trimmed card is smaller than it should be; else as told.
 */
export function sizeOf(outline: Outline, { sizeMm, dpi }: OutlineKnown): MeasuredSize | null {
  if (dpi === null) return sizeMm && { mm: sizeMm, sdMm: null, from: 'told' };
  const perMm = dpi / MM_AN_INCH;
  const [width, height] = [meanOf(outline, 0), meanOf(outline, 1)];
  const sd = (length: { px: number; sd: number }) =>
    Math.hypot(length.sd, SCALE_SD * length.px) / perMm;
  return {
    mm: [width.px / perMm, height.px / perMm],
    sdMm: [sd(width), sd(height)],
    from: 'dpi',
  };
}

/** The mean of the side that begins at corner `from` and the one opposite, and its standard error. */
function meanOf({ corners, covariance }: Outline, from: 0 | 1): { px: number; sd: number } {
  const gradient = new Float64Array(9);
  let px = 0;
  for (const a of [from, from + 2]) {
    const b = (a + 1) % 4;
    const length = distanceBetween(at(corners, a), at(corners, b));
    px += length / 2;
    for (const axis of [0, 1] as const) {
      const cosine = (at(corners, b)[axis] - at(corners, a)[axis]) / length;
      gradient[2 * a + axis] = (gradient[2 * a + axis] as number) - cosine / 2;
      gradient[2 * b + axis] = (gradient[2 * b + axis] as number) + cosine / 2;
    }
  }
  let variance = 0;
  for (let i = 0; i < 9; i++)
    for (let j = 0; j < 9; j++)
      variance +=
        (gradient[i] as number) * (covariance[9 * i + j] as number) * (gradient[j] as number);
  return { px, sd: Math.sqrt(variance) };
}

function at(corners: Corners, i: number): PointPx {
  return corners[i] as PointPx;
}

import type { PointMm } from '../geometry/points.ts';
import { boxOf } from '../wear/place-extent.ts';
import type { Section } from './crease-fit.ts';
import type { ReliefDefect } from './types.ts';

/** Grooves narrower than this are scratches; in blocks nearly as wide their depth is not told, mm. */
const SCRATCH_MM = 0.35;
/** Standard errors of place across a line and of its length, mm (Judgement, no source). */
const ACROSS_MM = 0.08;
const LENGTH_MM = 1;
/** Strength over the card's usual, and height in its own errors, at which odds are even (Judgement, no source). */
const EVEN = { z: 9, height: 4 } as const;

/** A line of relief as a defect: a crease, or a scratch where it is a narrow groove. */
export function lineDefectOf(
  points: readonly PointMm[],
  { height, heightSd, width, widthSd }: Section,
  lengthMm: number,
  z: number,
): ReliefDefect {
  const narrow = width < SCRATCH_MM;
  const [x0, y0, x1, y1] = boxOf(points);
  const half = width / 2;
  return {
    kind: narrow && height < 0 ? 'scratch' : 'crease',
    centreMm: points[points.length >> 1] as PointMm,
    boxMm: [x0 - half, y0 - half, x1 + half, y1 + half],
    areaMm2: lengthMm * width,
    lengthMm,
    polygonMm: points,
    p:
      1 /
      (1 + Math.exp(-0.8 * Math.min(z - EVEN.z, 2 * (Math.abs(height) / heightSd - EVEN.height)))),
    seenFrom: 'lamps',
    diameterMm: width,
    depthMm: narrow || height > 0 ? null : -height,
    heightMm: narrow || height < 0 ? null : height,
    sd: {
      centreMm: ACROSS_MM,
      areaMm2: lengthMm * widthSd,
      lengthMm: LENGTH_MM,
      diameterMm: widthSd,
      depthMm: narrow ? null : heightSd,
    },
  };
}

/** Whether a point lies on a line of relief, or so near that the line's own wall may look like a dent. */
export function liesOn({ polygonMm, diameterMm }: ReliefDefect, [x, y]: PointMm): boolean {
  return polygonMm.slice(1).some(([bx, by], k) => {
    const [ax, ay] = polygonMm[k] as PointMm;
    const [dx, dy] = [bx - ax, by - ay];
    const t = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
    return Math.hypot(x - ax - t * dx, y - ay - t * dy) < diameterMm + 0.4;
  });
}

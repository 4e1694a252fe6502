import type { PointMm } from '../geometry/points.ts';
import { PRINT_MM } from './candidates.ts';
import type { DentFit } from './dent-fit.ts';
import { footOf, SHAPE, SHAPE_SIZE } from './dent-shape.ts';
import type { Lighting } from './lighting.ts';
import type { LampUsed, ReliefDefect } from './types.ts';

// What the fit's own errors leave out, found by planting dents whose truth is known (docs/methods/bench-relief.md).
const FLOOR = {
  /** mm: outline and pixel grid. */
  centre: 0.012,
  /** mm, and share of the width: profiles that are none of the family's. */
  width: 0.008,
  widthShare: 0.015,
  /** Share of the depth, also where nothing shines. */
  depthShare: 0.03,
} as const;
/**
 * What gloss of another lobe than the model's may do where all light is gloss: share of depth and of
 * width, and shift of the centre as a share of the width. Noise hides it, and the fit then does not see it.
 */
const GLOSS = { depth: 0.13, width: 0.03, centre: 0.01 } as const;

/** Depth in standard errors at which a dent and a trick of light are equally likely, and how fast that turns. */
const EVEN = 7;
const TURN = 0.9;

/** A fitted dent as a defect with its standard errors and probability, the card's centre at `middle`. */
export function dentOf(
  fit: DentFit,
  lighting: Lighting,
  lamps: readonly LampUsed[],
  middle: PointMm,
): ReliefDefect {
  const { shape } = fit;
  const variance = (i: number) => fit.covariance[i * (SHAPE_SIZE + 1)] as number;
  // What noise explains, and beyond that what was seen to misfit, or gloss may do unseen.
  const doubt = (seen: number, unseen: number) =>
    Math.hypot(
      Math.sqrt(seen / fit.inflation),
      Math.max(Math.sqrt(seen * (1 - 1 / fit.inflation)), fit.glossShare * unseen),
    );
  const depth = shape[SHAPE.depth] as number;
  const width = Math.exp(shape[SHAPE.logWidth] as number);
  const centre: PointMm = [
    middle[0] + (shape[SHAPE.x] as number),
    middle[1] + (shape[SHAPE.y] as number),
  ];
  const stretch = Math.hypot(shape[SHAPE.stretchX] as number, shape[SHAPE.stretchXY] as number);
  const long = footOf(shape) * Math.exp(stretch / 2);
  return {
    kind: 'dent',
    centreMm: centre,
    boxMm: [centre[0] - long, centre[1] - long, centre[0] + long, centre[1] + long],
    areaMm2: (Math.PI / 4) * width * width,
    lengthMm: null,
    polygonMm: ovalOf(centre, width / 2, shape),
    p: probabilityOf(fit, depth, Math.sqrt(variance(SHAPE.depth))),
    seenFrom: 'lamps',
    diameterMm: width,
    depthMm: depth,
    heightMm: null,
    sd: {
      centreMm: Math.hypot(
        doubt((variance(SHAPE.x) + variance(SHAPE.y)) / 2, GLOSS.centre * width),
        FLOOR.centre,
      ),
      areaMm2: null,
      lengthMm: null,
      diameterMm: Math.hypot(
        width * doubt(variance(SHAPE.logWidth), GLOSS.width),
        FLOOR.width,
        FLOOR.widthShare * width,
      ),
      depthMm: Math.hypot(
        doubt(variance(SHAPE.depth), GLOSS.depth * depth),
        PRINT_MM,
        depth * Math.hypot(FLOOR.depthShare, lighting.ambient.sd, lampShare(lamps)),
      ),
    },
  };
}

/** Share of the depth by which it errs when each lamp's height over the card is off by its own angle. */
function lampShare(lamps: readonly LampUsed[]): number {
  const shares = lamps.map(({ placeMm: [x, y, z], sdDeg }) => {
    const elevation = Math.atan2(z, Math.hypot(x, y));
    return (sdDeg * Math.PI) / 180 / (Math.sin(elevation) * Math.cos(elevation));
  });
  return Math.hypot(...shares) / lamps.length;
}

function probabilityOf(fit: DentFit, depth: number, sd: number): number {
  if (depth <= 0) return 0;
  const z = depth / Math.hypot(sd, PRINT_MM);
  // Where the dent itself fits far worse than its surroundings, something else is there.
  const misfit = Math.max(0, fit.scatterInside / Math.max(fit.scatter, 0.5) - 3);
  return 1 / (1 + Math.exp(TURN * (EVEN + misfit - z)));
}

/** The line at half the depth, in twenty-four corners. */
function ovalOf([cx, cy]: PointMm, radius: number, shape: Float64Array): readonly PointMm[] {
  const sx = shape[SHAPE.stretchX] as number;
  const sxy = shape[SHAPE.stretchXY] as number;
  const round = Math.sqrt(1 + sx * sx + sxy * sxy);
  return Array.from({ length: 24 }, (_, i): PointMm => {
    const dx = Math.cos((i * Math.PI) / 12);
    const dy = Math.sin((i * Math.PI) / 12);
    const squeeze = Math.sqrt((round + sx) * dx * dx + 2 * sxy * dx * dy + (round - sx) * dy * dy);
    return [cx + (radius * dx) / squeeze, cy + (radius * dy) / squeeze];
  });
}

import type { Limit, Measure, Scale, Side } from './types.ts';

/**
 * The most that a grade allows on the front, from the best grade of a scale down, one step each.
 * Common practice, no source: services keep their own, and change them. The collector's own
 * `desk/thresholds.csv` takes their place, service by service.
 */
const FRONT: Readonly<Record<Measure, readonly number[]>> = {
  centering: [55, 60, 65, 70, 75, 80, 85, 90],
  'corner-wear': [0.05, 0.2, 0.5, 1, 2, 4, 8, 16],
  'edge-wear': [0.1, 0.4, 1, 2, 4, 8, 16, 30],
  scratch: [1, 4, 10, 20, 40, 80, 160, 300],
  dent: [0, 0.3, 0.8, 1.5, 3, 5, 8, 12],
  crease: [0, 0, 0, 1, 4, 12, 30, 60],
  speck: [0, 1, 3, 6, 12, 24, 48, 100],
  'print-line': [2, 10, 25, 50, 100, 150, 200, 300],
  stain: [0, 0.2, 0.6, 1.5, 4, 10, 25, 60],
};

/** Backs are allowed more. Common practice, no source. */
const BACK: Readonly<Record<Measure, number>> = {
  centering: 1,
  'corner-wear': 1.5,
  'edge-wear': 1.5,
  scratch: 1.5,
  dent: 1.2,
  crease: 1,
  speck: 2,
  'print-line': 2,
  stain: 1.5,
};
const BACK_CENTERING = [75, 80, 85, 90, 90, 95, 95, 95];

/** Limits for a scale of which the collector has entered none, the best grade first. */
export function usualLimits(scale: Scale): readonly Limit[] {
  const best = [...scale.grades].reverse();
  return best.flatMap((grade, step) =>
    (['front', 'back'] as const).flatMap((side) =>
      (Object.keys(FRONT) as Measure[]).flatMap((measure) => {
        const atMost = usual(side, measure, step);
        return atMost === undefined ? [] : [{ grade, side, measure, atMost }];
      }),
    ),
  );
}

function usual(side: Side, measure: Measure, step: number): number | undefined {
  if (side === 'back' && measure === 'centering') return BACK_CENTERING[step];
  const front = FRONT[measure][step];
  return front === undefined || side === 'front' ? front : front * BACK[measure];
}

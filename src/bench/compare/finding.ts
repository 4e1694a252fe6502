import type { PointMm } from '../geometry/points.ts';

/** One family of differences and what it says of two explanations. */
export interface Finding {
  readonly what: string;
  /** Where it is strongest; null where it has no place. */
  readonly whereMm: PointMm | null;
  /** In the unit that `what` names. */
  readonly difference: number;
  readonly sd: number;
  /** Above 0 for the first explanation. */
  readonly log10Lr: number;
}

/** A comparison of pictures: never a verdict, the ratio of two explanations. */
export interface Comparison {
  /** Whether the prints lie on each other; where they do not, nothing else is said. */
  readonly registered: boolean;
  readonly findings: readonly Finding[];
  readonly log10Lr: number;
  readonly between: readonly [string, string];
  readonly words: string;
  /** What limits the comparison, in sentences. */
  readonly cautions: readonly string[];
}

/** The answer where two prints do not lie on each other: nothing is said of either explanation. */
export function notRegistered(between: Comparison['between']): Comparison {
  return {
    registered: false,
    findings: [],
    log10Lr: 0,
    between,
    words:
      'The prints do not lie on each other, so that nothing was compared: another face, another design, or a picture too small or blurred for its lines.',
    cautions: [],
  };
}

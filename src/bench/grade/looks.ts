import type { Measure } from './types.ts';

/** A way in which a face was looked at. */
export type LookAt = 'photo' | 'scan' | 'raking' | 'lamps';

/**
 * The probability that a look shows a fault of each kind that would matter to a grade, 0 to 1.
 * Judgement, no source; what an eye and a loupe see beside the pictures is not in it.
 */
export const SHOWS: Readonly<Record<LookAt, Readonly<Partial<Record<Measure, number>>>>> = {
  photo: {
    centering: 1,
    'corner-wear': 0.8,
    'edge-wear': 0.8,
    scratch: 0.3,
    dent: 0.1,
    crease: 0.4,
    speck: 0.5,
    'print-line': 0.3,
    stain: 0.7,
  },
  scan: {
    centering: 1,
    'corner-wear': 0.9,
    'edge-wear': 0.9,
    scratch: 0.3,
    dent: 0.1,
    crease: 0.5,
    speck: 0.9,
    'print-line': 0.5,
    stain: 0.8,
  },
  raking: { scratch: 0.9, dent: 0.6, crease: 0.9, 'print-line': 0.6 },
  lamps: { scratch: 0.7, dent: 0.95, crease: 0.95 },
};

/** What several looks at one face show of a measure together, each missing a fault by itself. */
export function shownBy(looks: readonly LookAt[], measure: Measure): number {
  return 1 - looks.reduce((missed, look) => missed * (1 - (SHOWS[look][measure] ?? 0)), 1);
}

/** A face of a card. */
export type Side = 'front' | 'back';

/** What a limit speaks of, with its unit in `UNITS`. */
export const MEASURES = [
  'centering',
  'corner-wear',
  'edge-wear',
  'scratch',
  'dent',
  'crease',
  'speck',
  'print-line',
  'stain',
] as const;
export type Measure = (typeof MEASURES)[number];

/** The unit of each measure: a share, an area, a length or a number, summed over one face. */
export const UNITS: Readonly<Record<Measure, string>> = {
  centering: '% of the wider border, the worse of the two ways',
  'corner-wear': 'mm²',
  'edge-wear': 'mm²',
  scratch: 'mm of length',
  dent: 'mm of diameter',
  crease: 'mm of length',
  speck: 'specks',
  'print-line': 'mm of length',
  stain: 'mm²',
};

/** One amount with a probability, as a normal distribution. */
export interface Part {
  readonly weight: number;
  readonly mean: number;
  readonly sd: number;
}

/** What was measured of one measure on one face. */
export interface Amount {
  readonly side: Side;
  readonly measure: Measure;
  /** A mixture; the weights add up to 1. */
  readonly parts: readonly Part[];
  /** The probability that the pictures at hand would show a fault of this kind, 0 (not looked at) to 1. */
  readonly shown: number;
}

/** A service's grades, worst to best. */
export interface Scale {
  readonly service: string;
  readonly grades: readonly string[];
}

/** The most that a grade allows. A grade without a limit for a measure allows as much as the next one down. */
export interface Limit {
  readonly grade: string;
  readonly side: Side;
  readonly measure: Measure;
  readonly atMost: number;
}

import type { SourceKind } from '../evidence/index.ts';

/** The ways in which a claim of an on-sale day comes about, in the order of the model's columns. */
export const READINGS = [
  'right',
  'day-before',
  'day-after',
  'few-days',
  'swapped',
  'first-of-month',
  'year-off',
  'other-moment',
  'row-shift',
  'filled-in',
  'sibling',
  'noise',
  'near-moment',
  'cover-date',
] as const;

export const N_READINGS = READINGS.length;
export const RIGHT = 0;
export const DAY_BEFORE = 1;
export const DAY_AFTER = 2;
export const FEW_DAYS = 3;
export const SWAPPED = 4;
export const FIRST_OF_MONTH = 5;
export const YEAR_OFF = 6;
export const OTHER_MOMENT = 7;
export const ROW_SHIFT = 8;
export const FILLED_IN = 9;
export const SIBLING = 10;
export const NOISE = 11;
/** A day or two beside the other moment. */
export const NEAR_MOMENT = 12;

export const COVER_DATE = 13;

/** Whether a source can be read so: one that dates another moment errs about that, not the release. */
export function isOpen(reading: number, lagged: boolean): boolean {
  if (reading === OTHER_MOMENT || reading === NEAR_MOMENT) return lagged;
  return !(lagged && isBeside(reading));
}

/** Whether a reading misses the release by days. */
export function isBeside(reading: number): boolean {
  return reading === DAY_BEFORE || reading === DAY_AFTER || reading === FEW_DAYS;
}

/**
 * Odds of each reading against `right`, before any dossier is seen. Judgement, no source: the model
 * gives each a spread of a factor of about three either way and learns the rest.
 */
const USUAL: readonly number[] = [
  1, 0.03, 0.03, 0.08, 0.012, 0.03, 0.02, 0.03, 0.02, 0.02, 0.05, 0.08, 0.03, 0.02,
];

/** Where a kind of source differs from the usual: factors on the odds. Judgement, no source. */
const BY_KIND: Partial<Record<SourceKind, Partial<Record<(typeof READINGS)[number], number>>>> = {
  'publisher-database': { sibling: 1.5, 'filled-in': 1.5, noise: 0.6 },
  packaging: { noise: 0.6, 'row-shift': 0.3, 'filled-in': 0.3 },
  'press-release': { 'few-days': 1.5, noise: 0.6, 'row-shift': 0.3 },
  'store-listing': { 'few-days': 2, 'day-after': 1.5 },
  newspaper: { 'row-shift': 0.3, 'filled-in': 0.3 },
  advertisement: { 'few-days': 1.5, 'row-shift': 0.3 },
  checklist: { 'first-of-month': 1.5, sibling: 1.5, 'row-shift': 1.5, 'filled-in': 1.5 },
  forum: { noise: 1.7, 'few-days': 1.5 },
  video: { noise: 1.7, sibling: 1.3 },
  correspondence: { noise: 1.5 },
  'registration-record': { noise: 0.6 },
  'own-observation': { noise: 0.5, sibling: 0.3, 'row-shift': 0.3, 'filled-in': 0.3 },
};

/** Prior mean of the log odds of each reading against `right` for a kind of source. */
export function priorLogOdds(kind: SourceKind): Float64Array {
  const out = new Float64Array(N_READINGS);
  const factors = BY_KIND[kind] ?? {};
  READINGS.forEach((reading, r) => {
    out[r] = Math.log(USUAL[r]! * (factors[reading] ?? 1));
  });
  return out;
}

/** Prior probability that a source of this kind dates another moment of the release throughout. */
export function priorOtherMoment(kind: SourceKind): number {
  if (kind === 'store-listing' || kind === 'registration-record' || kind === 'archive-snapshot') {
    return 0.2;
  }
  return kind === 'publisher-database' || kind === 'packaging' || kind === 'own-observation'
    ? 0.06
    : 0.12;
}

import type { PointMm } from './geometry/points.ts';

/** What a mark on a copy is, in the words of the trade. */
export type DefectKind =
  | 'corner-wear'
  | 'edge-wear'
  | 'scratch'
  | 'dent'
  | 'crease'
  | 'speck'
  | 'print-line'
  | 'stain';

/**
 * What wear of a corner, an edge or a patch of print most probably is. A picture from straight above
 * tells foil from bare board by its pattern alone.
 */
export type WearNature = 'whitening' | 'loss' | 'silvering';

/** What each nature of wear is, in words. */
export const WEAR_WORDS: Readonly<Record<WearNature, string>> = {
  whitening: 'whitening: the print is off in one piece, down to the board',
  loss: 'loss: card is missing, the ground is seen',
  silvering: 'silvering: ink or foil is off in bright broken specks',
};

/** Left, top, right and bottom of a mark in card millimetres. */
export type BoxMm = readonly [x0: number, y0: number, x1: number, y1: number];

/** One standard error of each measured number; null for a number that is not given. */
export interface DefectSd {
  /** Of the centre, along each axis. */
  readonly centreMm: number;
  readonly areaMm2: number | null;
  readonly lengthMm: number | null;
}

/** A mark found on a copy, all places in card millimetres. */
export interface Defect {
  readonly kind: DefectKind;
  readonly centreMm: PointMm;
  readonly boxMm: BoxMm;
  /** Of corners, edges and silvered patches alone. */
  readonly wear?: WearNature;
  /** Area that the mark covers; of a scratch or crease, its length times its seen width. */
  readonly areaMm2: number;
  /** Length of a long mark along itself, of wear along the side; null for a round one. */
  readonly lengthMm: number | null;
  /** Outline of the mark, not closed; of a scratch or crease, the line along its middle. */
  readonly polygonMm: readonly PointMm[];
  /** Probability that the copy bears this mark, that it is no trace of light, ground or picture. */
  readonly p: number;
  readonly sd: DefectSd;
  /** The light that showed it: one still picture, one low lamp, or several lamps in turn. */
  readonly seenFrom: 'still' | 'raking' | 'lamps';
}

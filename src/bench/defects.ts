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
  /** What a worn corner or edge is: print gone to white, or card that is missing; of wear alone. */
  readonly wear?: 'whitening' | 'loss';
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

import type { Lens } from '../geometry/lens.ts';
import type { Corners, SizeMm } from '../geometry/points.ts';

/** What is known of a card and its picture before anything is measured. */
export interface OutlineKnown {
  /** Width and height of the card as it is read; null where not told: then 0.6 to 0.8 is expected. */
  readonly sizeMm: SizeMm | null;
  /** Dots an inch of a scan; null for a photograph. A scan has no bow and no perspective. */
  readonly dpi: number | null;
}

/** Where a card lies in a picture, with the doubt about it. */
export interface Outline {
  /**
   * Virtual corners, top-left first and on round as the card is read. A picture alone does not say
   * which way a card is read: the long side is taken to stand upright and the side that lies nearest
   * to the picture's top to be the card's.
   */
  readonly corners: Corners;
  readonly lens: Lens;
  /** The size told, else the size measured at the picture's dots an inch, else null. */
  readonly sizeMm: SizeMm | null;
  /** Width over height of the card itself, without tilt: that of the size, else estimated. */
  readonly aspect: number;
  /** Probability that each corner is within 0.5 % of the card's width; 1 for one set by hand. */
  readonly p: number;
  /**
   * Covariance of x0, y0, … x3, y3 in pixels and k1, 9 × 9 by rows. Edges of one side err together,
   * and that is in it.
   */
  readonly covariance: Float64Array;
}

/** What stands in the way of an outline, in one word for programs. */
export type OutlineTrouble =
  | 'no-card'
  | 'two-cards'
  | 'cut-off'
  | 'covered'
  | 'blurred'
  | 'blown-out'
  | 'too-dark'
  | 'too-small'
  | 'other-shape'
  | 'unsure';

/** Outlines that a picture may show, and what to do where the best of them is not to be trusted. */
export interface OutlineAnswer {
  /** The likeliest first, at most seven; empty where nothing looks like a card. */
  readonly hypotheses: readonly Outline[];
  /** Null where the first hypothesis has p of at least 0.5 and no other card lies beside it. */
  readonly trouble: {
    readonly what: OutlineTrouble;
    /** What is wrong and what to photograph again, whole sentences for the reader. */
    readonly words: string;
  } | null;
}

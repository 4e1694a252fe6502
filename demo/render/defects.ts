import type { Point } from './canvas.ts';
import type { Rgb } from './light.ts';

/** Corner whitening reaches in from a tip, edge whitening in from a side; `ink` was laid over it. */
export type Wear = { readonly ink?: Rgb } & (
  | {
      readonly type: 'corner';
      readonly at: 0 | 1 | 2 | 3;
      readonly reachMm: number;
      readonly seed: number;
    }
  | {
      readonly type: 'edge';
      readonly side: 'left' | 'right' | 'top' | 'bottom';
      readonly fromMm: number;
      readonly toMm: number;
      readonly depthMm: number;
      readonly seed: number;
    }
);

/** A round bite out of the card, for what is lost at its rim. */
export interface Loss {
  readonly centreMm: Point;
  readonly radiusMm: number;
}

/** How a dent falls from its rim to its bottom; each is named in `depthAt`. */
export type Profile = 'cosine' | 'gaussian' | 'cap' | 'elliptic';

/** A hollow in the card. */
export interface Dent {
  readonly centreMm: Point;
  /** Width at half the depth. */
  readonly diameterMm: number;
  readonly depthMm: number;
  readonly profile: Profile;
  /** Of the elliptic one: how much longer than wide, and turned by how much. */
  readonly stretch?: number;
  readonly turnDeg?: number;
}

/** A groove along a line, with a burr on each side. */
export interface Scratch {
  readonly polylineMm: readonly Point[];
  readonly widthMm: number;
  readonly depthMm: number;
}

/** A fold: a ridge along a line that breaks the print. */
export interface Crease {
  readonly polylineMm: readonly Point[];
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Ink or foil that is rubbed or lifted off a patch in bright broken specks. */
export interface Silvering {
  /** The middle and half the lengths of the oval that it keeps to. */
  readonly centreMm: Point;
  readonly halfMm: Point;
  /** Size of its specks, and the share of the oval's middle that they cover. */
  readonly grainMm: number;
  readonly cover: number;
  /** Light of what lies bare: near white, of no colour. */
  readonly bare: number;
  readonly seed: number;
}

/** All that is wrong with one side of a card. */
export interface Marks {
  readonly wear: readonly Wear[];
  readonly loss: readonly Loss[];
  readonly silvering: readonly Silvering[];
  readonly dents: readonly Dent[];
  readonly scratches: readonly Scratch[];
  readonly creases: readonly Crease[];
}

/** Nothing wrong. */
export const UNMARKED: Marks = {
  wear: [],
  loss: [],
  silvering: [],
  dents: [],
  scratches: [],
  creases: [],
};

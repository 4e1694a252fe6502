import type { Corners } from '../geometry/points.ts';
import type { BySide } from './sides.ts';

/** Shares of the borders in per cent, each pair adding up to 100. */
export interface Centering {
  /** Left and right border along the card's horizontal mid-line. */
  readonly leftRight: readonly [left: number, right: number];
  /** Top and bottom border along the card's vertical mid-line. */
  readonly topBottom: readonly [top: number, bottom: number];
  /** Standard error of the first share of each pair, in points. */
  readonly sd: readonly [leftRight: number, topBottom: number];
}

/** The printed frame of a card: its outermost printed line, or where art meets the border. */
export interface Frame {
  /**
   * Where the frame's lines cross in the picture, top-left of the card as it is read and on round.
   * Between them the lines bow as the lens does.
   */
  readonly corners: Corners;
  /**
   * From the cut edge to the frame along the card's mid-lines, in millimetres; null where the card's
   * size is not known.
   */
  readonly bordersMm: BySide<number> | null;
  /** One standard error of each border, in millimetres; null as the borders are. */
  readonly bordersSdMm: BySide<number> | null;
  readonly centering: Centering;
  /** Turn of the print against the card in degrees, clockwise positive. */
  readonly rotationDeg: number;
  /** One standard error of that turn, in degrees. */
  readonly rotationSdDeg: number;
}

/** The frame of a card and what of it could not be seen, or why there is none to measure. */
export type FrameAnswer =
  | { readonly frame: Frame; readonly whyNot: string | null }
  | { readonly frame: null; readonly whyNot: string };

import type { CardMap } from '../geometry/card-map.ts';
import type { Picture } from '../picture.ts';
import { coloursView } from '../rectify/rectified.ts';
import { viewOf } from '../rectify/view.ts';
import { alongSide, type CardSide, lengthOf, type SideLine } from './sides.ts';

/** A side laid flat, cut across into columns: colours by depth, then column, then channel. */
export interface Strip {
  readonly side: CardSide;
  readonly columns: number;
  readonly depths: number;
  /** Millimetres clockwise along the side at the middle of each column. */
  readonly along: Float64Array;
  /** Millimetres inwards from the line that the strip follows, of the first depth. */
  readonly from: number;
  readonly step: number;
  readonly colours: Float32Array;
}

/** The part of a side that is looked at, in millimetres. */
export interface StripShape {
  /** Left out at both ends, where the tips are round. */
  readonly ends: number;
  /** Width of a column. */
  readonly column: number;
  /** First depth, last depth, and the step between two. */
  readonly from: number;
  readonly to: number;
  readonly step: number;
  /** At most so many samples in each cell, see `View`. */
  readonly most?: readonly [across: number, down: number];
}

/** A side of a card laid flat, in linear light. */
export function stripOf(
  picture: Picture,
  map: CardMap,
  side: CardSide,
  line: SideLine,
  shape: StripShape,
): Strip {
  const end = lengthOf(side, map.sizeMm) - shape.ends;
  const view = viewOf(
    [shape.ends, shape.from - shape.step / 2],
    [end, shape.to + shape.step / 2],
    [shape.column, shape.step],
  );
  return {
    side,
    columns: view.width,
    depths: view.height,
    along: Float64Array.from(
      { length: view.width },
      (_, i) => view.originMm[0] + i * view.stepMm[0],
    ),
    from: shape.from,
    step: shape.step,
    colours: coloursView(
      picture,
      alongSide(map, side, line),
      shape.most ? { ...view, most: shape.most } : view,
    ),
  };
}

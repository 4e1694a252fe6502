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

/** A stretch of a side, in millimetres clockwise along it. */
export type Stretch = readonly [from: number, to: number];

/** The part of a side that is looked at, in millimetres. */
export interface Part {
  /** Left out at both ends, where the tips are round. */
  readonly ends: number;
  /** Stretches over which something lies; they are left out. */
  readonly covered: readonly Stretch[];
}

/** How a side is cut into cells, in millimetres. */
export interface StripShape extends Part {
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
  const whole = {
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
  return shape.covered.length > 0 ? without(whole, shape.covered) : whole;
}

/** A strip without the columns whose middle lies in one of some stretches. */
function without(strip: Strip, covered: readonly Stretch[]): Strip {
  const kept = Array.from(strip.along.keys()).filter((c) => {
    const along = strip.along[c] as number;
    return !covered.some(([from, to]) => from <= along && along <= to);
  });
  const colours = new Float32Array(kept.length * strip.depths * 3);
  for (let d = 0, i = 0; d < strip.depths; d++)
    for (const c of kept)
      for (let k = 0; k < 3; k++)
        colours[i++] = strip.colours[(d * strip.columns + c) * 3 + k] as number;
  const along = Float64Array.from(kept, (c) => strip.along[c] as number);
  return { ...strip, columns: kept.length, along, colours };
}

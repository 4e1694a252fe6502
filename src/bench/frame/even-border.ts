import { medianOf } from './fit.ts';
import { lengthOf, type SideLine } from './sides.ts';
import type { Strip } from './strip.ts';

/** Nearer to the cut edge than this, in millimetres, lie ringing, halo, shadow and the finest wear. */
const EDGE = 0.5;
/** Nearer to the line than this, in millimetres, and in depths of the strip, its blur begins. */
const LINE = 0.2;
const LINE_DEPTHS = 2;
/** At most this share of a border is left out at either end, so that a narrow one keeps a middle. */
const LEFT_OUT = 0.4;
/** Farther from the border's colour than this, over three channels on the scale of L*, is another colour. */
const ALIKE = 6;

/**
 * Share of the strip between the cut edge and a line, 0 to 1, that has one colour, light that falls
 * off evenly along the side allowed for; 0 where there is nothing between. A border keeps its colour
 * but for wear, dust and what lies over it; art that runs to the cut edge does not.
 */
export function evenShareOf(
  strip: Strip,
  line: SideLine,
  sizeMm: readonly [number, number],
): number {
  const middle = lengthOf(strip.side, sizeMm) / 2;
  const columns = Array.from({ length: strip.columns }, (_, c) =>
    columnOf(strip, c, line.depth + line.slope * ((strip.along[c] as number) - middle)),
  );
  const trends = [0, 1, 2].map((k) =>
    trendOf(columns.map((column) => medianOf(column[k] as Float64Array))),
  );
  let [alike, count] = [0, 0];
  columns.forEach((column, c) => {
    const length = (column[0] as Float64Array).length;
    for (let d = 0; d < length; d++) {
      let square = 0;
      for (let k = 0; k < 3; k++)
        square += (((column[k] as Float64Array)[d] as number) - (trends[k] as Trend)(c)) ** 2;
      if (square < ALIKE ** 2) alike++;
    }
    count += length;
  });
  return count > 0 ? alike / count : 0;
}

type Trend = (column: number) => number;

/** The light of each channel in one column, from the cut edge to the line, on the scale of L*. */
function columnOf({ columns, depths, from, step, colours }: Strip, c: number, depth: number) {
  const first = Math.ceil((Math.min(EDGE, LEFT_OUT * depth) - from) / step);
  const gap = Math.min(Math.max(LINE, LINE_DEPTHS * step), LEFT_OUT * depth);
  const last = Math.min(depths - 1, Math.floor((depth - gap - from) / step));
  return [0, 1, 2].map((k) =>
    Float64Array.from({ length: Math.max(0, last - first + 1) }, (_, i) =>
      lightnessOf(colours[((first + i) * columns + c) * 3 + k] as number),
    ),
  );
}

/** CIE 1976 lightness of a channel's light. */
function lightnessOf(light: number): number {
  return light > 216 / 24389 ? 116 * Math.cbrt(light) - 16 : (24389 / 27) * light;
}

/** A straight line through values, by the median of slopes from each to the one half way on (`theil:1950`). */
function trendOf(values: readonly number[]): Trend {
  const at = values.flatMap((value, i) => (Number.isNaN(value) ? [] : [i]));
  const half = at.length >> 1;
  const slopes = Float64Array.from({ length: half }, (_, i) => {
    const [a, b] = [at[i] as number, at[i + half] as number];
    return ((values[b] as number) - (values[a] as number)) / (b - a);
  });
  const slope = medianOf(slopes);
  const level = medianOf(Float64Array.from(at, (i) => (values[i] as number) - slope * i));
  return (column) => level + slope * column;
}

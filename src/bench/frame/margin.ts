import { medianOf } from '../../maths/index.ts';
import { lengthOf, type SideLine } from './sides.ts';
import type { Strip } from './strip.ts';

/** Nearer to the cut edge than this, in millimetres, lie ringing, halo, shadow and the finest wear. */
const EDGE = 0.5;
/** Nearer to the line than this, in millimetres, and in depths of the strip, its blur begins. */
const LINE = 0.2;
const LINE_DEPTHS = 2;
/** At most this share of a border is left out at either end, so that a narrow one keeps a middle. */
const LEFT_OUT = 0.4;

/** Shares of red, green and blue in a colour's light; they add up to 1, however bright it is lit. */
export type Tint = readonly [red: number, green: number, blue: number];

/** What a column of a strip shows between the cut edge and a line, in linear light. */
export interface MarginColumn {
  /** Light of each cell from the cut edge inwards, one list a channel. */
  readonly cells: readonly [Float64Array, Float64Array, Float64Array];
  /** The middle light of each channel; NaN where there is no cell. */
  readonly middle: readonly [number, number, number];
  /** Their sum. */
  readonly light: number;
}

/** What lies between the cut edge and a line, column by column. */
export function marginOf(
  strip: Strip,
  line: SideLine,
  sizeMm: readonly [number, number],
): readonly MarginColumn[] {
  const half = lengthOf(strip.side, sizeMm) / 2;
  return Array.from(strip.along, (along, c) =>
    columnOf(strip, c, line.depth + line.slope * (along - half)),
  );
}

function columnOf(strip: Strip, c: number, depth: number): MarginColumn {
  const { columns, depths, from, step, colours } = strip;
  const first = Math.ceil((Math.min(EDGE, LEFT_OUT * depth) - from) / step);
  const gap = Math.min(Math.max(LINE, LINE_DEPTHS * step), LEFT_OUT * depth);
  const last = Math.min(depths - 1, Math.floor((depth - gap - from) / step));
  const channel = (k: number) =>
    Float64Array.from(
      { length: Math.max(0, last - first + 1) },
      (_, i) => colours[((first + i) * columns + c) * 3 + k] as number,
    );
  const cells = [channel(0), channel(1), channel(2)] as const;
  const [r, g, b] = [medianOf(cells[0]), medianOf(cells[1]), medianOf(cells[2])];
  return { cells, middle: [r, g, b], light: r + g + b };
}

/** The tint that most columns share. */
export function tintOf(margin: readonly MarginColumn[]): Tint {
  const lit = margin.filter(({ light }) => light > 0);
  const share = (k: 0 | 1 | 2) =>
    medianOf(Float64Array.from(lit, ({ middle, light }) => middle[k] / light));
  const [r, g, b] = [share(0), share(1), share(2)];
  const sum = r + g + b;
  return [r / sum, g / sum, b / sum];
}

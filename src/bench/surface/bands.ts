import { quantileOf } from '../../maths/index.ts';
import { type BySide, bySide, type CardSide } from '../frame/sides.ts';
import type { PointMm, SizeMm } from '../geometry/points.ts';
import { type CardTones, GROUND_MM, pxOf } from './card-tones.ts';

/** A strip along one side of a card, between two depths: a row for each depth, a column for each place. */
export interface Band {
  /** Columns, and rows, to the millimetre. */
  readonly pxPerMm: number;
  readonly columns: number;
  readonly rows: number;
  /** By how much each place differs from what is usual there: `left[channel][row * columns + column]`. */
  readonly left: readonly [Float32Array, Float32Array, Float32Array];
  /** What is usual around each place, of the same channels. */
  readonly usual: readonly [Float32Array, Float32Array, Float32Array];
  /** The point of the card that a column and a row show. */
  readonly place: (column: number, row: number) => PointMm;
}

/** Stretch at each end of a side that is left to its tips, mm. */
const TIP_MM = 4.5;
const BLOCK_MM = 2.3;
const AROUND = 4;

/**
 * The strip along a side from one depth to another, mm, below 0 on the ground; null where it would
 * be narrower than half a millimetre. What is usual is found depth by depth, as the median of the
 * surrounding 18 mm, so that light that falls off, halos and lines along the side drop out.
 */
export function bandOf(
  card: CardTones,
  size: SizeMm,
  side: CardSide,
  [fromMm, toMm]: readonly [number, number],
): Band | null {
  if (toMm - fromMm < 0.5) return null;
  const lengthMm = side === 'top' || side === 'bottom' ? size[0] : size[1];
  const columns = pxOf(card, lengthMm - 2 * TIP_MM);
  const rows = pxOf(card, toMm - fromMm);
  const first = pxOf(card, fromMm + GROUND_MM);
  const { start, along, inwards } = pixelsOf(card, side, first);
  const blocks = Math.max(1, Math.floor(columns / pxOf(card, BLOCK_MM)));
  const planes = () => [0, 1, 2].map(() => new Float32Array(columns * rows));
  const [left, usual] = [planes(), planes()] as unknown as [Band['left'], Band['usual']];
  for (const channel of [0, 1, 2] as const) {
    const [here, about] = [left[channel], usual[channel]];
    for (let row = 0, i = 0; row < rows; row++)
      for (let column = 0; column < columns; column++, i++)
        here[i] = card.tones[3 * (start + column * along + row * inwards) + channel] as number;
    for (let row = 0; row < rows; row++) {
      const [from, to] = [row * columns, (row + 1) * columns];
      takeUsual(here.subarray(from, to), about.subarray(from, to), blocks);
    }
  }
  const { view, pxPerMm } = card;
  const place = (column: number, row: number): PointMm => {
    const at = start + column * along + row * inwards;
    const [x, y] = [at % view.width, Math.floor(at / view.width)];
    return [view.originMm[0] + x * view.stepMm[0], view.originMm[1] + y * view.stepMm[1]];
  };
  return { pxPerMm, columns, rows, left, usual, place };
}

/** The first pixel of a strip, and the steps from pixel to pixel along the side and inwards. */
function pixelsOf(card: CardTones, side: CardSide, first: number) {
  const { width, height } = card.view;
  const tip = pxOf(card, TIP_MM + GROUND_MM);
  const [far, down] = [width - 1 - first, height - 1 - first];
  return {
    top: { start: first * width + tip, along: 1, inwards: width },
    bottom: { start: down * width + tip, along: 1, inwards: -width },
    left: { start: tip * width + first, along: width, inwards: 1 },
    right: { start: tip * width + far, along: width, inwards: -1 },
  }[side];
}

/** Takes from a row what is usual along it, by the medians of `count` blocks, which goes to `usual`. */
function takeUsual(row: Float32Array, usual: Float32Array, count: number): void {
  const size = row.length / count;
  const blocks = Float32Array.from({ length: count }, (_, i) =>
    medianOf(row.slice(Math.round(i * size), Math.round((i + 1) * size))),
  );
  const smooth = blocks.map((_, i) => {
    const from = Math.max(0, Math.min(i - AROUND, count - 2 * AROUND - 1));
    return medianOf(blocks.slice(from, from + 2 * AROUND + 1));
  });
  for (let i = 0; i < row.length; i++) {
    const at = Math.max(0, Math.min(count - 1, (i + 0.5) / size - 0.5));
    const low = Math.min(Math.floor(at), count - 1);
    const here = smooth[low] as number;
    const next = smooth[Math.min(low + 1, count - 1)] as number;
    usual[i] = here + (at - low) * (next - here);
    row[i] = (row[i] as number) - (usual[i] as number);
  }
}

function medianOf(values: Float32Array): number {
  values.sort();
  return values[values.length >> 1] as number;
}

/** Departure from what is usual, the mean of the three channels. */
export function meanLeftOf({ left: [red, green, blue] }: Band): Float32Array {
  const mean = new Float32Array(red.length);
  for (let i = 0; i < mean.length; i++)
    mean[i] = ((red[i] as number) + (green[i] as number) + (blue[i] as number)) / 3;
  return mean;
}

/** One standard deviation of most of the values, about 0. */
export function noiseOf(values: Float32Array): number {
  const sizes: number[] = [];
  for (let i = 0; i < values.length; i += 7) sizes.push(Math.abs(values[i] as number));
  return Math.max(1.4826 * quantileOf(sizes, 0.5), 1e-3);
}

/** Scatter in tone over which a border is no plain colour but print. */
const MOST_NOISE = 0.03;
/** Change of tone from depth to depth at which something else begins. */
const MOST_CHANGE = 0.025;

/**
 * The border along each side, from beside the cut edge to before the frame, as far in as it is of
 * one colour, with the depth in mm at which that ends; null where it is narrow or not plain.
 */
export function plainBordersOf(
  card: CardTones,
  size: SizeMm,
  borders: BySide<number>,
  rotationDeg: number,
): BySide<PlainBorder | null> {
  const slope = Math.tan((Math.abs(rotationDeg) * Math.PI) / 180);
  return bySide((side) => {
    const lengthMm = side === 'top' || side === 'bottom' ? size[0] : size[1];
    const toMm = Math.min(6, borders[side] - 0.3 - (slope * lengthMm) / 2);
    const whole = bandOf(card, size, side, [FROM_MM, toMm]);
    if (!whole || noiseOf(meanLeftOf(whole)) > MOST_NOISE) return null;
    const rows = plainRowsOf(whole);
    if (rows === whole.rows) return { band: whole, toMm };
    const plainMm = FROM_MM + rows / whole.pxPerMm - 0.3;
    const band = bandOf(card, size, side, [FROM_MM, plainMm]);
    return band && { band, toMm: plainMm };
  });
}

/** A border of one colour, and the depth at which it ends, mm. */
export interface PlainBorder {
  readonly band: Band;
  readonly toMm: number;
}

const FROM_MM = 0.5;
/** The cut edge's blur reaches so much further in. */
const PAST_RIM_MM = 0.43;

function plainRowsOf(band: Band): number {
  const { usual, rows, columns } = band;
  const middles = usual.map((plane) =>
    Array.from({ length: rows }, (_, row) =>
      quantileOf(plane.subarray(row * columns, (row + 1) * columns), 0.5),
    ),
  );
  const first = Math.min(pxOf(band, PAST_RIM_MM), rows - 1);
  for (let row = first + 1; row < rows; row++)
    if (
      middles.some(
        (levels) => Math.abs((levels[row] as number) - (levels[first] as number)) > MOST_CHANGE,
      )
    )
      return row;
  return rows;
}

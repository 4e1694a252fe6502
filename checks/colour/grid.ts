import {
  type Corners,
  cardMapOf,
  cardPointOf,
  type Picture,
  pictureOf,
} from '../../src/bench/index.ts';
import type { Chance } from '../../src/maths/index.ts';
import { exposed, randomLab, type Shot } from './chart.ts';
import type { Lab } from './light.ts';

/** An invented chart as a grid of patches with bars between them. */
export interface Grid {
  readonly rows: number;
  readonly columns: number;
  readonly labs: readonly Lab[];
  /** Colour of the bars, and their share of a step. */
  readonly bars: Lab;
  readonly barShare: number;
}

/** How a grid lies in the picture: its corners, what is beneath, what covers it. */
export interface Laid {
  readonly corners: Corners;
  readonly ground: Lab;
  /** Paints a pixel over the chart; null leaves it. */
  readonly over: (x: number, y: number) => Lab | null;
}

/** Colours at random, the last row greys from light to dark, bars dark, light or none. */
export function inventedGrid(rows: number, columns: number, chance: Chance): Grid {
  const labs = Array.from({ length: rows * columns }, (_, k): Lab => {
    const column = k % columns;
    return k < (rows - 1) * columns
      ? randomLab(chance)
      : [94 - (76 * column) / Math.max(1, columns - 1), 0, 0];
  });
  const bars: Lab = [chance.uniform() < 0.5 ? 12 : 88, 0, 0];
  return { rows, columns, labs, bars, barShare: 0.06 + 0.2 * chance.uniform() };
}

/** Corners of a grid turned, tilted and shifted at random, `share` of the picture across. */
export function inventedCorners(
  { rows, columns }: Grid,
  { width, height }: Pick<Shot, 'width' | 'height'>,
  chance: Chance,
  turnDeg: number,
  share = 0.6,
): Corners {
  const scale = (share * Math.min(width, height)) / Math.hypot(rows, columns);
  const turn = ((turnDeg + 8 * chance.normal()) * Math.PI) / 180;
  const lean = [0.25 * (chance.uniform() - 0.5), 0.25 * (chance.uniform() - 0.5)] as const;
  const middle = [
    width * (0.5 + 0.1 * (chance.uniform() - 0.5)),
    height * (0.5 + 0.1 * (chance.uniform() - 0.5)),
  ] as const;
  const corner = (u: number, v: number): readonly [number, number] => {
    const depth = 1 + lean[0] * u + lean[1] * v;
    const [x, y] = [(u * columns * scale) / depth, (v * rows * scale) / depth];
    return [
      middle[0] + x * Math.cos(turn) - y * Math.sin(turn),
      middle[1] + x * Math.sin(turn) + y * Math.cos(turn),
    ];
  };
  return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
}

/** The picture of a grid as it lies, four samples a pixel. */
export function photographedGrid(grid: Grid, laid: Laid, shot: Shot, chance: Chance): Picture {
  const { width, height } = shot;
  const size = [grid.columns, grid.rows] as const;
  const map = cardMapOf(laid.corners, size, { k1: 0, width, height });
  const samples = new Uint8ClampedArray(width * height * 3);
  const sum = [0, 0, 0];
  for (let y = 0, i = 0; y < height; y++)
    for (let x = 0; x < width; x++, i += 3) {
      const over = laid.over(x, y);
      const labs = SAMPLES.map(
        ([dx, dy]) => over ?? labAt(grid, cardPointOf(map, [x + dx, y + dy])) ?? laid.ground,
      );
      sum.fill(0);
      // Where all samples see one colour, one of them is enough.
      for (const lab of labs.every((one) => one === labs[0]) ? labs.slice(0, 1) : labs)
        exposed(shot, lab, x, y).forEach((value, c) => {
          sum[c] = (sum[c] as number) + value;
        });
      const count = labs.every((one) => one === labs[0]) ? 1 : labs.length;
      for (let c = 0; c < 3; c++)
        samples[i + c] = (255 * (sum[c] as number)) / count + shot.noise * chance.normal();
    }
  return pictureOf(width, height, Uint8Array.from(samples));
}

const SAMPLES = [
  [-0.25, -0.25],
  [0.25, -0.25],
  [-0.25, 0.25],
  [0.25, 0.25],
] as const;

function labAt(grid: Grid, [x, y]: readonly [number, number]): Lab | null {
  const rim = grid.barShare / 2;
  if (x < -rim || y < -rim || x > grid.columns + rim || y > grid.rows + rim) return null;
  const [u, v] = [x - Math.floor(x), y - Math.floor(y)];
  const inside = u > rim && u < 1 - rim && v > rim && v < 1 - rim;
  if (!inside) return grid.bars;
  return grid.labs[Math.floor(y) * grid.columns + Math.floor(x)] ?? null;
}

/** How far a pixel lies from the middle of a patch, in patches. */
export function awayFrom(
  grid: Grid,
  laid: Laid,
  size: Pick<Shot, 'width' | 'height'>,
  k: number,
  pixel: readonly [number, number],
): number {
  const map = cardMapOf(laid.corners, [grid.columns, grid.rows], { k1: 0, ...size });
  const [x, y] = cardPointOf(map, pixel);
  return Math.hypot(x - (k % grid.columns) - 0.5, y - Math.floor(k / grid.columns) - 0.5);
}

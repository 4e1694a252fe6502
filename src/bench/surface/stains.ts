import { quantileOf } from '../../maths/index.ts';
import type { Defect } from '../defects.ts';
import { type BySide, type CardSide, SIDES } from '../frame/sides.ts';
import type { SizeMm } from '../geometry/points.ts';
import { boxOf } from '../wear/place-extent.ts';
import { type Band, bandOf } from './bands.ts';
import { blobsOf } from './blobs.ts';
import { boxMeanOf } from './box-mean.ts';
import { type CardTones, pxOf } from './card-tones.ts';

/** Stains of the border, and the width of the smallest that would have shown, mm. */
export interface Stains {
  readonly defects: readonly Defect[];
  readonly detectionLimitMm: number | null;
}

const SMOOTH_MM = 0.43;
const LEAST_SDS = 4.5;
const LEAST = { dark: 0.02, yellow: 0.03 };
const LEAST_MM2 = 0.8;
/** Along the side; what is shorter is a line across the border, what is longer a shadow. */
const [SHORTEST_MM, MOST_MM] = [1.2, 14];
const GROUND_FROM_TO = [-1.8, -0.7] as const;

/**
 * Stains where the border is of one colour: blotches that are darker or yellower than what is usual
 * along the side. What darkens the ground beside the card as well is a shadow or something that
 * lies over both.
 */
export function stainsOf(card: CardTones, size: SizeMm, bands: BySide<Band | null>): Stains {
  const seen = SIDES.flatMap((side) => {
    const band = bands[side];
    return band ? [{ side, ...signalsOf(band), band }] : [];
  });
  const defects = seen.flatMap(({ side, band, dark, yellow }) =>
    blotchesOf(band, dark, yellow).map((blotch) =>
      defectOf(band, blotch, beside(card, size, side, blotch)),
    ),
  );
  const faint = seen.filter(({ dark }) => dark.sd * LEAST_SDS < 0.1);
  return { defects, detectionLimitMm: faint.length > 0 ? LIMIT_MM : null };
}

/** Width of a round stain that covers the least area. */
const LIMIT_MM = 2 * Math.sqrt(LEAST_MM2 / Math.PI);

interface Signal {
  readonly values: Float32Array;
  readonly sd: number;
}

/** How much darker, and how much yellower, each place is than usual, as a share of its tone. */
function signalsOf(band: Band): { dark: Signal; yellow: Signal } {
  const { columns, rows, left, usual } = band;
  const [red, green, blue] = [0, 1, 2].map((channel) => {
    const plane = left[channel] as Float32Array;
    const about = usual[channel] as Float32Array;
    return plane.map((value, i) => value / Math.max(about[i] as number, LEAST_TONE));
  }) as [Float32Array, Float32Array, Float32Array];
  const dark = red.map((value, i) => -(value + (green[i] as number) + (blue[i] as number)) / 3);
  const yellow = red.map((value, i) => (value + (green[i] as number)) / 2 - (blue[i] as number));
  const signal = (values: Float32Array): Signal => {
    const smooth = boxMeanOf(
      { width: columns, height: rows, values },
      pxOf(band, SMOOTH_MM),
    ).values;
    const sizes = smooth.filter((_, i) => i % 7 === 0).map(Math.abs);
    return { values: smooth, sd: Math.max(1.4826 * quantileOf(sizes, 0.5), 1e-3) };
  };
  return { dark: signal(dark), yellow: signal(yellow) };
}

const LEAST_TONE = 0.08;

interface Blotch {
  readonly cells: readonly number[];
  readonly columns: readonly [from: number, to: number];
  /** Mean darkness and yellowness, as shares of the tone. */
  readonly dark: number;
  readonly yellow: number;
  /** The greater of both over its own noise. */
  readonly sds: number;
}

function blotchesOf(band: Band, dark: Signal, yellow: Signal): readonly Blotch[] {
  const [leastDark, leastYellow] = [
    Math.max(LEAST_SDS * dark.sd, LEAST.dark),
    Math.max(LEAST_SDS * yellow.sd, LEAST.yellow),
  ];
  const mask = Uint8Array.from(dark.values, (value, i) =>
    value > leastDark || (yellow.values[i] as number) > leastYellow ? 1 : 0,
  );
  const { pxPerMm } = band;
  return blobsOf(mask, band.columns).flatMap((cells) => {
    const columns = cells.map((cell) => cell % band.columns);
    const [from, to] = [Math.min(...columns), Math.max(...columns)];
    const long = to - from + 1;
    const tooSmall = cells.length < LEAST_MM2 * pxPerMm ** 2;
    if (tooSmall || long < SHORTEST_MM * pxPerMm || long > MOST_MM * pxPerMm) return [];
    const mean = (values: Float32Array) =>
      cells.reduce((sum, cell) => sum + (values[cell] as number), 0) / cells.length;
    const [d, y] = [mean(dark.values), mean(yellow.values)];
    if (d < -0.2 * y) return [];
    const sds = Math.max(d / dark.sd, y / yellow.sd);
    return [{ cells, columns: [from, to] as const, dark: d, yellow: y, sds }];
  });
}

/** By how much the ground beside a blotch is darker than along the rest of the side, as a share. */
function beside(
  card: CardTones,
  size: SizeMm,
  side: CardSide,
  { columns: [from, to] }: Blotch,
): number {
  const ground = bandOf(card, size, side, GROUND_FROM_TO);
  if (!ground) return 0;
  let [sum, whole] = [0, 1e-9];
  for (let row = 0; row < ground.rows; row++)
    for (let column = from; column <= to; column++)
      for (const channel of [0, 1, 2] as const) {
        const i = row * ground.columns + column;
        sum -= ground.left[channel][i] as number;
        whole += ground.usual[channel][i] as number;
      }
  return sum / whole;
}

function defectOf(band: Band, blotch: Blotch, ground: number): Defect {
  const points = blotch.cells.map((cell) =>
    band.place(cell % band.columns, Math.floor(cell / band.columns)),
  );
  const [x0, y0, x1, y1] = boxOf(points);
  const areaMm2 = blotch.cells.length / band.pxPerMm ** 2;
  const middle = (axis: 0 | 1) => points.reduce((sum, p) => sum + p[axis], 0) / points.length;
  return {
    kind: 'stain',
    centreMm: [middle(0), middle(1)],
    boxMm: [x0, y0, x1, y1],
    areaMm2,
    lengthMm: null,
    polygonMm: [
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
    ],
    p: probabilityOf(blotch, areaMm2, ground),
    sd: { centreMm: 0.3, areaMm2: 0.3 * areaMm2, lengthMm: null },
    seenFrom: 'still',
  };
}

/** A grey blotch that is larger may as well lie in a sleeve or in the light. Judgement, no source. */
const NEUTRAL_MM2 = 4;

function probabilityOf({ dark, yellow, sds }: Blotch, areaMm2: number, ground: number): number {
  const change = Math.max(dark, yellow, 0.01);
  const score =
    -(yellow > 0.3 * change ? 1.7 : 2.6) +
    2 * Math.log(sds / 6) +
    Math.log(Math.min(areaMm2, yellow > 0.3 * change ? 10 : NEUTRAL_MM2) / 2) +
    1.5 * Math.min(1, Math.max(0, yellow) / change) -
    6 * Math.min(1, Math.max(0, Math.abs(ground) / change - 0.15));
  return 1 / (1 + Math.exp(-score));
}

import type { Defect } from '../defects.ts';
import type { BySide } from '../frame/sides.ts';
import type { PointMm, SizeMm } from '../geometry/points.ts';
import { viewPointOf } from '../rectify/view.ts';
import { boxMeanOf } from './box-mean.ts';
import { type CardTones, GROUND_MM, pxOf } from './card-tones.ts';

/** What surrounds a spot lies so far off; a spot is narrower than a millimetre. */
const AROUND_MM = 0.86;
/** How far to each side noise is smoothed, the print's change is taken, and a spot is the lightest. */
const [SMOOTH_MM, CHANGE_MM, PEAK_MM] = [0.14, 0.43, 0.29];
const LEAST_TONE = 0.06;
/** Over how many times the usual change around it a spot must stand out. */
const LEAST_SDS = 4;
const TEXTURE_MM = 4;
/** Most that is believed of a spot that art may have, without a reference. Judgement, no source. */
const MOST_P = 0.45;
/** Spots that are told of, the surest first. */
const MOST_TOLD = 12;

const AROUND = [
  [1, 0],
  [0.7, 0.7],
  [0, 1],
  [-0.7, 0.7],
  [-1, 0],
  [-0.7, -0.7],
  [0, -1],
  [0.7, -0.7],
] as const;

/**
 * White specks inside the print: spots up to a millimetre wide that are lighter than all that lies
 * around them, in every channel, by more than the print there usually changes. Art has spots of its
 * own, so that the more alike ones there are, the less each is believed, and none as likely as not.
 *
 * @param insideMm how far inside the cut edge the print begins, along each side
 * @param white light of the card's white, red, green and blue
 */
export function printSpecksOf(
  card: CardTones,
  size: SizeMm,
  insideMm: BySide<number>,
  white: readonly number[],
): readonly Defect[] {
  const spots = spotsOf(card, size, insideMm);
  return spots
    .map((spot) => defectOf(card, spot, alikeOf(spot, spots), white))
    .filter(({ p }) => p > 0.02)
    .sort((a, b) => b.p - a.p)
    .slice(0, MOST_TOLD);
}

interface Spot {
  readonly x: number;
  readonly y: number;
  /** By how much it is lighter in tone than the lightest around. */
  readonly over: number;
  /** That over the usual change of the print around it. */
  readonly sds: number;
}

function spotsOf(
  card: CardTones,
  [width, height]: SizeMm,
  inside: BySide<number>,
): readonly Spot[] {
  const { view } = card;
  const smooth = boxMeanOf({ ...view, values: leastOf(card) }, pxOf(card, SMOOTH_MM)).values;
  const texture = textureOf(card, smooth);
  const px = (mm: number) => pxOf(card, mm + GROUND_MM);
  const steps = AROUND.map(
    ([x, y]) => pxOf(card, AROUND_MM * y) * view.width + pxOf(card, AROUND_MM * x),
  );
  const peak = pxOf(card, PEAK_MM);
  const spots: Spot[] = [];
  for (let y = px(inside.top); y < px(height - inside.bottom); y++)
    for (let x = px(inside.left); x < px(width - inside.right); x++) {
      const i = y * view.width + x;
      if (!standsOut(smooth, texture, i, steps) || !isPeak(smooth, view.width, i, peak)) continue;
      const over =
        (smooth[i] as number) - Math.max(...steps.map((step) => smooth[i + step] as number));
      spots.push({ x, y, over, sds: over / Math.max(texture[i] as number, 0.004) });
    }
  return spots;
}

/** Whether a pixel is so much lighter than all of some around it that art does not usually change so. */
function standsOut(
  smooth: Float32Array,
  texture: Float32Array,
  i: number,
  steps: readonly number[],
): boolean {
  const over = Math.max(LEAST_TONE, LEAST_SDS * (texture[i] as number));
  const least = (smooth[i] as number) - over;
  for (const step of steps) if ((smooth[i + step] as number) > least) return false;
  return true;
}

/** The darkest channel of each pixel: towards white all of them lighten. */
function leastOf({ tones }: CardTones): Float32Array {
  const least = new Float32Array(tones.length / 3);
  for (let i = 0, j = 0; i < least.length; i++, j += 3)
    least[i] = Math.min(tones[j] as number, tones[j + 1] as number, tones[j + 2] as number);
  return least;
}

/** Mean size of the change of the print from place to place, over squares of 8 mm. */
function textureOf(card: CardTones, smooth: Float32Array): Float32Array {
  const { width, height } = card.view;
  const across = pxOf(card, CHANGE_MM);
  const down = across * width;
  const change = new Float32Array(smooth.length);
  for (let i = down; i < smooth.length - down; i++)
    change[i] =
      (Math.abs((smooth[i + across] as number) - (smooth[i - across] as number)) +
        Math.abs((smooth[i + down] as number) - (smooth[i - down] as number))) /
      2;
  return boxMeanOf({ width, height, values: change }, pxOf(card, TEXTURE_MM)).values;
}

function isPeak(values: Float32Array, width: number, i: number, reach: number): boolean {
  const here = values[i] as number;
  for (let dy = -reach; dy <= reach; dy++)
    for (let dx = -reach; dx <= reach; dx++) {
      const other = values[i + dy * width + dx] as number;
      if (other > here || (other === here && dy * width + dx < 0)) return false;
    }
  return true;
}

/** How many other spots stand out at least half as much. */
function alikeOf(spot: Spot, spots: readonly Spot[]): number {
  return spots.filter((other) => other !== spot && other.over > 0.5 * spot.over).length;
}

function defectOf(
  card: CardTones,
  { x, y, over, sds }: Spot,
  alike: number,
  white: readonly number[],
): Defect {
  const { view, tones, pxPerMm } = card;
  const areaMm2 = cellsOf(card, x, y, over) / pxPerMm ** 2;
  const half = Math.sqrt(areaMm2 / Math.PI);
  const [cx, cy] = viewPointOf(view, [x, y]);
  const boxMm = [cx - half, cy - half, cx + half, cy + half] as const;
  const corners: readonly PointMm[] = [
    [boxMm[0], boxMm[1]],
    [boxMm[2], boxMm[1]],
    [boxMm[2], boxMm[3]],
    [boxMm[0], boxMm[3]],
  ];
  const at = 3 * (y * view.width + x);
  const whiteness = [0, 1, 2].reduce(
    (sum, c) => sum + Math.min(1, (tones[at + c] as number) / Math.sqrt(white[c] as number)) / 3,
    0,
  );
  return {
    kind: 'speck',
    centreMm: [cx, cy],
    boxMm,
    areaMm2,
    lengthMm: null,
    polygonMm: corners,
    p: probabilityOf(sds, whiteness, alike),
    sd: { centreMm: 0.07, areaMm2: 0.02 + 0.5 * areaMm2, lengthMm: null },
    seenFrom: 'still',
  };
}

/** Pixels within a millimetre that are lighter than half way up the spot. */
function cellsOf(card: CardTones, x: number, y: number, over: number): number {
  const { tones, view } = card;
  const reach = pxOf(card, AROUND_MM);
  const least = (i: number) =>
    Math.min(tones[3 * i] as number, tones[3 * i + 1] as number, tones[3 * i + 2] as number);
  const limit = least(y * view.width + x) - over / 2;
  let cells = 0;
  for (let dy = -reach; dy <= reach; dy++)
    for (let dx = -reach; dx <= reach; dx++)
      if (dx * dx + dy * dy <= reach ** 2 && least((y + dy) * view.width + x + dx) > limit) cells++;
  return Math.max(1, cells);
}

/** Weights are judgement, no source; the method page says how many spots of clean cards pass. */
function probabilityOf(sds: number, whiteness: number, alike: number): number {
  const odds =
    Math.exp(-3 + 1.5 * Math.log(sds / LEAST_SDS) + 4 * (whiteness - 0.8)) / (1 + alike) ** 1.5;
  return Math.min(MOST_P, odds / (1 + odds));
}

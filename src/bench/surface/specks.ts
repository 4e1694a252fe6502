import type { Defect } from '../defects.ts';
import { type BySide, SIDES } from '../frame/sides.ts';
import type { PointMm, SizeMm } from '../geometry/points.ts';
import { boxOf } from '../wear/place-extent.ts';
import { type Band, bandOf, meanLeftOf, noiseOf } from './bands.ts';
import { blobsOf } from './blobs.ts';
import type { CardTones } from './card-tones.ts';

/** White specks of the border, and the width of the smallest that would have shown, mm. */
export interface Specks {
  readonly defects: readonly Defect[];
  readonly detectionLimitMm: number | null;
}

const LEAST_SDS = 5;
const LEAST_TONE = 0.03;
/** Longer ones are hairs, letters or wear. Judgement, no source. */
const MOST_MM = 1.6;
/** Least way in tone from the border to white at which a white speck can show. Judgement, no source. */
const LEAST_CONTRAST = 0.12;
const GROUND_FROM_TO = [-1.9, -0.9] as const;

/**
 * White specks where the border is of one colour. In a scan the dust on the glass looks the same:
 * its rate is learned from the ground round the card, and none is as likely as not.
 *
 * @param bands the border along each side; null where there is too little
 * @param white light of the card's white, red, green and blue
 */
export function specksOf(
  card: CardTones,
  size: SizeMm,
  bands: BySide<Band | null>,
  white: readonly number[],
  onGlass: boolean,
): Specks {
  const found = SIDES.flatMap((side) => {
    const band = bands[side];
    return band ? lightBlobsOf(band, white) : [];
  });
  const share = onGlass ? Math.min(MOST_ON_GLASS, notDustOf(card, size, bands, found.length)) : 1;
  const widths = SIDES.flatMap((side) => {
    const band = bands[side];
    const width = band && limitOf(band, white);
    return width ? [width] : [];
  });
  return {
    defects: found.map((blob) => defectOf(blob, share, card.pxPerMm)),
    detectionLimitMm: widths.length > 0 && share >= 0.5 ? Math.max(...widths) : null,
  };
}

interface Blob {
  readonly points: readonly PointMm[];
  /** Share of the way to white at each point. */
  readonly shares: readonly number[];
  /** Greatest departure in tone over the noise of the band. */
  readonly sds: number;
}

function lightBlobsOf(band: Band, white: readonly number[]): readonly Blob[] {
  if (contrastOf(band, white) < LEAST_CONTRAST) return [];
  const { columns, rows, left, usual } = band;
  const mean = meanLeftOf(band);
  const sd = noiseOf(mean);
  const least = Math.max(LEAST_SDS * sd, LEAST_TONE);
  const mask = Uint8Array.from(mean, (value) => (value > least ? 1 : 0));
  return blobsOf(mask, columns).flatMap((cells) => {
    const at = cells.map((cell) => [cell % columns, Math.floor(cell / columns)] as const);
    const touches = at.some(([x, y]) => y === 0 || y === rows - 1 || x === 0 || x === columns - 1);
    if (touches || spanOf(at) > MOST_MM * band.pxPerMm) return [];
    const peak = Math.max(...cells.map((cell) => mean[cell] as number));
    const sums = left.map((plane) => cells.reduce((sum, cell) => sum + (plane[cell] as number), 0));
    // Towards white no channel darkens.
    if (Math.min(...sums) < -0.25 * Math.max(...sums)) return [];
    const shares = cells.map((cell) => whitenessAt(left, usual, white, cell));
    return [{ points: at.map(([x, y]) => band.place(x, y)), shares, sds: peak / sd }];
  });
}

function spanOf(at: readonly (readonly [number, number])[]): number {
  const [x0, y0, x1, y1] = boxOf(at);
  return Math.max(x1 - x0, y1 - y0) + 1;
}

/** Share of the way from the usual light to white, over the three channels. */
function whitenessAt(
  left: Band['left'],
  usual: Band['usual'],
  white: readonly number[],
  cell: number,
): number {
  let [gone, way] = [0, 0];
  for (const channel of [0, 1, 2] as const) {
    const from = usual[channel][cell] as number;
    const here = from + (left[channel][cell] as number);
    gone += here * here - from * from;
    way += Math.max((white[channel] as number) - from * from, 0.01);
  }
  return gone / way;
}

function contrastOf({ usual }: Band, white: readonly number[]): number {
  const steps = usual.map((plane, channel) => {
    const middle = plane[plane.length >> 1] as number;
    return Math.sqrt(white[channel] as number) - middle;
  });
  return steps.reduce((sum, step) => sum + step, 0) / 3;
}

/**
 * Share of the specks found that dust on the glass does not explain, from the specks that the
 * ground round the card shows, light or dark; little where the ground could not show any.
 */
function notDustOf(
  card: CardTones,
  size: SizeMm,
  bands: BySide<Band | null>,
  found: number,
): number {
  if (found === 0) return 1;
  const grounds = SIDES.flatMap((side) => bandOf(card, size, side, GROUND_FROM_TO) ?? []);
  const plain = grounds.filter((band) => noiseOf(meanLeftOf(band)) < LEAST_TONE / 3);
  if (plain.length === 0) return UNKNOWN_DUST;
  const seen = plain.reduce((sum, band) => sum + dustOf(band), 0);
  const cells = (list: readonly (Band | null)[]) =>
    list.reduce((sum, band) => sum + (band ? band.rows * band.columns : 0), 0);
  const ratio = cells(Object.values(bands)) / cells(plain);
  // Half a speck more than was seen, as none seen does not mean that there is none.
  const expected = (seen + 0.5) * ratio;
  const spread = Math.sqrt(expected) / 2;
  return Math.max(0, Math.min(1, (found - expected - spread) / found));
}

/** Dust lies where it likes: one scan never makes a speck of the card likelier than not. Judgement, no source. */
export const MOST_ON_GLASS = 0.45;

/** What is believed of a speck in a scan whose ground shows no dust. Judgement, no source. */
const UNKNOWN_DUST = 0.3;

function dustOf(band: Band): number {
  const mean = meanLeftOf(band);
  const least = Math.max(LEAST_SDS * noiseOf(mean), LEAST_TONE / 2);
  const mask = Uint8Array.from(mean, (value) => (Math.abs(value) > least ? 1 : 0));
  return blobsOf(mask, band.columns).length;
}

function defectOf({ points, shares, sds }: Blob, notDust: number, pxPerMm: number): Defect {
  const whole = shares.reduce((sum, share) => sum + share, 0);
  // A speck so small that blur spreads it reaches no full white; its light is kept in the sum.
  const areaMm2 = whole / pxPerMm ** 2 / Math.max(PAPER, Math.max(...shares));
  const weighed = (axis: 0 | 1) =>
    points.reduce((sum, point, i) => sum + point[axis] * (shares[i] as number), 0) / whole;
  const [x0, y0, x1, y1] = boxOf(points);
  const half = 0.5 / pxPerMm;
  const boxMm = [x0 - half, y0 - half, x1 + half, y1 + half] as const;
  return {
    kind: 'speck',
    centreMm: [weighed(0), weighed(1)],
    boxMm,
    areaMm2,
    lengthMm: null,
    polygonMm: [
      [boxMm[0], boxMm[1]],
      [boxMm[2], boxMm[1]],
      [boxMm[2], boxMm[3]],
      [boxMm[0], boxMm[3]],
    ],
    p: notDust * probabilityOf(sds, areaMm2, Math.max(...shares)),
    sd: { centreMm: 0.05, areaMm2: 0.01 + 0.25 * areaMm2, lengthMm: null },
    seenFrom: 'still',
  };
}

/** Whiteness of bare paper, as a share of the card's white. Judgement, no source. */
const PAPER = 0.8;

function probabilityOf(sds: number, areaMm2: number, peak: number): number {
  const score =
    -1 + 2 * Math.log(sds / 8) + 0.8 * Math.log(areaMm2 / 0.05) + 3 * (Math.min(peak, 1) - 0.2);
  return 1 / (1 + Math.exp(-score));
}

/** Width of the smallest white disc whose light, spread by blur, still passes the threshold. */
function limitOf(band: Band, white: readonly number[]): number | null {
  const contrast = contrastOf(band, white);
  if (contrast < LEAST_CONTRAST) return null;
  const least = Math.max(1.6 * LEAST_SDS * noiseOf(meanLeftOf(band)), LEAST_TONE);
  return Math.max(BLUR_MM * Math.sqrt(Math.min(1, least / contrast)), 1 / band.pxPerMm);
}

/** Width over which a small speck is spread. Judgement, no source. */
const BLUR_MM = 0.35;

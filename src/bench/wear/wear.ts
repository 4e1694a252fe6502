import { quantileOf } from '../../maths/index.ts';
import type { Defect } from '../defects.ts';
import type { BySide } from '../frame/sides.ts';
import { type CardMap, pixelsPerMm } from '../geometry/card-map.ts';
import type { Picture } from '../picture.ts';
import { borderColourOf } from './border-colour.ts';
import { borderRowsOf } from './border-rows.ts';
import { type BorderStrip, borderStripOf } from './border-strip.ts';
import { cardWhiteOf } from './card-white.ts';
import { cutEdgesOf } from './cut-edge.ts';
import { lostCardOf } from './lost-card.ts';
import { movedTo, type SideEdge } from './moved-rays.ts';
import { onPaleBorder } from './pale-border.ts';
import { extentOf, type PlaceExtent } from './place-extent.ts';
import { featuresOf, type PlaceFeatures, unrestOf } from './place-features.ts';
import { type RimColour, rimColourOf } from './rim-colour.ts';
import { raysOf } from './round-outline.ts';
import { tipRadiusOf } from './tip-radius.ts';
import { noiseOf, usualOf, type Whiteness, whitenessOf } from './whiteness.ts';
import { type Excess, excessOf, type WornPlace, wornPlacesOf } from './worn-places.ts';

/** Worn corners and edges of one side of a card, and what its picture could not show. */
export interface Wear {
  readonly defects: readonly Defect[];
  /** Radius of the round tips, mm. */
  readonly tipRadiusMm: number;
  /** Side of the smallest worn patch that the picture could show, mm; null where it shows none. */
  readonly detectionLimitMm: number | null;
  /** Length of the shortest bite out of the card that it could show, mm; null where it shows none. */
  readonly lossLimitMm: number | null;
  /** Null where the border is not of one colour. */
  readonly rim: RimColour | null;
}

/** Depth about which the rays of a tip turn: deeper than wear goes. */
const REACH_MM = 3.5;
/** Millimetres from row to row, and least pixels of the picture: more rows would see nothing more. */
const [STEP_MM, STEP_PX] = [0.05, 0.4];
const ALONG_MM = 0.1;
/** Change of colour, as a share of the way to white, from which a place is not of the border's colour. */
const AWAY = 0.12;
/** Noise alone stays below so many of its standard deviations, also beside a pale border. */
const NOISE_SDS = 6;
/** Share of the border that may be of another colour, and it still counts as of one. Judgement, no source. */
const PLAIN = 0.2;
/** Least contrast of white against the border at which whitening can show. Judgement, no source. */
const LEAST_CONTRAST = 0.12;

/**
 * Whitening of corners and edges: places that touch the cut edge and have gone from the border's
 * colour towards white, or where it is itself nearly white to any other, more than is usual along
 * their side. Blind for a side that is worn along more than six tenths of its length at one depth.
 *
 * @param borders least depth of the frame along each side, mm; null where none was found, so that art
 * may reach the cut edge
 */
export function wearOf(picture: Picture, map: CardMap, borders: BySide<number> | null): Wear {
  const edges = cutEdgesOf(sidesOf(picture, map));
  const tipRadiusMm = tipRadiusOf(picture, map, edges);
  const strip = alignedStripOf(picture, map, edges, tipRadiusMm);
  const [border, white] = [borderColourOf(strip), cardWhiteOf(picture, map)];
  const towards = whitenessOf(strip, border, white);
  // Where art reaches the edge, a change of tone is more likely art.
  const whiteness = borders ? onPaleBorder(strip, border, towards) : towards;
  const away = awayOf(whiteness);
  const limit = Math.max(AWAY, NOISE_SDS * noiseOf(strip, whiteness.share));
  const borderRows = borderRowsOf(strip, map, away, limit, borders);
  const excess = excessOf(strip, whiteness.share, usualOf(strip, whiteness.share));
  const cardUnrest = unrestOf({ strip, away, limit, borderRows });
  const plain = borders !== null && cardUnrest < PLAIN;
  const defects = wornPlacesOf(strip, excess, borderRows).flatMap((place) => {
    const features = featuresOf(
      { strip, whiteness, excess, borderRows, away, limit, cardUnrest },
      place,
    );
    return defectOf(strip, excess, place, features, plain);
  });
  const lost = plain ? lostCardOf(strip, border, white) : { defects: [], detectionLimitMm: null };
  return {
    defects: [
      ...defects.filter((one) => !lost.defects.some((other) => covers(other, one))),
      ...lost.defects,
    ],
    lossLimitMm: lost.detectionLimitMm,
    rim: plain ? rimColourOf(strip, white) : null,
    tipRadiusMm,
    detectionLimitMm: limitOf(strip, whiteness.contrast, excess),
  };
}

/** How far each place of a strip is from the border's colour, towards white or not. */
function awayOf({ share, rest }: Whiteness): Float32Array {
  const away = new Float32Array(share.length);
  for (let i = 0; i < away.length; i++)
    away[i] = Math.abs(share[i] as number) + (rest[i] as number);
  return away;
}

/** The sides unrolled near the given outline. */
function sidesOf(picture: Picture, map: CardMap): BorderStrip {
  const rays = raysOf(map.sizeMm, REACH_MM, REACH_MM, 4 * ALONG_MM);
  const nearEdge = { fromMm: -0.5, toMm: 0.6, stepMm: STEP_MM };
  const sides = rays.filter(({ part }) => part % 2 === 0);
  return borderStripOf(picture, map, sides, nearEdge);
}

/** The border unrolled from its cut edge, however the outline was a little off. */
function alignedStripOf(
  picture: Picture,
  map: CardMap,
  edges: readonly SideEdge[],
  radius: number,
): BorderStrip {
  const rays = movedTo(edges, raysOf(map.sizeMm, radius, REACH_MM, ALONG_MM));
  const stepMm = Math.max(STEP_MM, STEP_PX / pixelsPerMm(map));
  return borderStripOf(picture, map, rays, { fromMm: -0.8, toMm: 2.8, stepMm });
}

function defectOf(
  strip: BorderStrip,
  excess: Excess,
  place: WornPlace,
  features: PlaceFeatures,
  plain: boolean,
): readonly Defect[] {
  const extent = extentOf(strip, excess, place, features.plateau);
  if (!extent || extent.areaMm2 < Math.max(0.02, LEAST_DEPTH_MM * extent.lengthMm)) return [];
  const { areaMm2, lengthMm } = extent;
  const p = probabilityOf(features, extent, plain);
  const sd = { centreMm: 0.05, areaMm2: 0.02 + 0.05 * areaMm2, lengthMm: 2 * ALONG_MM };
  return [{ ...extent, wear: 'whitening', areaMm2, lengthMm, p, sd, seenFrom: 'still' }];
}

/**
 * Logistic regression (`cox:1958`) on worn cards and on what looked like wear on others; the method page
 * says on which pictures.
 */
function probabilityOf(
  { plateau, firmness, tint, unrest, overlap, fills }: PlaceFeatures,
  { areaMm2, lengthMm, kind }: PlaceExtent,
  plain: boolean,
): number {
  const score =
    0.6 +
    0.23 * Math.log(Math.min(firmness, 200) / 10) +
    1.1 * Math.log(areaMm2 / 0.3) -
    1.7 * Math.min(tint, 1.5) -
    4.8 * Math.sqrt(unrest) -
    4.5 * overlap -
    (kind === 'edge-wear' ? 6.7 * Math.max(0, fills - 0.5) : 0) -
    (areaMm2 < SLIVER_MM * lengthMm ? 3.8 : 0) +
    3.3 * Math.min(plateau, 1) -
    (plain ? 0 : 1.3 + 2.4 * Math.min(tint, 1.5) + (areaMm2 < SPOT_MM2 ? 3 : 0));
  return 1 / (1 + Math.exp(-score));
}

/** What is thinner on average is the edge's own blur, or its side face. */
const LEAST_DEPTH_MM = 0.08;
/** What is thinner all along may be a tip of another radius, or a lit side face. */
const SLIVER_MM = 0.13;
/** So small a place is a spot of the art where that reaches the cut edge. */
const SPOT_MM2 = 0.5;

/** A worn square is seen once it spans the blur beside the edge and stands out five times. */
function limitOf(strip: BorderStrip, contrast: Float32Array, excess: Excess): number | null {
  if (quantileOf(contrast, 0.5) < LEAST_CONTRAST) return null;
  const row = Math.round((0.2 - strip.firstMm) / strip.stepMm);
  const sds = strip.rays.map((_, column) => excess.sd[column * strip.rows + row] as number);
  return 0.2 + 0.5 * Math.min(1, 5 * quantileOf(sds, 0.5));
}

/** Whether a likely bite explains a whitened place: the torn rim of paper about it is part of it. */
function covers(lost: Defect, { centreMm: [x, y] }: Defect): boolean {
  const [x0, y0, x1, y1] = lost.boxMm;
  return lost.p >= 0.5 && x > x0 && x < x1 && y > y0 && y < y1;
}

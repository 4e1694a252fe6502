import { type CardMap, pixelsPerMm } from '../geometry/card-map.ts';
import type { Picture } from '../picture.ts';
import { coloursView } from '../rectify/rectified.ts';
import { cardViewOf, type View } from '../rectify/view.ts';

/** A card and the ground around it seen straight down, sampled once for all marks of a still picture. */
export interface CardTones {
  readonly view: View;
  /** Pixels of the view to the millimetre. */
  readonly pxPerMm: number;
  /** Square root of linear light of red, green and blue, interleaved: shot noise is even in it. */
  readonly tones: Float32Array;
}

/** Few pixels leave the filters no room; more than the picture has would show nothing more. */
const [LEAST_PX_PER_MM, MOST_PX_PER_MM] = [3.5, 7];
/** Ground around the card that is seen, mm. */
export const GROUND_MM = 2;

/** The card's tones, one sample a pixel, no finer than the picture. */
export function cardTonesOf(picture: Picture, map: CardMap): CardTones {
  const pxPerMm = Math.min(MOST_PX_PER_MM, Math.max(LEAST_PX_PER_MM, pixelsPerMm(map)));
  const view = { ...cardViewOf(map.sizeMm, pxPerMm, GROUND_MM), most: [1, 1] as const };
  const tones = coloursView(picture, map, view);
  for (let i = 0; i < tones.length; i++) tones[i] = Math.sqrt(tones[i] as number);
  return { view, pxPerMm, tones };
}

/** The whole number of pixels nearest to a length in mm. */
export function pxOf({ pxPerMm }: Pick<CardTones, 'pxPerMm'>, mm: number): number {
  return Math.round(mm * pxPerMm);
}

import type { CardMap } from '../geometry/card-map.ts';
import type { Picture } from '../picture.ts';
import { coloursView } from '../rectify/rectified.ts';
import { cardViewOf, type View } from '../rectify/view.ts';

/** A card and the ground around it seen straight down, sampled once for all marks of a still picture. */
export interface CardTones {
  readonly view: View;
  /** Square root of linear light of red, green and blue, interleaved: shot noise is even in it. */
  readonly tones: Float32Array;
}

/** Pixels of the view to the millimetre. */
export const TONES_PX_PER_MM = 7;
/** Ground around the card that is seen, mm. */
export const GROUND_MM = 2;

/** The card's tones, one sample a pixel. */
export function cardTonesOf(picture: Picture, map: CardMap): CardTones {
  const view = { ...cardViewOf(map.sizeMm, TONES_PX_PER_MM, GROUND_MM), most: [1, 1] as const };
  const tones = coloursView(picture, map, view);
  for (let i = 0; i < tones.length; i++) tones[i] = Math.sqrt(tones[i] as number);
  return { view, tones };
}

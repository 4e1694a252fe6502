import { type Corners, distanceBetween } from '../geometry/points.ts';
import type { Picture } from '../picture.ts';
import { fineOutline, outlineOf } from './answer.ts';
import { outlineByHand } from './by-hand.ts';
import type { Outline, OutlineKnown } from './types.ts';

/** Share of a card's diagonal by which a hand-set corner may be off. Judgement, no source. */
const HAND_ERROR = 0.006;

/**
 * The outline near one that a user set, drawn onto the edges that run within about a millimetre of
 * it, in the same order of corners; the hand-set one itself where no edges run there.
 * @throws RangeError where the corners do not go round a card clockwise.
 */
export function refitOutline(picture: Picture, corners: Corners, known: OutlineKnown): Outline {
  const byHand = outlineByHand(picture, corners, known);
  const error = Math.max(2, HAND_ERROR * distanceBetween(corners[0], corners[2]));
  const fine = fineOutline(picture, corners, known, error);
  return fine ? outlineOf(fine, known, 1, 0) : byHand;
}

import { cardMapOf } from '../geometry/card-map.ts';
import { findOutline } from '../outline/find.ts';
import type { OutlineKnown } from '../outline/types.ts';
import type { Picture } from '../picture.ts';
import { loneScratchesOf } from '../surface/lone-scratches.ts';
import type { Placed, Scratches } from '../surface/scratch-marks.ts';
import { scratchesOf } from '../surface/scratches.ts';
import type { RakingPicture } from './types.ts';

/**
 * Scratches of a picture under a low lamp: with the face's own picture as its twin under soft light
 * where both are of one size, and so by one camera that stood still; alone where the face's picture
 * is the very same, or of another size. Null where no card is found in a picture of another size.
 */
export function scratchesUnder(
  { picture, azimuthDeg }: RakingPicture,
  face: Placed,
  known: OutlineKnown,
): Scratches | null {
  if (isSame(picture, face.picture)) return loneScratchesOf(face, azimuthDeg);
  const { width, height } = face.picture;
  if (picture.width === width && picture.height === height)
    return scratchesOf({ picture, map: face.map }, face, azimuthDeg);
  const { hypotheses, trouble } = findOutline(picture, known);
  const [outline] = hypotheses;
  if (!outline || trouble || outline.sizeMm === null) return null;
  const map = cardMapOf(outline.corners, outline.sizeMm, outline.lens);
  return loneScratchesOf({ picture, map }, azimuthDeg);
}

function isSame(one: Picture, other: Picture): boolean {
  return one.width === other.width && one.samples.every((value, i) => value === other.samples[i]);
}

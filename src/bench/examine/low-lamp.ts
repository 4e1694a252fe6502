import type { Defect } from '../defects.ts';
import { cardMapOf } from '../geometry/card-map.ts';
import { distanceTo } from '../hints/crease-likeness.ts';
import { type ReliefHint, reliefHintsOf } from '../hints/hints.ts';
import { findOutline } from '../outline/find.ts';
import type { OutlineKnown } from '../outline/types.ts';
import type { Picture } from '../picture.ts';
import { loneScratchesOf } from '../surface/lone-scratches.ts';
import type { Placed, Scratches } from '../surface/scratch-marks.ts';
import { scratchesOf } from '../surface/scratches.ts';
import type { Limit, RakingPicture } from './types.ts';

/** Marks that a low lamp showed, and the smallest that it would have shown. */
export interface LitMarks {
  readonly defects: readonly Defect[];
  readonly limits: readonly Limit[];
}

/**
 * Scratches of a picture under a low lamp, and hints of relief: with the face's own picture as its
 * twin under soft light where both are of one size, and so by one camera that stood still. Alone,
 * where the face's picture is the very same or of another size, it shows scratches only. Nothing
 * where no card is found in a picture of another size.
 */
export function marksUnder(
  { picture, azimuthDeg }: RakingPicture,
  face: Placed,
  known: OutlineKnown,
): LitMarks {
  if (isTwin(picture, face.picture)) {
    const low = { picture, map: face.map };
    const { defects, limits } = scratched(scratchesOf(low, face, azimuthDeg), 'all over');
    const hints = reliefHintsOf(low, face, azimuthDeg);
    const scratches = defects.filter((one) => !hints.defects.some((hint) => liesAlong(one, hint)));
    return { defects: [...scratches, ...hints.defects], limits: [...limits, ...hints.limits] };
  }
  if (isSame(picture, face.picture)) return alone(loneScratchesOf(face, azimuthDeg));
  const { hypotheses, trouble } = findOutline(picture, known);
  const [outline] = hypotheses;
  if (!outline || trouble || outline.sizeMm === null) return { defects: [], limits: [] };
  const map = cardMapOf(outline.corners, outline.sizeMm, outline.lens);
  return alone(loneScratchesOf({ picture, map }, azimuthDeg));
}

/** Whether a picture under a low lamp is by the camera of another under soft light, which stood still. */
export function isTwin(low: Picture, soft: Picture): boolean {
  return low.width === soft.width && low.height === soft.height && !isSame(low, soft);
}

/** Without a twin scratches are lost among lines of the print. */
function alone(found: Scratches): LitMarks {
  return scratched(found, 'where print is plain');
}

function scratched({ defects, detectionLimitMm: mm }: Scratches, where: Limit['where']): LitMarks {
  return { defects, limits: mm === null ? [] : [{ kinds: ['scratch'], where, mm }] };
}

/** Whether a scratch is a likely fold's own flank, or the rim of a likely dent. */
function liesAlong(
  { polygonMm }: Defect,
  { kind, p, polygonMm: shape, boxMm }: ReliefHint,
): boolean {
  if (p < 0.5) return false;
  const [x0, y0, x1, y1] = boxMm;
  const on = polygonMm.filter(([x, y]) =>
    kind === 'crease' ? distanceTo(shape, [x, y]) < 1 : x > x0 && x < x1 && y > y0 && y < y1,
  );
  return on.length > polygonMm.length / 2;
}

function isSame(one: Picture, other: Picture): boolean {
  return one.width === other.width && one.samples.every((value, i) => value === other.samples[i]);
}

import { frameOf } from '../frame/frame.ts';
import { cardMapOf } from '../geometry/card-map.ts';
import { findOutline } from '../outline/find.ts';
import type { Outline, OutlineTrouble } from '../outline/types.ts';
import type { Picture } from '../picture.ts';
import { wearOf } from '../wear/wear.ts';
import { sizeOf } from './size.ts';
import type { CopyKnown, FaceAnswer } from './types.ts';

/** Troubles that leave no outline worth proposing. */
const NOTHING_TO_PROPOSE: readonly OutlineTrouble[] = [
  'no-card',
  'two-cards',
  'cut-off',
  'blown-out',
  'too-dark',
  'too-small',
];

/** Measures one face of a copy. */
export function faceOf(picture: Picture, copy: CopyKnown): FaceAnswer {
  const known = { sizeMm: copy.sizeMm, dpi: copy.dpi ?? picture.dpi };
  const { hypotheses, trouble } = findOutline(picture, known);
  const looks = [known.dpi === null ? ('photo' as const) : ('scan' as const)];
  const [outline] = hypotheses;
  if (!outline || trouble)
    return {
      outline: outline && !NOTHING_TO_PROPOSE.includes(trouble?.what ?? 'no-card') ? outline : null,
      hypotheses,
      trouble: trouble?.what ?? 'no-card',
      size: null,
      frame: null,
      defects: [],
      limits: [],
      looks: [],
      whyNot: trouble?.words ?? null,
    };
  const { frame, whyNot } = frameOf(picture, outline);
  return {
    outline,
    hypotheses,
    trouble: null,
    size: sizeOf(outline, known),
    frame,
    ...marksOf(picture, outline),
    looks,
    whyNot,
  };
}

/** Marks and what the picture could not show of them; none where no millimetres are known. */
function marksOf(picture: Picture, outline: Outline): Pick<FaceAnswer, 'defects' | 'limits'> {
  if (outline.sizeMm === null) return { defects: [], limits: [] };
  const map = cardMapOf(outline.corners, outline.sizeMm, outline.lens);
  const { defects, detectionLimitMm: mm } = wearOf(picture, map);
  return {
    defects,
    limits: mm === null ? [] : [{ kinds: ['corner-wear', 'edge-wear'], mm }],
  };
}

import type { CopyKnown, FaceAnswer } from '../examine/types.ts';
import { recolouredSign } from './recoloured.ts';
import type { Sign } from './sign.ts';
import { swappedBackSign } from './swapped-back.ts';
import { trimmedSign } from './trimmed.ts';

/**
 * Signs of alteration that the pictures of one copy can show without a reference: a size below the
 * product's, where it was told and a scan measured it, a rim of another colour than its border, and
 * front and back that disagree. A sign that
 * could not be looked for is left out.
 */
export function signsOf(
  front: FaceAnswer,
  back: FaceAnswer | null,
  { sizeMm }: Pick<CopyKnown, 'sizeMm'>,
): readonly Sign[] {
  const { size, frame } = front;
  const borders = frame?.bordersMm;
  const trimmed =
    sizeMm && size?.from === 'dpi' && size.sdMm
      ? [
          trimmedSign(
            [
              {
                mm: size.mm[0],
                sdMm: size.sdMm[0],
                borderDifference: borders ? borders.left - borders.right : null,
              },
              {
                mm: size.mm[1],
                sdMm: size.sdMm[1],
                borderDifference: borders ? borders.top - borders.bottom : null,
              },
            ],
            sizeMm,
            [],
          ),
        ]
      : [];
  const swapped = back && swappedBackSign(front, back);
  const inked = [front, back].flatMap((face) => (face?.rim ? [recolouredSign(face.rim, [])] : []));
  return [...trimmed, ...strongest(inked), ...(swapped ? [swapped] : [])];
}

/** Of both faces' rims the one that speaks loudest: colour was laid on one of them or on none. */
function strongest(signs: readonly Sign[]): readonly Sign[] {
  return [...signs].sort((a, b) => b.log10Lr - a.log10Lr).slice(0, 1);
}

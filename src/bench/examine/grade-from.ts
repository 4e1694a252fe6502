import { gradeOf } from '../grade/grade.ts';
import { amountsOf, type Face } from '../grade/measured.ts';
import { type Setting, settingOf } from '../grade/setting.ts';
import type { Amount, Side } from '../grade/types.ts';
import type { Examination, FaceAnswer } from './types.ts';

type Faces = Pick<Examination, 'front' | 'back'>;

const STEPS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10'];

/** Ten steps of no service, every one as likely as the next before anything is measured. */
export function plainSetting(): Setting {
  return settingOf({ service: 'ten steps', grades: STEPS }, [], [], [], []);
}

/** Amounts of every measure on both faces, as limits and words speak of them. */
export function amountsOfFaces(faces: Faces): readonly Amount[] {
  return (['front', 'back'] as const).flatMap((side) => {
    const face = faces[side];
    return face ? amountsOf(measured(side, face)) : [];
  });
}

/** The grades that what was measured could mean. */
export function gradeFrom(
  faces: Faces,
  { scale, limits, selection }: Setting,
): Examination['grade'] {
  return gradeOf(amountsOfFaces(faces), scale, limits, selection.shares);
}

function measured(side: Side, { looks, defects, frame }: FaceAnswer): Face {
  if (!frame) return { side, looks, defects, centering: null };
  const { leftRight, topBottom, sd } = frame.centering;
  const wider = [Math.max(...leftRight), Math.max(...topBottom)] as const;
  return { side, looks, defects, centering: { wider, sd } };
}

import { compareWithWords, type Described } from '../described/described.ts';
import { type Meaning, USUAL_WORDS } from '../described/words.ts';
import { amountsOfFaces, gradeFrom, plainSetting } from '../examine/grade-from.ts';
import type { Examination, FaceAnswer } from '../examine/types.ts';
import { cardMapOf } from '../geometry/card-map.ts';
import type { GradeAnswer } from '../grade/grade.ts';
import type { Setting } from '../grade/setting.ts';
import type { Annotation } from '../marks/annotation.ts';
import { type Mark, marksOf, weighedMarks } from '../marks/marks.ts';

/** What others and the collector say of a copy, beside what was measured. */
export interface Told {
  /** Marks set by hand, of each face's picture. */
  readonly annotations: {
    readonly front: readonly Annotation[];
    readonly back: readonly Annotation[];
  };
  /** The seller's own words; empty where there are none. */
  readonly listing: string;
  /** What condition words mean; empty: the usual ones. */
  readonly words: readonly Meaning[];
  /** What a grade rests on; null: ten steps of no service. */
  readonly setting: Setting | null;
}

/** What pictures, hands and the seller's words come to. */
export interface CopyReport {
  readonly marks: { readonly front: readonly Mark[]; readonly back: readonly Mark[] };
  readonly grade: GradeAnswer;
  /** Null where the seller said nothing. */
  readonly described: Described | null;
}

type Faces = Pick<Examination, 'front' | 'back'>;

/** Weighs what was measured with what hands said of it, and holds the seller's words against it. */
export function reportOf(faces: Faces, told: Told): CopyReport {
  const front = marksOn(faces.front, told.annotations.front);
  const back = faces.back ? marksOn(faces.back, told.annotations.back) : [];
  const weighed: Faces = {
    front: { ...faces.front, defects: weighedMarks(front) },
    back: faces.back && { ...faces.back, defects: weighedMarks(back) },
  };
  const words = told.words.length > 0 ? told.words : USUAL_WORDS;
  return {
    marks: { front, back },
    grade: gradeFrom(weighed, told.setting ?? plainSetting()),
    described: told.listing ? compareWithWords(told.listing, words, amountsOfFaces(weighed)) : null,
  };
}

function marksOn(
  { outline, defects }: FaceAnswer,
  annotations: readonly Annotation[],
): readonly Mark[] {
  // Without millimetres a place set by hand is nowhere on the card.
  if (!outline?.sizeMm) return marksOf(defects, [], null);
  return marksOf(defects, annotations, cardMapOf(outline.corners, outline.sizeMm, outline.lens));
}

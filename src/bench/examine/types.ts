import type { Sign } from '../alteration/sign.ts';
import type { Defect, DefectKind } from '../defects.ts';
import type { Frame } from '../frame/types.ts';
import type { SizeMm } from '../geometry/points.ts';
import type { GradeAnswer } from '../grade/grade.ts';
import type { LookAt } from '../grade/looks.ts';
import type { Outline, OutlineTrouble } from '../outline/types.ts';
import type { Picture } from '../picture.ts';
import type { RimColour } from '../wear/rim-colour.ts';

/** The front again, the lamp low: by the same camera, or the very picture that is given as the front. */
export interface RakingPicture {
  readonly picture: Picture;
  /** Degrees counter-clockwise from the picture's x axis to where the lamp stands; null: not told. */
  readonly azimuthDeg: number | null;
}

/** What is known of a copy and its pictures before they are measured. */
export interface CopyKnown {
  /** Width and height of the card as it is read; null where not told. */
  readonly sizeMm: SizeMm | null;
  /** Dots an inch of both scans, in place of what the files state; null: as the files state. */
  readonly dpi: number | null;
  readonly raking: readonly RakingPicture[];
}

/** Width and height of a card, and whose word that is. */
export interface MeasuredSize {
  readonly mm: SizeMm;
  /** One standard error of each; null where the size was told. */
  readonly sdMm: SizeMm | null;
  readonly from: 'told' | 'dpi';
}

/** The smallest mark of some kinds that the pictures of a face would have shown, in millimetres. */
export interface Limit {
  readonly kinds: readonly DefectKind[];
  /** Where on the face that holds. */
  readonly where:
    | 'along the edges'
    | 'in the border'
    | 'all over'
    | 'where print is plain'
    | 'of silvering where print is dark';
  readonly mm: number;
}

/** What one face of a copy was measured to be. */
export interface FaceAnswer {
  /**
   * The likeliest outline. With a `p` under 0.5 it is a proposal, and nothing was measured by it;
   * null where there is none to propose.
   */
  readonly outline: Outline | null;
  /** All outlines that the picture may show, the likeliest first. */
  readonly hypotheses: readonly Outline[];
  readonly trouble: OutlineTrouble | null;
  readonly size: MeasuredSize | null;
  /** Null where the card has no border on some side, or no outline is sure enough. */
  readonly frame: Frame | null;
  readonly defects: readonly Defect[];
  readonly limits: readonly Limit[];
  /** Radius of the round tips, mm; null where no millimetres are known. */
  readonly tipRadiusMm: number | null;
  /** How the colour of the rim differs from the border's own; null where the border is not of one colour. */
  readonly rim: RimColour | null;
  readonly looks: readonly LookAt[];
  /** Why outline, centering or marks are missing, and what to photograph again; null: all is there. */
  readonly whyNot: string | null;
}

/** What the pictures of a copy say of it. */
export interface Examination {
  readonly front: FaceAnswer;
  readonly back: FaceAnswer | null;
  readonly grade: GradeAnswer;
  /** What may point to an alteration, each the ratio of two explanations. */
  readonly signs: readonly Sign[];
}

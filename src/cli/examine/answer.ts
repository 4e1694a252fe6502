import {
  type Corners,
  type Defect,
  type FaceAnswer,
  type Finding,
  isHint,
  type Mark,
  type Relief,
  type ReliefDefect,
  type SetByHand,
  type Sign,
  WEAR_WORDS,
} from '../../bench/index.ts';
import type { DecodedPicture } from '../../host/index.ts';
import { coloursJson } from '../chart-colours.ts';
import { processJson } from '../process-json.ts';
import type { Measured } from './measure.ts';

/** An examination as `examine --json` prints it. */
export interface ExaminationJson {
  readonly grade: object;
  readonly printing?: object;
  readonly ms: object;
  readonly [part: string]: unknown;
}

/** An examination as `examine --json` prints it. */
export function answerOf({
  examination,
  relief,
  printing: { process, colours },
  described,
  front,
  back,
  marks,
  byHand,
  ...more
}: Measured): ExaminationJson {
  const { grade } = examination;
  return {
    front: { ...faceJson(examination.front, front), ...handJson(byHand.front, marks.front) },
    back: back &&
      examination.back && {
        ...faceJson(examination.back, back),
        ...handJson(byHand.back, marks.back),
      },
    grade: {
      scale: grade.scale.service,
      p: Object.fromEntries(grade.scale.grades.map((name, g) => [name, grade.p[g]])),
    },
    signs: examination.signs.map(signJson),
    looks: grade.looks.map(({ look, gainBits }) => ({ look, gain_bits: gainBits })),
    ...(relief ? { relief: reliefJson(relief) } : {}),
    ...(process ? { printing: processJson(process) } : {}),
    ...(colours ? { colour: coloursJson(colours) } : {}),
    ...(described ? { described } : {}),
    notes: more.notes,
    ms: more.ms,
  };
}

/** A sign of alteration as the commands print it. */
export function signJson({ of, findings, log10Lr, between, words, cautions }: Sign): object {
  return {
    of,
    findings: findings.map(findingJson),
    log10_lr: log10Lr,
    between,
    words,
    cautions,
  };
}

/** A finding of a comparison as the commands print it. */
export function findingJson({ what, whereMm, difference, sd, log10Lr }: Finding): object {
  return { what, where_mm: whereMm, difference, sd, log10_lr: log10Lr };
}

function reliefJson({ defects, limits, faults }: Relief): object {
  return { defects: defects.map(reliefDefectJson), limits, faults };
}

/** A mark in the surface with its relief, as the commands print it. */
export function reliefDefectJson(defect: ReliefDefect): object {
  return {
    ...defectJson(defect),
    diameter_mm: defect.diameterMm,
    depth_mm: defect.depthMm,
    height_mm: defect.heightMm,
    sd: {
      centre_mm: defect.sd.centreMm,
      diameter_mm: defect.sd.diameterMm,
      depth_mm: defect.sd.depthMm,
    },
  };
}

function faceJson(face: FaceAnswer, picture: DecodedPicture): object {
  const { outline, hypotheses, size, frame } = face;
  return {
    outline: outline && asStored(outline.corners, picture),
    p_outline: hypotheses[0]?.p ?? 0,
    size_mm: size?.mm ?? null,
    size_sd_mm: size?.sdMm ?? null,
    size_from: size?.from ?? null,
    borders_mm: frame?.bordersMm ?? null,
    borders_sd_mm: frame?.bordersSdMm ?? null,
    centering: frame?.centering ?? null,
    why_not: face.whyNot,
    trouble: face.trouble,
    rotation_deg: frame?.rotationDeg ?? null,
    rotation_sd_deg: frame?.rotationSdDeg ?? null,
    frame: frame && asStored(frame.corners, picture),
    defects: face.defects.map(defectJson),
    limits: face.limits,
    hypotheses: hypotheses.map(({ corners, p }) => ({ outline: asStored(corners, picture), p })),
  };
}

/** What hands set and said of a face, apart from what was measured; nothing where they did not. */
function handJson({ corners, frame }: SetByHand, marks: readonly Mark[]): object {
  const judged = marks
    .filter(({ state }) => state !== 'open')
    .map(({ from, state, defect, words }) => ({ from, state, words, ...defectJson(defect) }));
  if (!corners && !frame && judged.length === 0) return {};
  return { by_hand: { outline: corners !== null, frame: frame !== null, marks: judged } };
}

/** Points of a picture that was shrunk while it was decoded, in pixels as stored. */
export function asStored(corners: Corners, { width, height, stored }: DecodedPicture): Corners {
  const [across, down] = [stored.width / width, stored.height / height];
  const moved = corners.map(([x, y]) => [(x + 0.5) * across - 0.5, (y + 0.5) * down - 0.5]);
  return moved as unknown as Corners;
}

/** A mark as the commands print it. */
export function defectJson(defect: Defect): object {
  return {
    kind: defect.kind,
    ...(defect.wear ? { wear: defect.wear, words: WEAR_WORDS[defect.wear] } : {}),
    centre_mm: defect.centreMm,
    box_mm: defect.boxMm,
    area_mm2: defect.areaMm2,
    length_mm: defect.lengthMm,
    polygon_mm: defect.polygonMm,
    p: defect.p,
    sd: {
      centre_mm: defect.sd.centreMm,
      area_mm2: defect.sd.areaMm2,
      length_mm: defect.sd.lengthMm,
    },
    seen_from: defect.seenFrom,
    ...(isHint(defect) ? { depth_mm: null, words: defect.words } : {}),
  };
}

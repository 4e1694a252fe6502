import {
  type Borders,
  type Comparison,
  type CopyReport,
  type Corners,
  type FaceAnswer,
  type Mark,
  marksOf,
  type Relief,
  type SetByHand,
  type Setting,
  UNITS,
  WEAR_WORDS,
} from '../../bench/index.ts';
import type {
  BenchBorders,
  BenchComparison,
  BenchCopy,
  BenchFace,
  BenchMark,
  BenchRelief,
} from '../../contract/index.ts';
import { isoOf } from '../../evidence/index.ts';
import type { Clock } from '../../market/index.ts';

/** A measured face as the page gets it. */
export function faceOnWire(
  face: FaceAnswer,
  marks: readonly Mark[],
  picture: {
    readonly name: string;
    readonly size: readonly [number, number];
    readonly hand: SetByHand;
  },
): BenchFace {
  const { outline } = face;
  return {
    picture: picture.name,
    width: picture.size[0],
    height: picture.size[1],
    outline: outline && {
      corners: corners(outline.corners),
      p: outline.p,
      byHand: picture.hand.corners !== null,
    },
    ...bordersOnWire(face, picture.hand.frame !== null),
    marks: marks.map(markOnWire),
    limits: face.limits.map(({ kinds, where, mm }) => ({ kinds: [...kinds], where, mm })),
    looks: [...face.looks],
    whyNot: face.whyNot,
  };
}

/** What follows at once from an outline, as the page gets it. */
export function bordersOnWire({ size, frame, whyNot }: Borders, byHand: boolean): BenchBorders {
  return {
    size: size && { mm: pair(size.mm), sd: size.sdMm && pair(size.sdMm), from: size.from },
    frame: frame && {
      corners: corners(frame.corners),
      borders: frame.bordersMm && { ...frame.bordersMm },
      bordersSd: frame.bordersSdMm && { ...frame.bordersSdMm },
      leftRight: pair(frame.centering.leftRight),
      topBottom: pair(frame.centering.topBottom),
      sd: pair(frame.centering.sd),
      rotation: frame.rotationDeg,
      rotationSd: frame.rotationSdDeg,
      byHand,
    },
    whyNot,
  };
}

function markOnWire({ from, state, defect, words, annotations }: Mark): BenchMark {
  return {
    from,
    state,
    kind: defect.kind,
    ...(defect.wear ? { wear: WEAR_WORDS[defect.wear] } : {}),
    centre: pair(defect.centreMm),
    box: [...defect.boxMm],
    area: defect.areaMm2,
    length: defect.lengthMm,
    polygon: defect.polygonMm.map((point) => pair(point)),
    p: state === 'confirmed' ? 1 : defect.p,
    seenFrom: defect.seenFrom,
    words: [...words],
    annotations: [...annotations],
  };
}

/** What was weighed of a copy, as the page gets it. */
export function reportOnWire(
  { grade, described }: CopyReport,
  setting: Setting | null,
): Pick<BenchCopy, 'grade' | 'described'> {
  return {
    grade: {
      service: setting ? grade.scale.service : '',
      grades: grade.scale.grades.map((name, g) => ({ grade: name, p: grade.p[g] ?? 0 })),
      copies: setting?.copies.service ?? 0,
      outcomes: setting?.selection.outcomes ?? 0,
      looks: grade.looks.map(({ look, gainBits }) => ({ look, bits: gainBits })),
    },
    described: described && {
      compared: described.compared.map((one) => ({
        ...one,
        named: [...one.named],
        unit: UNITS[one.measure],
      })),
      unseen: described.unseen.map((one) => ({ ...one })),
      silent: described.silent,
    },
  };
}

/** The deadlines that press, as the page gets them. */
export function clockOnWire({ open, unclear }: Clock): BenchCopy['clock'] {
  return {
    open: open.map(({ against, startsFrom, startsOn, days, counts, last, left }) => ({
      ...{ against, startsFrom, startsOn, days, counts, left },
      last: isoOf(last),
    })),
    unclear: unclear.map(({ against, why }) => ({ against, why })),
  };
}

/** What a moved lamp showed, as the page gets it. */
export function reliefOnWire(
  { defects, lamps, limits, faults }: Omit<Relief, 'slopes'>,
  shown: boolean,
  fault: string,
): BenchRelief {
  return {
    faults: [...(fault ? [fault] : []), ...faults],
    shown,
    lamps: lamps.map(({ placeMm: [x, y, z], from }) => ({
      azimuth: ((Math.atan2(-y, x) * 180) / Math.PI + 360) % 360,
      height: (Math.atan2(z, Math.hypot(x, y)) * 180) / Math.PI,
      from,
    })),
    marks: defects.map(({ kind, centreMm, diameterMm, depthMm, sd, p }) => ({
      ...{ kind, centre: pair(centreMm), diameter: diameterMm, depth: depthMm, p },
      ...{ diameterSd: sd.diameterMm, depthSd: sd.depthMm },
    })),
    limits: limits.map(({ diameterMm, depthMm }) => ({ diameter: diameterMm, depth: depthMm })),
  };
}

/** A comparison, as the page gets it. */
export function comparisonOnWire(
  { registered, words, findings, cautions }: Comparison,
  other: { readonly name: string; readonly face: FaceAnswer; readonly size: Pair } | undefined,
): BenchComparison {
  const hand = { corners: null, frame: null };
  return {
    registered,
    words,
    other: other
      ? faceOnWire(other.face, marksOf(other.face.defects, [], null), { ...other, hand })
      : null,
    findings: findings.map(({ what, whereMm, difference, sd, log10Lr }) => ({
      ...{ what, difference, sd, log10Lr },
      where: whereMm && pair(whereMm),
    })),
    cautions: [...cautions],
  };
}

type Pair = readonly [number, number];

function pair([a, b]: Pair): [number, number] {
  return [a, b];
}

function corners([a, b, c, d]: Corners): [
  ...[[number, number], [number, number]],
  ...[[number, number], [number, number]],
] {
  return [pair(a), pair(b), pair(c), pair(d)];
}

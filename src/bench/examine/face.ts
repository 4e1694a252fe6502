import type { BoxMm } from '../defects.ts';
import { frameByHand } from '../frame/by-hand.ts';
import { frameOf } from '../frame/frame.ts';
import type { BySide } from '../frame/sides.ts';
import type { Frame } from '../frame/types.ts';
import { cardMapOf } from '../geometry/card-map.ts';
import type { Corners, SizeMm } from '../geometry/points.ts';
import { NOTHING_SET, type SetByHand } from '../marks/hands.ts';
import { outlineByHand } from '../outline/by-hand.ts';
import { findOutline } from '../outline/find.ts';
import type { Outline, OutlineKnown, OutlineTrouble } from '../outline/types.ts';
import type { Picture } from '../picture.ts';
import { limit, partOf, stillMarksOf } from '../surface/still-marks.ts';
import { wearOf } from '../wear/wear.ts';
import { type Clarity, clarityOf, clarityWords, leastShown, notLight } from './clarity.ts';
import { isTwin, marksUnder } from './low-lamp.ts';
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
  'other-shape',
];

/**
 * Measures one face of a copy, by what hands set of it and else by what is found.
 * @throws RangeError where corners that a hand set do not go round a card clockwise.
 */
export function faceOf(
  picture: Picture,
  copy: CopyKnown,
  { corners, frame }: SetByHand = NOTHING_SET,
): FaceAnswer {
  if (corners) {
    const outline = outlineByHand(picture, corners, knownOf(picture, copy));
    return faceAlong(picture, outline, copy, frame);
  }
  const { hypotheses, trouble } = findOutline(picture, knownOf(picture, copy));
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
      tipRadiusMm: null,
      rim: null,
      looks: [],
      whyNot: trouble?.words ?? null,
    };
  return { ...faceAlong(picture, outline, copy, frame), hypotheses };
}

/** What follows at once from an outline; `whyNot` speaks of the borders alone. */
export type Borders = Pick<FaceAnswer, 'outline' | 'size' | 'frame' | 'whyNot'>;

/**
 * Size, borders, centering and turn of a face along an outline that is given, and marks are not
 * looked for: what a moved outline is followed by at once, exactly as `faceAlong` has it.
 */
export function bordersAlong(
  picture: Picture,
  outline: Outline,
  copy: Pick<CopyKnown, 'sizeMm' | 'dpi'>,
  frame: Corners | null = null,
): Borders {
  const bordered = frame
    ? { frame: frameByHand(outline, frame), whyNot: null }
    : frameOf(picture, outline);
  return { outline, size: sizeOf(outline, knownOf(picture, copy)), ...bordered };
}

/** Measures a face along an outline that is given, such as one that a user moved. */
export function faceAlong(
  picture: Picture,
  outline: Outline,
  copy: CopyKnown,
  frame: Corners | null = null,
): FaceAnswer {
  const bordered = bordersAlong(picture, outline, copy, frame);
  const clarity = outline.sizeMm
    ? clarityOf(picture, cardMapOf(outline.corners, outline.sizeMm, outline.lens))
    : null;
  const { limits, ...marks } = marksOf(picture, outline, { frame: bordered.frame, clarity }, copy);
  const why = [
    ...(bordered.whyNot ? [bordered.whyNot] : []),
    ...(clarity ? clarityWords(clarity) : []),
  ];
  return {
    ...bordered,
    hypotheses: [outline],
    trouble: null,
    ...marks,
    limits: limits.map((one) => ({
      ...one,
      mm: Math.max(one.mm, clarity ? leastShown(clarity) : 0),
    })),
    whyNot: why.length > 0 ? why.join(' ') : null,
    // Without millimetres marks are not looked for.
    looks: outline.sizeMm ? looksAt(picture, copy) : [],
  };
}

function knownOf(
  picture: Picture,
  { sizeMm, dpi }: Pick<CopyKnown, 'sizeMm' | 'dpi'>,
): OutlineKnown {
  return { sizeMm, dpi: dpi ?? picture.dpi };
}

/** How a face was looked at; a low lamp without its twin shows too little to count. */
function looksAt(picture: Picture, copy: CopyKnown): FaceAnswer['looks'] {
  const { dpi } = knownOf(picture, copy);
  const raked = copy.raking.some((low) => isTwin(low.picture, picture));
  return [dpi === null ? 'photo' : 'scan', ...(raked ? (['raking'] as const) : [])];
}

/** Marks and what the picture could not show of them; none where no millimetres are known. */
function marksOf(
  picture: Picture,
  outline: Outline,
  { frame, clarity }: { readonly frame: Frame | null; readonly clarity: Clarity | null },
  copy: CopyKnown,
): Pick<FaceAnswer, 'defects' | 'limits' | 'tipRadiusMm' | 'rim'> {
  if (outline.sizeMm === null) return { defects: [], limits: [], tipRadiusMm: null, rim: null };
  const map = cardMapOf(outline.corners, outline.sizeMm, outline.lens);
  const found = wearOf(picture, map, frame && leastBordersOf(frame, outline.sizeMm));
  // Wear is told by the cut edge, and by what is pale: along a wrong outline, or of light, it is none.
  const own = outline.p * (clarity ? notLight(clarity) : 1);
  const wear = {
    ...found,
    defects: found.defects.map((one) => ({ ...one, p: one.p * own })),
  };
  const known = knownOf(picture, copy);
  const lost = wear.defects.filter(({ wear: as, p }) => as === 'loss' && p >= 0.5);
  const still = stillMarksOf(picture, map, frame, known.dpi !== null);
  const silvered = still.defects.filter(({ wear: as, p }) => as === 'silvering' && p >= 0.5);
  const lit = copy.raking.map((low) => marksUnder(low, { picture, map }, known));
  return {
    tipRadiusMm: wear.tipRadiusMm,
    rim: wear.rim,
    defects: [
      ...wear.defects.filter((one) => !silvered.some((patch) => partOf(one, patch))),
      ...still.defects.filter(({ boxMm }) => !lost.some((bite) => touches(bite.boxMm, boxMm))),
      ...lit.flatMap(({ defects }) => defects),
    ],
    limits: [
      ...limit(['corner-wear', 'edge-wear'], 'along the edges', wear.detectionLimitMm),
      ...still.limits,
      ...lit.flatMap(({ limits }) => limits),
    ],
  };
}

/** Least depth of a turned frame along each side, mm; null where that is not known. */
function leastBordersOf(
  { bordersMm, rotationDeg }: Frame,
  [width, height]: SizeMm,
): BySide<number> | null {
  if (bordersMm === null) return null;
  const rise = Math.abs(Math.tan((rotationDeg * Math.PI) / 180)) / 2;
  const { left, right, top, bottom } = bordersMm;
  return {
    left: left - rise * height,
    right: right - rise * height,
    top: top - rise * width,
    bottom: bottom - rise * width,
  };
}

/** Whether two boxes meet: a bite looks like a stain of the border, too. */
function touches(one: BoxMm, other: BoxMm): boolean {
  return one[0] < other[2] && other[0] < one[2] && one[1] < other[3] && other[1] < one[3];
}

import type { Defect } from '../defects.ts';
import type { Limit } from '../examine/types.ts';
import type { PointMm } from '../geometry/points.ts';
import { evenNoiseOf } from '../surface/even-noise.ts';
import type { Placed } from '../surface/scratch-marks.ts';
import { boxOf } from '../wear/place-extent.ts';
import { type CreaseLikeness, creaseLikenessesOf, distanceTo } from './crease-likeness.ts';
import { type DentLikeness, dentLikenessesOf } from './dent-likeness.ts';
import { type LampSide, lampSideOf } from './lamp-side.ts';
import { creaseLimitOf, dentLimitOf } from './limits.ts';
import { lobesOf } from './lobes.ts';
import { creaseOdds, dentOdds } from './odds.ts';
import { onCardAlone } from './on-card.ts';
import { relitCardOf } from './relit-card.ts';

/** Relief that one low lamp hints at: where, how far it reaches and how likely, never how deep. */
export interface ReliefHint extends Defect {
  readonly depthMm: null;
  /** What the hint rests on and what it cannot tell, in sentences. */
  readonly words: string;
}

/** Whether a mark is such a hint. */
export function isHint(mark: Defect): mark is ReliefHint {
  return 'words' in mark;
}

/** Hints of dents and folds, and the smallest that would have shown. */
export interface ReliefHints {
  readonly defects: readonly ReliefHint[];
  readonly limits: readonly Limit[];
}

/**
 * Hints of relief from one picture under a low lamp and its twin under soft light. A slope turned to
 * the lamp is lighter and one turned away darker, by its rise along the lamp's direction (`pentland:1990`), so
 * that a hollow shows a dark lobe to the lamp and a light one beyond. Where the lamp stood is taken
 * as told, else from the way its light falls off. How deep is not told: one lamp cannot tell depth
 * from the lamp's height, and what runs towards it stays hidden.
 *
 * @param azimuthDeg where the lamp stands, counter-clockwise from x; null if not known
 */
export function reliefHintsOf(
  raking: Placed,
  soft: Placed,
  azimuthDeg: number | null,
): ReliefHints {
  const { map } = raking;
  const card = relitCardOf(raking, soft);
  const even = onCardAlone(evenNoiseOf(card.left, card.expected), card.view, map.sizeMm);
  const lobes = lobesOf(even);
  const side = lampSideOf(card, map, azimuthDeg);
  const dents = dentLikenessesOf(card, even, lobes, map)
    .map((dent) => ({ ...dent, p: chanceOf(dentOdds(dent, side)) }))
    .filter(({ p }) => p > 0.01);
  const { lines, median } = creaseLikenessesOf(card, even, map);
  const folds = lines
    .map((line) => ({ ...line, p: chanceOf(creaseOdds(line.features)) }))
    .filter((line) => line.p > 0.01 && !dents.some((dent) => dent.p > 0.5 && isOf(dent, line)));
  return {
    defects: [
      ...dents
        .filter(
          ({ centreMm }) =>
            !folds.some((fold) => fold.p > 0.5 && distanceTo(fold.points, centreMm) < BESIDE_MM),
        )
        .map((dent) => dentHint(dent, side)),
      ...folds.map((fold) => creaseHint(fold, side)),
    ],
    limits: [
      ...limit('dent', dentLimitOf(card.left, even, lobes, side)),
      ...limit('crease', creaseLimitOf(card.left, even, median)),
    ],
  };
}

/** Dents this near to a fold are its flanks, mm. */
const BESIDE_MM = 2;
/** A line this short over a dent is one of its lobes, mm. */
const SHORT_MM = 10;

function isOf({ centreMm, widthMm }: DentLikeness, { points, lengthMm }: CreaseLikeness): boolean {
  return lengthMm < SHORT_MM && distanceTo(points, centreMm) < 1.5 * widthMm;
}

function chanceOf(logOdds: number): number {
  return 1 / (1 + Math.exp(-logOdds));
}

function limit(kind: 'dent' | 'crease', mm: number | null): readonly Limit[] {
  return mm === null ? [] : [{ kinds: [kind], where: 'all over', mm }];
}

const DEPTH = 'One lamp cannot tell depth from tilt: a hint only, with no depth.';

function dentHint(
  { centreMm, widthMm, p }: DentLikeness & { p: number },
  side: LampSide,
): ReliefHint {
  const [x, y] = centreMm;
  const bump =
    side.from === 'nothing' ? ' Where the lamp stood is not known, so that it may be a bump.' : '';
  return {
    kind: 'dent',
    centreMm,
    boxMm: [x - widthMm, y - widthMm, x + widthMm, y + widthMm],
    areaMm2: (Math.PI / 4) * widthMm ** 2,
    lengthMm: null,
    polygonMm: Array.from({ length: 16 }, (_, i): PointMm => {
      const a = (i * Math.PI) / 8;
      return [x + (widthMm / 2) * Math.cos(a), y + (widthMm / 2) * Math.sin(a)];
    }),
    p,
    sd: { centreMm: 0.05 + 0.05 * widthMm, areaMm2: null, lengthMm: null },
    seenFrom: 'raking',
    depthMm: null,
    words: `A dark lobe to the lamp and a light one beyond. ${DEPTH}${bump}`,
  };
}

function creaseHint(fold: CreaseLikeness & { p: number }, side: LampSide): ReliefHint {
  const { points, lengthMm, widthMm, angle, p } = fold;
  const [x0, y0, x1, y1] = boxOf(points);
  const rises = side.angle !== null && Math.cos(angle - side.angle) > 0;
  const shape = side.angle === null ? 'ridge or groove' : rises ? 'ridge' : 'groove';
  return {
    kind: 'crease',
    centreMm: points[points.length >> 1] as PointMm,
    boxMm: [x0, y0, x1, y1],
    areaMm2: lengthMm * widthMm,
    lengthMm,
    polygonMm: points,
    p,
    sd: { centreMm: 0.2, areaMm2: 0.3 * lengthMm * widthMm, lengthMm: 1.5 },
    seenFrom: 'raking',
    depthMm: null,
    words: `A ${shape} by its light and its dark flank. ${DEPTH}`,
  };
}

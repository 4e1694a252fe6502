import { type Evenness, evennessOf, isCovered } from './even-border.ts';
import { type MarginColumn, tintOf } from './margin.ts';
import type { Candidate } from './outermost.ts';
import { type BySide, bySide, type CardSide, SIDES } from './sides.ts';

/** Least share of a border's cells that has its colour. */
export const EVEN = 0.83;
/** Where the light on some border changes by more than this, as a natural logarithm … */
const STEADY = 0.35;
/** … three of the lines at least run along so much of their sides: a slope of the art looks like a shadow. */
const LONG = 0.72;
/** So much of a covered side is seen; of that, so much has the border's colour and so much the line. */
const SEEN = 0.4;
const EVEN_SEEN = 0.9;
const LINE_SEEN = 0.66;
/** What covers two sides hides their lines there, but for so much: art goes on beneath a line. */
const THROUGH = 0.5;

/** What lies between a side's cut edge and its line. */
export interface Border {
  /** A border, one over part of which something lies, or none. */
  readonly is: 'whole' | 'covered' | 'none';
  readonly evenness: Evenness;
}

/**
 * Judges the four sides at once: they share a tint, by which a side that is covered in part is known
 * from the others. The limits were set on rendered cards, see the method's page.
 */
export function bordersOf(
  margins: BySide<readonly MarginColumn[]>,
  lines: BySide<Candidate>,
): BySide<Border> {
  const tint = tintOf(SIDES.flatMap((side) => margins[side]));
  const evenness = bySide((side) => {
    const shared = evennessOf(margins[side], tint);
    if (shared.share >= EVEN) return shared;
    const own = evennessOf(margins[side], tintOf(margins[side]));
    return own.share >= EVEN ? own : shared;
  });
  const steady = SIDES.every((side) => evenness[side].lightRange < STEADY);
  const short = SIDES.filter((side) => lines[side].support < LONG);
  const bounded = (side: CardSide) => steady || short.length < 2 || !short.includes(side);
  const covered = SIDES.filter((side) => evenness[side].share < EVEN);
  const hidden = covered.every((side) => lineShare(evenness[side], lines[side], true) < THROUGH);
  const coverable = covered.length === 1 || (covered.length === 2 && hidden);
  return bySide((side) => {
    const { share, seen, seenShare } = evenness[side];
    const line = lineShare(evenness[side], lines[side], false);
    const enough = seen >= SEEN && seenShare >= EVEN_SEEN && line >= LINE_SEEN;
    const is = share >= EVEN ? bounded(side) && 'whole' : coverable && enough && 'covered';
    return { is: is || 'none', evenness: evenness[side] };
  });
}

/** Share of the columns with the line on them, of those that are covered or of those that are not. */
function lineShare({ covered }: Evenness, { seenOn }: Candidate, where: boolean): number {
  const columns = seenOn.filter((_, c) => isCovered(covered, c) === where);
  return columns.reduce((sum, flag) => sum + flag, 0) / columns.length;
}

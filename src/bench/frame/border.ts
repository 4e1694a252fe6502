import { type Evenness, evennessOf, isCovered } from './even-border.ts';
import { type MarginColumn, tintOf } from './margin.ts';
import type { Candidate } from './outermost.ts';
import { type BySide, bySide, type CardSide, SIDES } from './sides.ts';

/** Least share of a border's cells that has its colour. */
export const EVEN = 0.83;
/** Where the light on some border changes by more than this, as a natural logarithm … */
const STEADY = 0.35;
/** … the lines run along so much of their sides, since a shadow and a slope of the art look alike. */
const LONG = 0.66;
/** So much of a covered side is seen, and of that so much has the border's colour. */
const SEEN = 0.4;
const EVEN_SEEN = 0.9;
/** What covers two sides hides their lines there, but for so much. */
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
  const covered = SIDES.filter((side) => evenness[side].share < EVEN);
  const coverable = (side: CardSide) =>
    covered.length === 1 || (covered.length === 2 && isHidden(evenness[side], lines[side]));
  const judged = (side: CardSide): Border['is'] => {
    if (evenness[side].share >= EVEN)
      return steady || meanOf(lines[side].seenOn) >= LONG ? 'whole' : 'none';
    return coverable(side) && isSeenBeside(evenness[side], lines[side]) ? 'covered' : 'none';
  };
  return bySide((side) => ({ is: judged(side), evenness: evenness[side] }));
}

/** Whether enough of a covered side is left, of the border's colour and with the line on it. */
function isSeenBeside({ covered, seen, seenShare }: Evenness, { seenOn }: Candidate): boolean {
  const line = meanOf(seenOn.filter((_, c) => !isCovered(covered, c)));
  return seen >= SEEN && seenShare >= EVEN_SEEN && line >= LONG;
}

/** Whether the line is hidden where the border is covered: art that meets a border goes on beneath it. */
function isHidden({ covered }: Evenness, { seenOn }: Candidate): boolean {
  return meanOf(seenOn.filter((_, c) => isCovered(covered, c))) < THROUGH;
}

function meanOf(flags: Uint8Array): number {
  return flags.reduce((sum, flag) => sum + flag, 0) / flags.length;
}

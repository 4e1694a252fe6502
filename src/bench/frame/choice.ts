import type { CardMap } from '../geometry/card-map.ts';
import { EVEN } from './border.ts';
import { evennessOf } from './even-border.ts';
import { marginOf, tintOf } from './margin.ts';
import { type Candidate, outermostOf } from './outermost.ts';
import { type BySide, bySide, SIDES, type SideLine } from './sides.ts';
import type { Strip } from './strip.ts';

/** A fainter line lies so deep at least, in millimetres, on so many columns, on so even a border. Judgement, no source. */
const LEAST_FAINT = 1.4;
const FAINT_SUPPORT = 0.4;
const EVEN_FAINT = 0.92;
/** Deeper than the middle one of the other three by more than this, in millimetres, a line is doubted. */
const DEEPER = 2;
/** A fainter one lies no farther than this from that depth, on so many columns. Judgement, no source. */
const ALIKE = 1;
const ALIKE_SUPPORT = 0.3;

/**
 * The outermost line of a side that is as good as its best; where what lies outside of that is not
 * of one colour, a fainter one farther out, if it has one colour outside: faint art on a dark border.
 */
export function bestOf(
  strip: Strip,
  candidates: readonly Candidate[],
  { sizeMm }: CardMap,
): Candidate | null {
  const evenShareOf = (line: SideLine) => {
    const margin = marginOf(strip, line, sizeMm);
    return evennessOf(margin, tintOf(margin)).share;
  };
  const best = outermostOf(candidates);
  if (best === null || evenShareOf(best.line) >= EVEN) return best;
  const outer = candidates.find(
    ({ line, support }) =>
      line.depth >= LEAST_FAINT &&
      line.depth < best.line.depth &&
      support >= FAINT_SUPPORT &&
      evenShareOf(line) >= EVEN_FAINT,
  );
  return outer ?? best;
}

/**
 * The lines of the four sides; where one lies far deeper than those of the others, a fainter one at
 * their depth instead, if it has any: a plate inside stands out more than art that meets its border.
 */
export function likeTheOthers(
  best: BySide<Candidate>,
  all: BySide<readonly Candidate[]>,
): BySide<Candidate> {
  return bySide((side) => {
    const others = SIDES.filter((other) => other !== side).map((other) => best[other].line.depth);
    const usual = others.sort((a, b) => a - b)[1] as number;
    if (best[side].line.depth < usual + DEEPER) return best[side];
    const alike = all[side].filter(
      ({ line, support }) => Math.abs(line.depth - usual) <= ALIKE && support >= ALIKE_SUPPORT,
    );
    return alike.sort((a, b) => b.support - a.support)[0] ?? best[side];
  });
}

import type { CardMap } from '../geometry/card-map.ts';
import type { Outline } from '../outline/types.ts';
import type { Picture } from '../picture.ts';
import { mapOfOutline, measuredFrame } from './centering.ts';
import { evenShareOf } from './even-border.ts';
import { type PrintFit, printFitOf } from './fit.ts';
import { type Candidate, candidatesOf, NEAREST, outermostOf } from './outermost.ts';
import { outermostBeside } from './outward.ts';
import { pixelsPerMm, placesOf } from './places.ts';
import { type BySide, bySide, type CardSide, SIDES, type SideLine } from './sides.ts';
import { stepsOf } from './steps.ts';
import { type Strip, stripOf } from './strip.ts';
import { supportsOf } from './turn.ts';
import type { FrameAnswer } from './types.ts';

/** Left out at both ends of a side, where the tips are round, in millimetres. */
const ENDS = 4;
/** The quick look: columns of a millimetre, 9.5 mm deep. */
const QUICK = { ends: ENDS, column: 1, from: 0.1, to: 9.5, most: [4, 1] } as const;
/** Its step in depth: in millimetres, and in pixels at least, since none shows less than one. */
const STEP = 0.1;
const STEP_PX = 0.7;
/**
 * Least share of a border that has one colour, and of one side over which something may lie. Without
 * a border two sides of 65 rendered cards reached 0.74 at most, with one 0.92 at least.
 */
const EVEN = 0.83;
const EVEN_WORST = 0.55;
/** A fainter line lies so deep at least, in millimetres, on so many columns, on so even a border. Judgement, no source. */
const LEAST_FAINT = 1.4;
const FAINT_SUPPORT = 0.4;
const EVEN_FAINT = 0.92;
/** No line is known better than this share of a pixel: the picture's own curve and halos shift it. */
const FLOOR_PX = 0.12;

/**
 * Finds the printed frame of a card in its picture and measures borders, centering and turn. Where
 * one side has no frame there is none to measure, and the answer says why. Misleads where a border
 * is narrower than 0.5 mm, or wider than 9.5 mm, on a card 63 mm wide.
 */
export function frameOf(picture: Picture, outline: Outline): FrameAnswer {
  const map = mapOfOutline(outline);
  const steps = bySide((side) => {
    const edge = { depth: 0, slope: 0 };
    const step = Math.max(STEP, STEP_PX / pixelsPerMm(map, side, edge));
    return stepsOf(stripOf(picture, map, side, edge, { ...QUICK, step }));
  });
  const supports = supportsOf(steps, NEAREST);
  const found = bySide((side) => lineOf(steps[side].strip, candidatesOf(supports[side]), map));
  const bare = SIDES.filter((side) => found[side] === null);
  if (bare.length > 0) return { frame: null, whyNot: noBorderWords(bare) };
  const outer = bySide((side) =>
    outermostBeside(picture, map, side, found[side] as SideLine, ENDS),
  );
  const uneven = unevenOf(
    bySide((side) => evenShareOf(steps[side].strip, outer[side], map.sizeMm)),
  );
  if (uneven.length > 0) return { frame: null, whyNot: unevenWords(uneven) };
  const fit = fittedNear(picture, map, outer);
  return { frame: measuredFrame(outline, map, withFloor(map, fit)), whyNot: null };
}

/**
 * The outermost line of a side that is as good as its best; where what lies outside of that is not
 * of one colour, a fainter one farther out, if it has one colour outside: faint art on a dark border.
 */
function lineOf(strip: Strip, candidates: readonly Candidate[], { sizeMm }: CardMap) {
  const best = outermostOf(candidates)?.line ?? null;
  if (best === null || evenShareOf(strip, best, sizeMm) >= EVEN) return best;
  const outer = candidates.find(
    ({ line, support }) =>
      line.depth >= LEAST_FAINT &&
      line.depth < best.depth &&
      support >= FAINT_SUPPORT &&
      evenShareOf(strip, line, sizeMm) >= EVEN_FAINT,
  );
  return outer?.line ?? best;
}

/** The sides whose strip is no border, from the shares of one colour; none where all may be borders. */
function unevenOf(shares: BySide<number>): readonly CardSide[] {
  const uneven = SIDES.filter((side) => shares[side] < EVEN);
  return uneven.length === 1 && shares[uneven[0] as CardSide] >= EVEN_WORST ? [] : uneven;
}

/** Finds the lines at full size near where they are expected. */
export function fittedNear(picture: Picture, map: CardMap, near: BySide<SideLine>): PrintFit {
  return printFitOf(bySide((side) => placesOf(picture, map, side, near[side], ENDS)));
}

/** A fit whose depths are no surer than the picture can tell. */
export function withFloor(map: CardMap, fit: PrintFit): PrintFit {
  const depthSd = bySide((side) =>
    Math.hypot(fit.depthSd[side], FLOOR_PX / pixelsPerMm(map, side, fit.lines[side])),
  );
  return { ...fit, depthSd };
}

function noBorderWords(bare: readonly CardSide[]): string {
  if (bare.length === 4)
    return 'No frame line and no edge of the art runs along any side: the art seems to reach the cut edge, so there is no centering to give.';
  return `No frame line and no edge of the art runs along the ${named(bare)}: the art seems to reach the cut edge there, so there is no centering to give.`;
}

function unevenWords(uneven: readonly CardSide[]): string {
  return `What lies between the cut edge and the outermost line along the ${named(uneven)} is not of one colour, as a border would be: the art seems to reach the cut edge there, or something lies over the border, so there is no centering to give.`;
}

function named(sides: readonly CardSide[]): string {
  return `${sides.join(', ').replace(/, ([^,]*)$/, ' and $1')} ${sides.length > 1 ? 'sides' : 'side'}`;
}

import type { CardMap } from '../geometry/card-map.ts';
import type { Outline } from '../outline/types.ts';
import type { Picture } from '../picture.ts';
import { type Border, bordersOf } from './border.ts';
import { mapOfOutline, measuredFrame } from './centering.ts';
import { bestOf, likeTheOthers } from './choice.ts';
import { type PrintFit, printFitOf } from './fit.ts';
import { marginOf } from './margin.ts';
import { type Candidate, candidatesOf, NEAREST } from './outermost.ts';
import { outermostBeside } from './outward.ts';
import { pixelsPerMm, placesOf } from './places.ts';
import { type BySide, bySide, type CardSide, SIDES, type SideLine } from './sides.ts';
import { stepsOf } from './steps.ts';
import { type Part, type Strip, stripOf } from './strip.ts';
import { supportsOf } from './turn.ts';
import type { FrameAnswer } from './types.ts';

/** Left out at both ends of a side, where the tips are round, in millimetres. */
const ENDS = 4;
const WHOLE: Part = { ends: ENDS, covered: [] };
/** The quick look: columns of a millimetre, 9.5 mm deep. */
const QUICK = { ...WHOLE, column: 1, from: 0.1, to: 9.5, most: [4, 1] } as const;
/** The cut edge, which the quick look follows. */
const EDGE: SideLine = { depth: 0, slope: 0 };
/** Its step in depth: in millimetres, and in pixels at least, since none shows less than one. */
const STEP = 0.1;
const STEP_PX = 0.7;
/** No line is known better than this share of a pixel: the picture's own curve and halos shift it. */
const FLOOR_PX = 0.12;

/**
 * Finds the printed frame of a card in its picture and measures borders, centering and turn. Where
 * one side has no frame there is none to measure, and the answer says why. Misleads where a border
 * is narrower than 0.5 mm, or wider than 9.5 mm, on a card 63 mm wide.
 */
export function frameOf(picture: Picture, outline: Outline): FrameAnswer {
  const map = mapOfOutline(outline);
  const strips = bySide((side) => {
    const step = Math.max(STEP, STEP_PX / pixelsPerMm(map, side, EDGE));
    return stripOf(picture, map, side, EDGE, { ...QUICK, step });
  });
  const supports = supportsOf(
    bySide((side) => stepsOf(strips[side])),
    NEAREST,
  );
  const found = bySide((side) => candidatesOf(supports[side]));
  const best = bySide((side) => bestOf(strips[side], found[side], map));
  const bare = SIDES.filter((side) => best[side] === null);
  if (bare.length > 0) return { frame: null, whyNot: noBorderWords(bare) };
  const candidates = likeTheOthers(best as BySide<Candidate>, found);
  const outermost = (side: CardSide, part: Part) =>
    outermostBeside(picture, map, side, candidates[side].line, part);
  const near = bySide((side) => outermost(side, WHOLE));
  const margins = bySide((side) => marginOf(strips[side], near[side], map.sizeMm));
  const borders = bordersOf(margins, candidates);
  const uneven = SIDES.filter((side) => borders[side].is === 'none');
  if (uneven.length > 0) return { frame: null, whyNot: unevenWords(uneven) };
  const parts = bySide((side) => partOf(strips[side], borders[side]));
  const outer = bySide((side) =>
    parts[side] === WHOLE ? near[side] : outermost(side, parts[side]),
  );
  const fit = fittedNear(picture, map, outer, parts);
  const frame = measuredFrame(outline, map, withFloor(map, fit));
  return { frame, whyNot: coveredWords(parts) };
}

/** What is looked at of a side: all but the stretches that are covered. */
function partOf({ along }: Strip, { is, evenness }: Border): Part {
  if (is !== 'covered') return WHOLE;
  const half = QUICK.column / 2;
  const covered = evenness.covered.map(
    ([first, last]) => [(along[first] as number) - half, (along[last] as number) + half] as const,
  );
  return { ends: ENDS, covered };
}

/** Finds the lines at full size near where they are expected. */
export function fittedNear(
  picture: Picture,
  map: CardMap,
  near: BySide<SideLine>,
  parts = bySide(() => WHOLE),
): PrintFit {
  return printFitOf(bySide((side) => placesOf(picture, map, side, near[side], parts[side])));
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

/** What is told of borders that are seen in part; null where all are seen whole. */
function coveredWords(parts: BySide<Part>): string | null {
  const covered = SIDES.filter((side) => parts[side] !== WHOLE);
  if (covered.length === 0) return null;
  return `Something lies over part of the ${named(covered)}: the border there is measured on the rest.`;
}

function named(sides: readonly CardSide[]): string {
  return `${sides.join(', ').replace(/, ([^,]*)$/, ' and $1')} ${sides.length > 1 ? 'sides' : 'side'}`;
}

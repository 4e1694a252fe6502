import { type Corners, distanceBetween, type PointPx } from '../geometry/points.ts';
import type { Picture } from '../picture.ts';
import { fineOutline, firstCorner, outlineOf } from './answer.ts';
import { amongRivals, beliefOf } from './belief.ts';
import { type Choice, choicesOf, withTips } from './choice.ts';
import { isCutOff } from './cut-off.ts';
import { type Edges, edgesOf } from './edges.ts';
import { seenCorners } from './figure.ts';
import type { Fine } from './fine.ts';
import { type Line, linesOf, settledLine } from './lines.ts';
import { apart, areaOf, distance, lieApart, quadsOf, SAME_PX } from './quads.ts';
import { type Reduced, reducedOf } from './reduced.ts';
import { otherShape, troubleOf } from './trouble.ts';
import type { Outline, OutlineAnswer, OutlineKnown } from './types.ts';

const LINES = 70;
const QUADS = 160;
const FAMILIES = 6;
/** Figures so many pixels of the reduced picture from each other lead to other edges. */
const FAMILY_PX = 20;

/** A card whose sides stand so much otherwise to each other has not the size told. Judgement, no source. */
const OTHER_SHAPE = 1.08;

/**
 * Where the card lies in a picture: outlines ranked by how likely each is, with the doubt about
 * them, and what to photograph again where the best of them is not to be trusted.
 */
export function findOutline(picture: Picture, known: OutlineKnown): OutlineAnswer {
  const seen = seenIn(picture);
  const answer = outlinesIn(picture, seen, known);
  const { sizeMm } = known;
  const isOpen = (answer.hypotheses[0]?.p ?? 0) < 0.5;
  if (!isOpen || sizeMm === null) return answer;
  const { hypotheses, trouble } = outlinesIn(picture, seen, { ...known, sizeMm: null });
  const [own] = hypotheses;
  if (!own || trouble || alike(own.aspect, sizeMm[0] / sizeMm[1])) return answer;
  return { ...answer, trouble: otherShape(sizeMm, Math.min(own.aspect, 1 / own.aspect)) };
}

/** Whether two shapes differ by no more than tilt and cutting make, whichever way they lie. */
function alike(one: number, other: number): boolean {
  const off = Math.abs(Math.abs(Math.log(one)) - Math.abs(Math.log(other)));
  return off < Math.log(OTHER_SHAPE);
}

/** What a picture shows, whatever is known of the card. */
interface PictureSeen {
  readonly reduced: Reduced;
  readonly edges: Edges;
  readonly lines: readonly Line[];
}

function seenIn(picture: Picture): PictureSeen {
  const reduced = reducedOf(picture);
  const edges = edgesOf(reduced);
  return { reduced, edges, lines: linesOf(edges, LINES).map((line) => settledLine(edges, line)) };
}

function outlinesIn(picture: Picture, seen: PictureSeen, known: OutlineKnown): OutlineAnswer {
  const { reduced, edges, lines } = seen;
  const aspect = known.sizeMm ? known.sizeMm[0] / known.sizeMm[1] : null;
  const longMm = known.sizeMm ? Math.max(...known.sizeMm) : null;
  const quads = quadsOf(edges, lines, aspect, QUADS).map((quad) =>
    withTips(reduced, edges, quad, longMm),
  );
  const ranked = [...quads].sort((a, b) => b.score - a.score);
  const families = apart(ranked, FAMILY_PX, FAMILIES);
  const near = choicesOf(reduced, edges, families, { aspect, longMm }).flatMap((choices) =>
    choices.filter((choice) => isNear(choice, choices[0] as Choice)),
  );
  const found = hypothesesOf(picture, reduced, apart(near, SAME_PX), known);
  const hypotheses = weighed(apart(found.sort(byProbability), 2 * reduced.factor));
  return {
    hypotheses: hypotheses.map(({ outline }) => outline),
    trouble: troubleIn(picture, seen, hypotheses),
  };
}

function troubleIn(
  picture: Picture,
  { reduced, edges, lines }: PictureSeen,
  [best, ...others]: readonly Hypothesis[],
): OutlineAnswer['trouble'] {
  const sure = best !== undefined && best.outline.p >= 0.5;
  const two = sure && others.some((other) => isAnotherCard(other, best));
  if (sure && !two) return null;
  return troubleOf(reduced, {
    any: best !== undefined && best.choice.score > 0,
    two,
    cutOff:
      (best !== undefined && isBeyondRim(best.outline.corners, picture)) ||
      (!sure && isCutOff(reduced, edges, lines)),
    weakestSide: best ? Math.min(...best.choice.sides) : 0,
    blur: best?.fine.blur ?? 1,
  });
}

/** Of outlines about one place only one can be right: their probabilities weighed together. */
function weighed(found: readonly Hypothesis[]): readonly Hypothesis[] {
  return found
    .map((own) => {
      const rivals = found.filter(
        (other) => other !== own && !lieApart(own.corners, other.corners),
      );
      const p = amongRivals(
        own.outline.p,
        rivals.map(({ outline }) => outline.p),
      );
      return { ...own, outline: { ...own.outline, p } };
    })
    .sort(byProbability);
}

function byProbability({ outline: a }: Hypothesis, { outline: b }: Hypothesis): number {
  return b.p - a.p;
}

interface Hypothesis {
  readonly outline: Outline;
  /** The outline's corners as x, y, x, y, … in pixels. */
  readonly corners: Float64Array;
  readonly choice: Choice;
  readonly fine: Fine;
}

/** Choices whose score comes within this of the best are made fine too. */
const NEAR_SCORE = 2.2;
/** The same for one that lies beside the best: it may be another card, on another ground. */
const BESIDE_SCORE = 3.5;

function isNear(choice: Choice, best: Choice): boolean {
  const off = best.score - choice.score;
  return off < NEAR_SCORE || (off < BESIDE_SCORE && lieApart(choice.corners, best.corners));
}

/** Choices made fine, but for those that what is found answers. */
function hypothesesOf(
  picture: Picture,
  reduced: Reduced,
  choices: readonly Choice[],
  known: OutlineKnown,
): Hypothesis[] {
  const found: Hypothesis[] = [];
  for (const choice of choices) {
    const corners = cornersOf(choice, reduced);
    const isAnswered = ({ outline: { p }, corners: own, choice: other }: Hypothesis) =>
      (p >= 0.5 && distance(own, flat(corners)) < SAME * reduced.factor) ||
      (p >= SURE && !lieApart(choice.corners, other.corners));
    if (!found.some(isAnswered))
      found.push(...hypothesisOf(picture, corners, choice, known, 3 * reduced.factor));
  }
  return found;
}

/** A choice that lies so many pixels of the reduced picture from a likely outline leads to it. Judgement, no source. */
const SAME = 6;
/** Beside an outline that is so probable only another card is looked for. Judgement, no source. */
const SURE = 0.95;

/** Two cards of one kind that lie beside each other look alike to so much of their areas. */
const ALIKE = 0.75;

function isAnotherCard(other: Hypothesis, one: Hypothesis): boolean {
  const [a, b] = [areaOf(other.corners), areaOf(one.corners)];
  return (
    other.outline.p >= 0.5 &&
    Math.min(a, b) > ALIKE * Math.max(a, b) &&
    lieApart(other.corners, one.corners)
  );
}

function cornersOf(choice: Choice, { width, height, factor }: Reduced): readonly PointPx[] {
  return [0, 2, 4, 6].map(
    (i): PointPx => [
      ((choice.corners[i] as number) + width / 2) * factor - 0.5,
      ((choice.corners[i + 1] as number) + height / 2) * factor - 0.5,
    ],
  );
}

function hypothesisOf(
  picture: Picture,
  corners: readonly PointPx[],
  choice: Choice,
  known: OutlineKnown,
  error: number,
): readonly Hypothesis[] {
  const fine = fineOutline(picture, corners, known, error);
  if (!fine) return [];
  const first = firstCorner(seenCorners(fine.figure), known.sizeMm);
  const p = beliefOf(choice, fine, shortSide(corners));
  const outline = outlineOf(fine, known, p, first);
  return [{ outline, corners: flat(outline.corners), choice, fine }];
}

function shortSide(corners: readonly PointPx[]): number {
  return Math.min(
    ...corners.map((corner, i) => distanceBetween(corner, corners[(i + 1) % 4] as PointPx)),
  );
}

function flat(corners: readonly PointPx[]): Float64Array {
  return Float64Array.from(corners.flat());
}

function isBeyondRim(corners: Corners, { width, height }: Picture): boolean {
  return corners.some(([x, y]) => x < 1 || y < 1 || x > width - 2 || y > height - 2);
}

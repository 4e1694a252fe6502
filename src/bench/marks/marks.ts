import type { BoxMm, Defect } from '../defects.ts';
import { type CardMap, cardPointOf } from '../geometry/card-map.ts';
import type { PointMm } from '../geometry/points.ts';
import { MEASURES } from '../grade/types.ts';
import { type Annotation, kindOf, shapeOf, wordOf } from './annotation.ts';

/** A mark of a face, measured or set by hand, and what the hand says of it. */
export interface Mark {
  readonly from: 'machine' | 'hand';
  readonly defect: Defect;
  /** `open`: measured, and no hand has judged it. */
  readonly state: 'open' | 'confirmed' | 'rejected';
  /** Annotations that speak of it. */
  readonly annotations: readonly string[];
  readonly words: readonly string[];
}

/** A hand's judgement is of the mark of its kind that lies nearest, no further than this. */
const NEAR_MM = 1.5;

/**
 * The marks of a face: those measured, judged by hand where an annotation speaks of them, and those
 * added by hand. What was measured is never changed: a judgement stands beside it.
 * @param annotations of this face's picture, in pixels
 * @param map null where the card is not outlined, so that no place is known
 */
export function marksOf(
  measured: readonly Defect[],
  annotations: readonly Annotation[],
  map: CardMap | null,
): readonly Mark[] {
  const placed = annotations.flatMap((annotation) => {
    const defect = map && defectOf(annotation, map);
    return defect ? [{ annotation, defect, word: wordOf(annotation) }] : [];
  });
  const judging = placed.filter(({ word }) => word !== undefined);
  const machine = measured.map((defect): Mark => {
    const own = judging.filter((one) => nearestOf(one.defect, measured) === defect);
    return {
      from: 'machine',
      defect,
      state: own.at(-1)?.word ?? 'open',
      annotations: own.map(({ annotation }) => annotation.id),
      words: own.flatMap(({ annotation }) => wordsOf(annotation)),
    };
  });
  const hand = placed
    .filter(({ word }) => word === undefined)
    .map(
      ({ annotation, defect }): Mark => ({
        from: 'hand',
        defect,
        state: 'confirmed',
        annotations: [annotation.id],
        words: wordsOf(annotation),
      }),
    );
  return [...machine, ...hand];
}

/** Marks as evidence: confirmed ones are sure, rejected ones are left out. */
export function weighedMarks(marks: readonly Mark[]): readonly Defect[] {
  return marks.flatMap(({ defect, state }) => {
    if (state === 'rejected') return [];
    return [state === 'confirmed' ? { ...defect, p: 1 } : defect];
  });
}

/** An annotation as a mark in card millimetres; undefined where its kind or place is not understood. */
function defectOf(annotation: Annotation, map: CardMap): Defect | undefined {
  const kind = MEASURES.filter((known) => known !== 'centering').find(
    (known) => known === kindOf(annotation),
  );
  const shape = shapeOf(annotation.target.selector);
  if (!kind || !shape) return undefined;
  const points = shape.points.map((point) => cardPointOf(map, point));
  const boxMm = boxOf(points);
  return {
    kind,
    centreMm: [(boxMm[0] + boxMm[2]) / 2, (boxMm[1] + boxMm[3]) / 2],
    boxMm,
    areaMm2: shape.closed ? areaOf(points) : 0,
    lengthMm: shape.closed ? null : lengthOf(points),
    polygonMm: points,
    p: 1,
    sd: { centreMm: 0.3, areaMm2: null, lengthMm: null },
    seenFrom: 'still',
  };
}

function nearestOf({ kind, centreMm }: Defect, measured: readonly Defect[]): Defect | undefined {
  const away = (other: Defect) =>
    Math.hypot(other.centreMm[0] - centreMm[0], other.centreMm[1] - centreMm[1]);
  return measured
    .filter((other) => other.kind === kind && away(other) <= NEAR_MM)
    .sort((a, b) => away(a) - away(b))[0];
}

function wordsOf({ body }: Annotation): readonly string[] {
  return body.filter(({ purpose }) => purpose === 'commenting').map(({ value }) => value);
}

function boxOf(points: readonly PointMm[]): BoxMm {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** Gauss's formula for the area within a polygon. */
function areaOf(points: readonly PointMm[]): number {
  const twice = points.reduce((sum, [x, y], i) => {
    const [u, v] = points[(i + 1) % points.length] as PointMm;
    return sum + x * v - u * y;
  }, 0);
  return Math.abs(twice) / 2;
}

function lengthOf(points: readonly PointMm[]): number {
  return points.slice(1).reduce((sum, [x, y], i) => {
    const [u, v] = points[i] as PointMm;
    return sum + Math.hypot(x - u, y - v);
  }, 0);
}

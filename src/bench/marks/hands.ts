import type { Corners } from '../geometry/points.ts';
import type { Annotation } from './annotation.ts';

interface EachSide {
  readonly front?: Corners;
  readonly back?: Corners;
}

/** What hands set on a copy, as `desk/examinations/COPY.json` keeps it beside what was measured. */
export interface Hands {
  /** Of the card's outline, in pixels of its picture. */
  readonly corners: EachSide;
  /** Of the printed frame, in the same pixels. */
  readonly frames: EachSide;
  readonly marks: readonly Annotation[];
}

/** What hands set of one face, in pixels of its upright picture; null: found in the picture. */
export interface SetByHand {
  readonly corners: Corners | null;
  readonly frame: Corners | null;
}

/** A face on which no hand has set anything. */
export const NOTHING_SET: SetByHand = { corners: null, frame: null };

/** What hands set of one face of a copy. */
export function setOn({ corners, frames }: Hands, side: 'front' | 'back'): SetByHand {
  return { corners: corners[side] ?? null, frame: frames[side] ?? null };
}

/** What hands said of the marks of one picture, by its name without folders. */
export function annotationsOn({ marks }: Hands, name: string): readonly Annotation[] {
  return marks.filter(({ target }) => target.source.split('/').at(-1) === name);
}

/** What hands set, as far as it is understood. */
export function handsOf(document: unknown): Hands {
  const { hand, frame, marks } = objectOf(document);
  return {
    corners: eachSide(hand),
    frames: eachSide(frame),
    marks: Array.isArray(marks) ? marks.filter(isAnnotation) : [],
  };
}

/** The examination with hands' work in the place of what stood there; all else is kept. */
export function withHands(document: unknown, { corners, frames, marks }: Hands): string {
  const examined = { ...objectOf(document), hand: corners, frame: frames, marks };
  return `${JSON.stringify(examined, null, 1)}\n`;
}

function eachSide(value: unknown): EachSide {
  const { front, back } = objectOf(value);
  return { ...(isCorners(front) ? { front } : {}), ...(isCorners(back) ? { back } : {}) };
}

/**
 * The examination with what was measured anew in the place of what stood there, the grade beside it
 * as decisions read it; hands' work and all else are kept.
 */
export function withMeasured(document: unknown, machine: object, grade: object): string {
  return `${JSON.stringify({ ...objectOf(document), machine, grade }, null, 1)}\n`;
}

function objectOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? { ...value } : {};
}

function isCorners(value: unknown): value is Corners {
  const isPoint = (point: unknown) =>
    Array.isArray(point) && point.length === 2 && point.every((n) => Number.isFinite(n));
  return Array.isArray(value) && value.length === 4 && value.every(isPoint);
}

/** As far as it is read; more of the standard may stand in it. */
function isAnnotation(value: unknown): value is Annotation {
  const { id, body, target } = objectOf(value);
  const { source, selector } = objectOf(target);
  return (
    typeof id === 'string' &&
    Array.isArray(body) &&
    body.every((one) => typeof objectOf(one).value === 'string') &&
    typeof source === 'string' &&
    typeof objectOf(selector).value === 'string'
  );
}

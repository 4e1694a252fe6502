import type { Corners } from '../geometry/points.ts';
import type { Annotation } from './annotation.ts';

/** What hands set on a copy, as `desk/examinations/COPY.json` keeps it beside what was measured. */
export interface Hands {
  readonly corners: { readonly front?: Corners; readonly back?: Corners };
  readonly marks: readonly Annotation[];
}

/** What hands set, as far as it is understood. */
export function handsOf(document: unknown): Hands {
  const { hand, marks } = objectOf(document);
  const { front, back } = objectOf(hand);
  return {
    corners: {
      ...(isCorners(front) ? { front } : {}),
      ...(isCorners(back) ? { back } : {}),
    },
    marks: Array.isArray(marks) ? marks.filter(isAnnotation) : [],
  };
}

/** The examination with hands' work in the place of what stood there; all else is kept. */
export function withHands(document: unknown, { corners, marks }: Hands): string {
  return `${JSON.stringify({ ...objectOf(document), hand: corners, marks }, null, 1)}\n`;
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

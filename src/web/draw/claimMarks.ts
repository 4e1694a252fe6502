/** How a claim is drawn: see `claimMarks`. */
export type MarkShape = 'tick' | 'cross' | 'bracket' | 'span' | 'until' | 'from';

/** A claim placed beneath the days; `x1` equals `x0` for ticks, crosses and half-brackets. */
export interface ClaimMark {
  readonly shape: MarkShape;
  readonly x0: number;
  readonly x1: number;
  readonly slip: boolean;
  readonly label: string;
}

export interface ClaimMarks {
  readonly marks: readonly ClaimMark[];
  /** Claims that lie before and after what is shown. */
  readonly before: number;
  readonly after: number;
}

/** What a mark needs to know of a claim. */
export interface Markable {
  readonly property: string;
  readonly slip: boolean;
  /** First and last day it can mean; null where open. */
  readonly span: readonly [number | null, number | null];
}

const COVERS = new Set(['cover-date', 'label-year', 'copyright-year']);
const LABELS: Record<string, string> = {
  'cover-date': 'cover',
  'label-year': 'label',
  'copyright-year': 'copyright',
};

function shapeOf(claim: Markable): MarkShape {
  const [first, last] = claim.span;
  if (claim.property === 'seen-by' || claim.property === 'distributed-until') return 'until';
  if (claim.property === 'not-before' || claim.property === 'unlisted-on') return 'from';
  if (COVERS.has(claim.property)) return 'bracket';
  if (first === null) return 'until';
  if (last === null) return 'from';
  if (last - first > 0) return 'span';
  return claim.slip ? 'cross' : 'tick';
}

/**
 * Places claims by `x` (a day to pixels) within `width`: a tick where a claim agrees, a cross for a
 * slip, a bracket where a cover or label lies, a line for a month or year, half a bracket for a
 * bound. What lies outside is counted, not drawn; what agrees and covers the whole of it tells
 * nothing at this zoom, and is left out.
 */
export function claimMarks(
  claims: readonly Markable[],
  x: (day: number) => number,
  width: number,
): ClaimMarks {
  const marks: ClaimMark[] = [];
  let before = 0;
  let after = 0;
  for (const claim of claims) {
    const shape = shapeOf(claim);
    const [first, last] = claim.span;
    const days = daysOf(shape, first, last);
    if (!days) continue;
    const x0 = x(days[0]);
    const x1 = x(days[1]);
    if (x1 < 0) before++;
    else if (x0 > width) after++;
    else if (x0 < 0 && x1 > width && !claim.slip) continue;
    else marks.push({ shape, x0, x1, slip: claim.slip, label: LABELS[claim.property] ?? '' });
  }
  return { marks, before, after };
}

function daysOf(
  shape: MarkShape,
  first: number | null,
  last: number | null,
): readonly [number, number] | undefined {
  if (shape === 'until') return last === null ? undefined : [last, last];
  if (shape === 'from') return first === null ? undefined : [first, first];
  if (first === null || last === null) return undefined;
  if (shape === 'cross' || shape === 'tick') return [(first + last) / 2, (first + last) / 2];
  return [first, last];
}

/**
 * Claims worth a mark on the long axis, where a month is a few pixels: beside a day that is known,
 * covers and bounds that agree with it would only blur it.
 */
export function telling(claims: readonly Markable[], dayKnown: boolean): readonly Markable[] {
  if (!dayKnown) return claims;
  return claims.filter((claim) => {
    if (claim.slip) return true;
    const shape = shapeOf(claim);
    return shape === 'tick' || shape === 'span';
  });
}

/** The outline of a mark as an SVG path; `y` is the top of the strip of claims, 10 pixels high. */
export function markPath(mark: ClaimMark, y: number, width: number): string {
  const x0 = Math.max(0, mark.x0);
  const x1 = Math.min(width, Math.max(mark.x1, mark.x0 + 1));
  const begins = mark.x0 >= 0;
  const ends = mark.x1 <= width;
  switch (mark.shape) {
    case 'tick':
      return `M${r(x0)} ${y}v8`;
    case 'cross':
      return `M${r(x0 - 3)} ${y + 1}l6 6m0 -6l-6 6`;
    case 'span':
      return `M${r(x0)} ${y + 4}H${r(x1)}${begins ? `M${r(x0)} ${y + 2}v4` : ''}${ends ? `M${r(x1)} ${y + 2}v4` : ''}${crossed(mark, y)}`;
    case 'bracket':
      return `M${r(x0)} ${y + 8}${begins ? 'v-6v6' : ''}H${r(x1)}${ends ? 'v-6' : ''}${crossed(mark, y)}`;
    case 'until':
      return `M${r(x0)} ${y}v8h-5`;
    case 'from':
      return `M${r(x0)} ${y}v8h5`;
  }
}

/** A slip carries a cross whatever its shape, so that its colour is not needed to know it. */
function crossed(mark: ClaimMark, y: number): string {
  return mark.slip ? `M${r(Math.max(0, mark.x0) - 3)} ${y + 1}l6 6m0 -6l-6 6` : '';
}

function r(value: number): number {
  return Math.round(value * 10) / 10;
}

import { civilOf, dayFrom, dayOf } from '../../evidence/index.ts';
import type { Account, Release, ToldClaim } from '../account/types.ts';
import { type Html, html } from './html.ts';

/** The years that a chronology spans, and the years between two lines of its axis. */
export interface Axis {
  readonly from: number;
  readonly to: number;
  /** First years of the parts that the axis is cut into, all of one length. */
  readonly years: readonly number[];
}

/** Units across a lane; it is stretched to the room that it has. */
export const ACROSS = 640;
const PARTS = 8;

/** The axis that holds the days of all printings of an account. */
export function axisOf({ printings }: Account): Axis {
  const days = printings.flatMap(({ release }) => release.days.map(([day]) => dayFrom(day)));
  const [low, high] = days.length > 0 ? [Math.min(...days), Math.max(...days)] : [0, 0];
  const [first, last] = [civilOf(low).year, civilOf(high).year];
  const step = Math.max(1, Math.ceil((last - first + 1) / PARTS));
  const parts = Math.ceil((last - first + 1) / step);
  const years = Array.from({ length: parts }, (_, i) => first + i * step);
  return { from: dayOf(first, 1, 1), to: dayOf(first + parts * step, 1, 1), years };
}

/**
 * The ribbon of a release, as deep as the square root of the probability, and its claims below.
 * Words beside it tell the same, so it is hidden from those who listen.
 */
export function laneSvg(release: Release, axis: Axis): Html {
  const { years, ribbon, agrees, slips } = laneOf(release, axis);
  const lines = years.map((at) => `M${at} 0V26`).join('');
  const ticks = agrees.map((at) => `M${at} 17v8`).join('');
  const crosses = slips.map((at) => `M${round(at - 4)} 17l8 7m0 -7l-8 7`).join('');
  return html`<svg class="lane" viewBox="0 0 ${ACROSS} 26" preserveAspectRatio="none" aria-hidden="true"><path class="year" d="${lines}"/>${inkPaths(ribbon.map(([at, width, ink]) => [ink, outlineOf(at, width, 2, 12)]))}<path class="agrees" d="${ticks}"/><path class="slips" d="${crosses}"/></svg>`;
}

/** Height of a printing among many, and depths of ink that are told apart there. */
const FINE = 3;
const DEPTHS = 3;

/** The ribbons of many releases, a fine line for each, without their claims. */
export function manyLanesSvg(releases: readonly Release[], axis: Axis): Html {
  const high = FINE * releases.length;
  let lines = '';
  const outlines = releases.flatMap((release, i) => {
    const { years, ribbon } = laneOf(release, axis);
    lines = years.map((at) => `M${at} 0V${high}`).join('');
    return coarser(ribbon).map(
      ([at, width, ink]) => [ink, outlineOf(at, width, FINE * i, FINE - 1)] as const,
    );
  });
  return html`<svg class="lane many" viewBox="0 0 ${ACROSS} ${high}" height="${high}" preserveAspectRatio="none" aria-hidden="true"><path class="year" d="${lines}"/>${inkPaths(outlines)}</svg>`;
}

/** A ribbon in fewer depths of ink, neighbours of one depth as one stretch. */
function coarser(ribbon: Lane['ribbon']): Lane['ribbon'] {
  const stretches: [number, number, number][] = [];
  for (const [at, width, ink] of ribbon) {
    const depth = Math.round(ink * DEPTHS) / DEPTHS;
    const last = stretches.at(-1);
    if (last && last[0] + last[1] === at && last[2] === depth) last[1] += width;
    else stretches.push([at, width, depth]);
  }
  return stretches;
}

/** The outline of a stretch, closed by being filled. */
function outlineOf(at: number, width: number, top: number, high: number): string {
  return `M${at} ${top}h${width}v${high}h-${width}`;
}

/** Outlines of one depth of ink as one path, the faintest first; what has no depth is left out. */
function inkPaths(outlines: readonly (readonly [ink: number, outline: string])[]): readonly Html[] {
  const paths = new Map<number, string>();
  for (const [ink, outline] of outlines) paths.set(ink, `${paths.get(ink) ?? ''}${outline}`);
  return [...paths]
    .filter(([ink]) => ink > 0)
    .sort(([a], [b]) => a - b)
    .map(([ink, d]) => html`<path class="ink" opacity="${ink}" d="${d}"/>`);
}

/** What is drawn in a lane, and where, from 0 to `ACROSS`. */
export interface Lane {
  /** First days of the parts of the axis. */
  readonly years: readonly number[];
  /** Stretches of equal depth: where they begin, how wide they are, how deep. */
  readonly ribbon: readonly (readonly [at: number, width: number, ink: number])[];
  /** Claims that agree. */
  readonly agrees: readonly number[];
  readonly slips: readonly number[];
}

/** Lays out a release on the axis: depth of ink is the square root of the probability. */
export function laneOf({ days, claims }: Release, axis: Axis): Lane {
  const x = (day: number) => round(((day - axis.from) / (axis.to - axis.from)) * ACROSS);
  return {
    years: axis.years.map((year) => x(dayOf(year, 1, 1))),
    ribbon: inked(days, x),
    agrees: marks(claims, x, false),
    slips: marks(claims, x, true),
  };
}

function inked(
  days: Release['days'],
  x: (day: number) => number,
): (readonly [number, number, number])[] {
  const cells = new Map<number, number>();
  for (const [day, p] of days) {
    const cell = Math.floor(x(dayFrom(day)) / 3);
    cells.set(cell, (cells.get(cell) ?? 0) + p);
  }
  return [...cells]
    .map(([cell, p]) => [cell * 3, 3, Math.round(Math.sqrt(Math.min(1, p)) * 16) / 16] as const)
    .filter(([, , ink]) => ink > 0);
}

function marks(
  claims: readonly ToldClaim[],
  x: (day: number) => number,
  slips: boolean,
): readonly number[] {
  const at = claims.flatMap(({ slip, property, span: [first, last] }) => {
    if (slip !== slips || property !== 'on-sale' || first === null || last === null) return [];
    const middle = x((dayFrom(first) + dayFrom(last)) / 2);
    return middle < 0 || middle > ACROSS ? [] : [middle];
  });
  return [...new Set(at)];
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

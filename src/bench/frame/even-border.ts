import { medianOf } from '../../maths/index.ts';
import type { MarginColumn, Tint } from './margin.ts';

/** Farther from the border's colour than this, over three channels on the scale of L*, is another colour. */
const ALIKE = 6;
/** Light is taken from so many columns on each side; their median keeps a shadow's rim, however sharp. */
const NEAR = 4;
/** A column of which less has the border's colour may be covered. */
const CLEAR = 0.8;
/** Covered stretches have so many columns at least, and fewer than that again part two of them. */
const LEAST_RUN = 4;
const LEAST_GAP = 3;
/** Two fingers, or a finger and a thumb. */
const MOST_RUNS = 2;

/** The first and the last column of a stretch. */
export type Run = readonly [first: number, last: number];

/** How far what lies between the cut edge and a line has one colour, however it is lit. */
export interface Evenness {
  /** Share of the cells, 0 to 1, that has the colour. */
  readonly share: number;
  /** The longest stretches that have another one, two at most. */
  readonly covered: readonly Run[];
  /** Share of the columns outside of these stretches, and of their cells that has the colour. */
  readonly seen: number;
  readonly seenShare: number;
  /** Natural logarithm of the brightest light there over the dimmest. */
  readonly lightRange: number;
}

/**
 * How even a margin is: each cell is held against the tint at the light of its part of the side, so
 * that shadow, slope of brightness and fall-off do not count. A border keeps its tint and changes
 * its light but slowly, or once at the rim of a shadow; art that runs to the cut edge does neither.
 */
export function evennessOf(margin: readonly MarginColumn[], tint: Tint): Evenness {
  const light = margin.map((_, c) => lightNear(margin, c));
  const alike = margin.map((column, c) => alikeShare(column, tint, light[c] as number));
  const covered = runsOf(alike.map((share) => share < CLEAR));
  const seen = Array.from(alike.keys()).filter((c) => !isCovered(covered, c));
  const lights = seen.map((c) => light[c] as number);
  return {
    share: meanOf(alike),
    covered,
    seen: seen.length / margin.length,
    seenShare: meanOf(seen.map((c) => alike[c] as number)),
    lightRange: Math.log(Math.max(...lights) / Math.min(...lights)),
  };
}

/** Whether a column lies in one of some runs. */
export function isCovered(runs: readonly Run[], column: number): boolean {
  return runs.some(([first, last]) => first <= column && column <= last);
}

/** The middle light of the columns about one; NaN where none has a cell. */
function lightNear(margin: readonly MarginColumn[], c: number): number {
  const about = margin.slice(Math.max(0, c - NEAR), c + NEAR + 1);
  return medianOf(Float64Array.from(about, ({ light }) => light).filter((light) => light >= 0));
}

function alikeShare({ cells }: MarginColumn, tint: Tint, light: number): number {
  const expected = tint.map((share) => lightnessOf(share * light));
  const count = cells[0].length;
  let alike = 0;
  for (let d = 0; d < count; d++) {
    let square = 0;
    for (let k = 0; k < 3; k++) {
      const seen = lightnessOf((cells[k] as Float64Array)[d] as number);
      square += (seen - (expected[k] as number)) ** 2;
    }
    if (square < ALIKE ** 2) alike++;
  }
  return count > 0 ? alike / count : 0;
}

/** CIE 1976 lightness of a channel's light. */
function lightnessOf(light: number): number {
  return light > 216 / 24389 ? 116 * Math.cbrt(light) - 16 : (24389 / 27) * light;
}

/** The longest runs of columns that are not clear, in the order of the columns. */
function runsOf(unclear: readonly boolean[]): readonly Run[] {
  const runs: [number, number][] = [];
  unclear.forEach((one, c) => {
    if (!one) return;
    const last = runs.at(-1);
    if (last && c - last[1] <= LEAST_GAP) last[1] = c;
    else runs.push([c, c]);
  });
  const length = ([first, last]: Run) => last - first + 1;
  return runs
    .filter((run) => length(run) >= LEAST_RUN)
    .sort((a, b) => length(b) - length(a))
    .slice(0, MOST_RUNS)
    .sort(([a], [b]) => a - b);
}

function meanOf(values: readonly number[]): number {
  return values.length > 0 ? values.reduce((sum, value) => sum + value, 0) / values.length : 0;
}

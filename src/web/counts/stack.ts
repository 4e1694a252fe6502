import type { WireHistory } from '../../contract/index.ts';
import { type Scale, xOf } from '../draw/index.ts';
import { topOf } from './course.ts';

/** How high the highest bar may stand, in pixels. */
export const BAR_HEIGHT = 110;

/** Copies at one grade within a bar. */
export interface Block {
  readonly y: number;
  readonly height: number;
  /** Position of its grade, worst first. */
  readonly grade: number;
  readonly count: number;
}

/** The graded copies of one report. */
export interface Bar {
  readonly as_of: string;
  readonly x: number;
  /** Where it ends. */
  readonly y: number;
  readonly total: number;
  readonly blocks: readonly Block[];
  /** Where its 95 % begins and ends; undefined where nothing is estimated. */
  readonly doubt: readonly [number, number] | undefined;
}

/** The bars of a printing at a service, on their days. */
export interface Stack {
  readonly scale: Scale;
  readonly bars: readonly Bar[];
  readonly most: number;
  /** Width of a bar, so that none touches the next. */
  readonly thick: number;
}

/** Stacks the counts of each report, the worst grade lowest; entries that are no grade are left out. */
export function stackOf(
  { snapshots, share, share95 }: WireHistory,
  grades: number,
  width: number,
): Stack {
  const graded = snapshots.map(({ counts }) => counts.slice(0, grades));
  const wholes = graded.map((counts) => counts.reduce((sum, count) => sum + count, 0));
  const highest = share < 1 ? share95[1] : share;
  const most = topOf(Math.max(1, ...wholes.map((whole) => whole * highest)));
  const days = snapshots.map(({ day }) => day);
  const scale = { from: Math.min(...days) - 40, to: Math.max(...days) + 40, width };
  const yAt = (count: number) => BAR_HEIGHT * (1 - Math.min(most, count) / most);
  const bars = snapshots.map(({ as_of, day }, at) => {
    const whole = wholes[at] ?? 0;
    return {
      as_of,
      x: xOf(scale, day),
      y: yAt(whole * share),
      total: whole * share,
      blocks: blocksOf(graded[at] ?? [], share / most),
      doubt: share < 1 ? ([yAt(whole * share95[0]), yAt(whole * share95[1])] as const) : undefined,
    };
  });
  return { scale, bars, most, thick: barWidth(bars.map(({ x }) => x)) };
}

function blocksOf(counts: readonly number[], each: number): readonly Block[] {
  let y = BAR_HEIGHT;
  return counts.flatMap((count, grade) => {
    if (count <= 0) return [];
    const height = count * each * BAR_HEIGHT;
    y -= height;
    return { y, height, grade, count };
  });
}

function barWidth(xs: readonly number[], most = 26): number {
  const gaps = xs.slice(1).map((x, at) => x - (xs[at] ?? 0));
  return Math.max(2, Math.min(most, 0.62 * Math.min(...gaps, most / 0.62)));
}

import { type Scale, xOf } from '../draw/index.ts';

/** A count on a day of a report. */
export interface Dot {
  readonly x: number;
  readonly y: number;
  readonly count: number;
  readonly day: number;
}

/** One service's counts as they are drawn: where a report lacks the labels, the line breaks. */
export interface Course {
  readonly dots: readonly Dot[];
  readonly line: string;
}

/** The highest of a scale of counts: a round number at or above the most. */
export function topOf(most: number): number {
  const power = 10 ** Math.floor(Math.log10(Math.max(1, most)));
  return power * ([1, 1.5, 2, 3, 4, 5, 6, 8, 10].find((step) => step * power >= most) ?? 10);
}

/** The course of one service, days along x and counts up from `height`. */
export function courseOf(
  days: readonly number[],
  counts: readonly (number | null)[],
  scale: Scale,
  top: number,
  height: number,
): Course {
  const dots: Dot[] = [];
  let line = '';
  let joined = false;
  days.forEach((day, at) => {
    const count = counts[at] ?? null;
    if (count === null) {
      joined = false;
      return;
    }
    const dot = { x: xOf(scale, day), y: height * (1 - count / top), count, day };
    dots.push(dot);
    line += `${joined ? 'L' : 'M'}${dot.x.toFixed(1)} ${dot.y.toFixed(1)}`;
    joined = true;
  });
  return { dots, line };
}

/** A band between a share's ends along a course, as a closed path; empty under two dots. */
export function bandOf(
  { dots }: Course,
  low: number,
  high: number,
  top: number,
  height: number,
): string {
  if (dots.length < 2) return '';
  const y = (count: number) => (height * (1 - Math.min(count, top) / top)).toFixed(1);
  const over = dots.map(({ x, count }) => `${x.toFixed(1)} ${y(count * high)}`);
  const under = dots.map(({ x, count }) => `${x.toFixed(1)} ${y(count * low)}`).reverse();
  return `M${[...over, ...under].join('L')}z`;
}

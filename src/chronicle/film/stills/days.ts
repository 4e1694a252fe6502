import { dayFrom, isoOf } from '../../../evidence/index.ts';
import type { Release } from '../../account/types.ts';
import type { Room } from './sheet.ts';
import { box, INK, line, words } from './svg.ts';
import { LEAST } from './types.ts';

/** Days that a bar stands for at least, so that a window of years is no comb. */
const MOST_BARS = 120;

/** The days that a release may lie on: a bar's height is their probability, with the claims beneath. */
export function daysDrawn(
  { days, claims }: Release,
  { x, y, width, height }: Room,
  say: (iso: string) => string,
): string {
  if (days.length === 0) return '';
  const spans = claims.flatMap(({ span: [from], slip }) =>
    from === null ? [] : [{ day: dayFrom(from), slip }],
  );
  const numbers = days.map(([day, p]) => [dayFrom(day), p] as const);
  const [first, last] = reach(
    numbers.map(([day]) => day),
    spans.map(({ day }) => day),
  );
  const step = Math.max(1, Math.ceil((last - first + 1) / MOST_BARS));
  const bars = new Map<number, number>();
  for (const [day, p] of numbers) {
    const bar = Math.floor((day - first) / step);
    bars.set(bar, (bars.get(bar) ?? 0) + p);
  }
  const small = { size: LEAST, fill: INK.second };
  const wide = width / Math.ceil((last - first + 1) / step);
  const top = Math.max(...bars.values());
  const base = y + height - 92;
  const place = (day: number) => x + (Math.floor((day - first) / step) + 0.5) * wide;
  return [
    line(
      [
        [x, base],
        [x + width, base],
      ],
      INK.third,
      2,
    ),
    words(x, base + 84, say(isoOf(first)), small),
    words(x + width, base + 84, say(isoOf(last)), { ...small, anchor: 'end' }),
    ...[...bars].map(([bar, p]) => {
      const tall = Math.max(2, ((base - y) * p) / top);
      return box(x + bar * wide + wide * 0.1, base - tall, Math.max(4, wide * 0.8), tall, INK.ink);
    }),
    ...spans
      .filter(({ day }) => day >= first && day <= last)
      .map(({ day, slip }) => (slip ? cross(place(day), base + 24) : tick(place(day), base + 8))),
  ].join('');
}

/** From a little before the first to a little after the last; claims far off are left out. */
function reach(days: readonly number[], claims: readonly number[]): readonly [number, number] {
  const [first, last] = [Math.min(...days), Math.max(...days)];
  const around = Math.max(14, last - first);
  const near = claims.filter((day) => day > first - around * 3 && day < last + around * 3);
  return [Math.min(first, ...near) - 3, Math.max(last, ...near) + 3];
}

function tick(x: number, y: number): string {
  return box(x - 4, y, 8, 30, INK.cyan);
}

function cross(x: number, y: number): string {
  return (
    line(
      [
        [x - 12, y - 12],
        [x + 12, y + 12],
      ],
      INK.magenta,
      5,
    ) +
    line(
      [
        [x + 12, y - 12],
        [x - 12, y + 12],
      ],
      INK.magenta,
      5,
    )
  );
}

import { isoOf } from '../../src/evidence/index.ts';
import type { Answer } from './engine.ts';

export type Dated = Answer['printings'][number];

/** The answer for one printing from probabilities by day number, which need not add up to one. */
export function answerOf(id: string, weights: ReadonlyMap<number, number>): Dated {
  const total = [...weights.values()].reduce((sum, w) => sum + w, 0);
  if (!(total > 0)) {
    return { id, best: null, p_best: 0, interval95: null, p_interval: 0, days: [] };
  }
  const all = [...weights].map(([day, w]) => [day, w / total] as const);
  const sorted = [...all].sort((a, b) => b[1] - a[1] || a[0] - b[0]);
  let held = 0;
  const kept = sorted.filter(([, p]) => {
    const wanted = held < 0.999;
    held += p;
    return wanted;
  });
  const days = kept.sort((a, b) => a[0] - b[0]).map(([day, p]) => [isoOf(day), p] as const);
  const [first, last, p] = shortestRun(
    all.sort((a, b) => a[0] - b[0]),
    0.95,
  );
  const best = sorted[0]!;
  return {
    id,
    best: isoOf(best[0]),
    p_best: best[1],
    interval95: [isoOf(first), isoOf(last)],
    p_interval: p,
    days,
  };
}

/** The shortest run of days that holds at least a share, and what it holds; days ascending. */
export function shortestRun(
  days: readonly (readonly [number, number])[],
  share: number,
): [first: number, last: number, p: number] {
  let found: [number, number, number] | undefined;
  let mass = 0;
  let from = 0;
  for (const [last, p] of days) {
    mass += p;
    while (mass - days[from]![1] >= share - 1e-12) mass -= days[from++]![1];
    const first = days[from]![0];
    const shorter = found === undefined || last - first < found[1] - found[0];
    if (mass >= share - 1e-12 && shorter) found = [first, last, mass];
  }
  return found ?? [days[0]![0], days[days.length - 1]![0], mass];
}

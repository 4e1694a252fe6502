import type { Problem } from './problem.ts';
import { cellWeight, dayWeight } from './weekdays.ts';

/** A distribution over days: ascending days and their probabilities, which add up to one. */
export interface DayWeights {
  readonly days: Int32Array;
  readonly p: Float64Array;
}

/** Cells below this probability are left out. */
const NEGLIGIBLE = 1e-7;

/**
 * Spreads the probability of an event's cells over single days, a block's by weekday.
 *
 * @param cells probability of each cell of the problem
 * @param week weight of each weekday for this event, as `weekdayWeights` has them
 */
export function spreadDays(
  problem: Problem,
  e: number,
  cells: Float64Array,
  week: ArrayLike<number>,
): DayWeights {
  const days: number[] = [];
  const p: number[] = [];
  const push = (block: number, first: number, last: number, density: number) => {
    for (let d = first; d <= last; d++) {
      days.push(d);
      p.push(density * dayWeight(problem, block, d, week));
    }
  };
  const end = problem.cellStart[e + 1]!;
  for (let k = problem.cellStart[e]!; k < end; ) {
    const block = problem.cellWeekday[k]! < 0 ? k++ : -1;
    const density = block < 0 ? 0 : densityOf(problem, block, cells[block]!, week);
    let next = block < 0 ? 0 : problem.cellLo[block]!;
    const last = block < 0 ? Number.POSITIVE_INFINITY : problem.cellHi[block]!;
    for (; k < end && problem.cellWeekday[k]! >= 0 && problem.cellLo[k]! <= last; k++) {
      const single = problem.cellLo[k]!;
      if (density > 0) push(block, next, single - 1, density);
      if (cells[k]! > NEGLIGIBLE) {
        days.push(single);
        p.push(cells[k]!);
      }
      next = single + 1;
    }
    if (density > 0) push(block, next, last, density);
  }
  const total = p.reduce((sum, q) => sum + q, 0);
  return { days: Int32Array.from(days), p: Float64Array.from(p, (q) => q / total) };
}

/** Probability of one day of a block for each unit of weekday weight; 0 where it is negligible. */
function densityOf(problem: Problem, k: number, p: number, week: ArrayLike<number>) {
  return p < NEGLIGIBLE ? 0 : p / cellWeight(problem, k, week);
}

/** The most probable day and its probability. */
export function bestDay({ days, p }: DayWeights): { day: number; p: number } {
  let best = 0;
  for (let j = 1; j < p.length; j++) if (p[j]! > p[best]!) best = j;
  return { day: days[best]!, p: p[best]! };
}

/** The shortest run of days that holds at least `level`, and what it holds; the earliest of equals. */
export function shortestRun(
  { days, p }: DayWeights,
  level: number,
): { from: number; to: number; p: number } {
  let best = { from: days[0]!, to: days.at(-1)!, p: 1, length: Number.POSITIVE_INFINITY };
  let held = 0;
  for (let a = 0, b = 0; a < p.length; a++) {
    while (b < p.length && held < level) held += p[b++]!;
    if (held < level) break;
    const length = days[b - 1]! - days[a]!;
    if (length < best.length || (length === best.length && held > best.p)) {
      best = { from: days[a]!, to: days[b - 1]!, p: held, length };
    }
    held -= p[a]!;
  }
  return { from: best.from, to: best.to, p: Math.min(1, best.p) };
}

/** The fewest days that hold `level` of the probability, ascending. */
export function fewestDays({ days, p }: DayWeights, level: number): DayWeights {
  const order = Array.from(p, (_, j) => j).sort((a, b) => p[b]! - p[a]! || days[a]! - days[b]!);
  let held = 0;
  let n = 0;
  while (n < order.length && held < level) held += p[order[n++]!]!;
  const kept = order.slice(0, n).sort((a, b) => a - b);
  return { days: Int32Array.from(kept, (j) => days[j]!), p: Float64Array.from(kept, (j) => p[j]!) };
}

/** Days apart from which two peaks are told apart. */
const GAP = 10;

/** Separate peaks that hold at least a twentieth each, the likeliest first; none where there is one. */
export function modesOf(weights: DayWeights): { from: number; to: number; p: number }[] {
  const { days, p } = fewestDays(weights, 0.98);
  const peaks: { from: number; to: number; p: number }[] = [];
  days.forEach((day, j) => {
    const last = peaks.at(-1);
    if (last && day - last.to <= GAP) {
      last.to = day;
      last.p += p[j]!;
    } else peaks.push({ from: day, to: day, p: p[j]! });
  });
  const large = peaks.filter((peak) => peak.p >= 0.05).sort((a, b) => b.p - a.p);
  return large.length > 1 ? large : [];
}

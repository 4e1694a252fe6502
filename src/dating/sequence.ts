import type { DayWeights } from './spread.ts';

/** Probability that one day comes before another, and that they are the same, independent. */
export function compareDays(a: DayWeights, b: DayWeights): { before: number; same: number } {
  let before = 0;
  let same = 0;
  let j = 0;
  let passed = 0;
  for (let i = 0; i < a.days.length; i++) {
    while (j < b.days.length && b.days[j]! < a.days[i]!) passed += b.p[j++]!;
    const equal = j < b.days.length && b.days[j] === a.days[i] ? b.p[j]! : 0;
    same += a.p[i]! * equal;
    before += a.p[i]! * Math.max(0, 1 - passed - equal);
  }
  return { before, same };
}

/** The day by which half of the probability has passed. */
export function medianDay({ days, p }: DayWeights): number {
  let held = 0;
  for (let j = 0; j < p.length; j++) {
    held += p[j]!;
    if (held >= 0.5) return days[j]!;
  }
  return days.at(-1)!;
}

function meanDay({ days, p }: DayWeights): number {
  let sum = 0;
  for (let j = 0; j < p.length; j++) sum += days[j]! * p[j]!;
  return sum;
}

/** What events are put in order by. */
export interface Middle {
  /** The day by which half of the probability has passed. */
  readonly median: number;
  readonly mean: number;
}

/** The middle of a distribution over days. */
export function middleOf(weights: DayWeights): Middle {
  return { median: medianDay(weights), mean: meanDay(weights) };
}

/**
 * Events in order of release: by the middle of their distribution, but never against a sequence
 * fact.
 *
 * @param middles of all events
 * @param orders pairs of events, earlier first
 */
export function orderEvents(
  middles: readonly Middle[],
  orders: readonly (readonly [number, number])[],
): number[] {
  const later = new Map<number, number[]>();
  const waiting = new Int32Array(middles.length);
  for (const [a, b] of orders) {
    later.set(a, [...(later.get(a) ?? []), b]);
    waiting[b]!++;
  }
  const sorted = middles.map((_, e) => e).sort((a, b) => compareMiddles(middles, a, b));
  const out: number[] = [];
  const place = (e: number) => {
    out.push(e);
    for (const next of later.get(e) ?? [])
      if (--waiting[next]! === 0 && passed.has(next)) place(next);
  };
  const passed = new Set<number>();
  for (const e of sorted) {
    passed.add(e);
    if (waiting[e] === 0) place(e);
  }
  return out;
}

function compareMiddles(middles: readonly Middle[], a: number, b: number): number {
  const [m, n] = [middles[a]!, middles[b]!];
  return m.median - n.median || m.mean - n.mean || a - b;
}

/** Probability below which a day is not looked at when asking which event is first. */
const NEGLIGIBLE = 1e-7;

/**
 * Probability of each event that no other is earlier. Events that a sequence fact puts after
 * another cannot be first; the rest are taken as independent. Walks the days once, with what is left
 * of each event's distribution.
 */
export function firstEvents(
  weights: readonly DayWeights[],
  orders: readonly (readonly [number, number])[],
): Map<number, number> {
  const hasEarlier = new Set(orders.map(([, b]) => b));
  const steps: { day: number; e: number; p: number }[] = [];
  let limit = Number.POSITIVE_INFINITY;
  weights.forEach(({ days }, e) => {
    if (!hasEarlier.has(e)) limit = Math.min(limit, days.at(-1)!);
  });
  weights.forEach(({ days, p }, e) => {
    if (hasEarlier.has(e)) return;
    for (let j = 0; j < days.length && days[j]! <= limit; j++) {
      if (p[j]! > NEGLIGIBLE) steps.push({ day: days[j]!, e, p: p[j]! });
    }
  });
  return walk(steps.sort((a, b) => a.day - b.day));
}

function walk(steps: readonly { day: number; e: number; p: number }[]): Map<number, number> {
  const left = new Map<number, number>();
  const out = new Map<number, number>();
  /** Log of the probability that every event is still to come. */
  let all = 0;
  for (let j = 0; j < steps.length; ) {
    const { day } = steps[j]!;
    let end = j;
    for (; end < steps.length && steps[end]!.day === day; end++) {
      const { e, p } = steps[end]!;
      const own = left.get(e) ?? 1;
      out.set(e, (out.get(e) ?? 0) + p * Math.exp(all - Math.log(own)));
    }
    for (; j < end; j++) {
      const { e, p } = steps[j]!;
      const own = left.get(e) ?? 1;
      const now = Math.max(1e-12, own - p);
      left.set(e, now);
      all += Math.log(now / own);
    }
    if (all < -40) break;
  }
  for (const [e, p] of out) {
    if (p < 0.0005) out.delete(e);
    else out.set(e, Math.min(1, p));
  }
  return out;
}

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

/**
 * Events in order of release: by the middle of their distribution, but never against a sequence
 * fact.
 *
 * @param orders pairs of events, earlier first
 */
export function orderEvents(
  weights: readonly DayWeights[],
  orders: readonly (readonly [number, number])[],
): number[] {
  const middle = weights.map(medianDay);
  const mean = weights.map(meanDay);
  const later = new Map<number, number[]>();
  const waiting = new Int32Array(weights.length);
  for (const [a, b] of orders) {
    later.set(a, [...(later.get(a) ?? []), b]);
    waiting[b]!++;
  }
  const sorted = weights
    .map((_, e) => e)
    .sort((a, b) => middle[a]! - middle[b]! || mean[a]! - mean[b]! || a - b);
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

/**
 * Probability of each event that no other is earlier. Events that a sequence fact puts after
 * another cannot be first; the rest are taken as independent.
 */
export function firstEvents(
  weights: readonly DayWeights[],
  orders: readonly (readonly [number, number])[],
): Map<number, number> {
  const hasEarlier = new Set(orders.map(([, b]) => b));
  const events = weights.map((_, e) => e).filter((e) => !hasEarlier.has(e));
  const limit = Math.min(...events.map((e) => weights[e]!.days.at(-1)!));
  const rivals = events.filter((e) => weights[e]!.days[0]! <= limit);
  const out = new Map<number, number>();
  for (const e of rivals) {
    let p = 0;
    weights[e]!.days.forEach((day, i) => {
      let share = weights[e]!.p[i]!;
      for (const o of rivals) if (o !== e && share > 0) share *= notBefore(weights[o]!, day);
      p += share;
    });
    if (p >= 0.0005) out.set(e, p);
  }
  return out;
}

function notBefore({ days, p }: DayWeights, day: number): number {
  let before = 0;
  for (let j = 0; j < days.length && days[j]! < day; j++) before += p[j]!;
  return Math.max(0, 1 - before);
}

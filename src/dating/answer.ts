import { edtfOfRange, isoOf } from '../evidence/index.ts';
import type { Findings } from './say.ts';
import { compareDays } from './sequence.ts';
import { bestDay, type DayWeights, fewestDays, modesOf, shortestRun } from './spread.ts';
import type { Tally } from './tally.ts';
import type { DatedPrinting, ExplainedClaim, Sequence } from './types.ts';
import { sayWhy } from './why.ts';

/** What is answered of an event, the same for each of its printings. */
export type DatedEvent = Omit<DatedPrinting, 'id' | 'together'>;

/** What is answered of one event, given what its claims were explained as. */
export function datedEvent(
  { evidence, weights }: Findings,
  e: number,
  claims: readonly ExplainedClaim[],
): DatedEvent {
  const spread = weights[e]!;
  const best = bestDay(spread);
  const run = shortestRun(spread, 0.95);
  const { days, p } = fewestDays(spread, 0.999);
  const state = claims.length === 0 ? 'bounded' : best.p >= 0.5 ? 'day' : 'window';
  const why = sayWhy(evidence, {
    day: best.day,
    p: best.p,
    from: run.from,
    to: run.to,
    state,
    claims,
  });
  return {
    best: isoOf(best.day),
    edtf: edtfOf(best, run),
    p_best: best.p,
    interval95: [isoOf(run.from), isoOf(run.to)],
    p_interval: run.p,
    days: Array.from(days, (d, j) => [isoOf(d), p[j]!] as const),
    state,
    modes: modesOf(spread).map(({ from, to, p }) => ({ from: isoOf(from), to: isoOf(to), p })),
    claims,
    why,
  };
}

/** What is answered of one printing of an event. */
export function datedPrinting(
  { evidence, compiled: { releases } }: Findings,
  i: number,
  { claims, why, ...dated }: DatedEvent,
): DatedPrinting {
  const others = releases.events[releases.eventOf[i]!]!.members.filter((j) => j !== i);
  const together = others.map((j) => evidence.printings[j]!.id);
  return { id: evidence.printings[i]!.id, ...dated, together, claims, why };
}

/** A day where one is known, marked uncertain below nine in ten; else the run that holds 95 %. */
function edtfOf(best: { day: number; p: number }, run: { from: number; to: number }): string {
  if (best.p >= 0.9) return isoOf(best.day);
  return best.p >= 0.5 ? `${isoOf(best.day)}?` : edtfOfRange(run.from, run.to);
}

/** What neighbours in order are told by: distributions, sequence facts, and names. */
export interface Neighbours {
  readonly weights: readonly DayWeights[];
  /** Sequence facts, as `earlier,later`. */
  readonly facts: ReadonlySet<string>;
  /** Names an event's printings. */
  readonly idsOf: (e: number) => readonly string[];
}

/** Sequence facts as they are looked up. */
export function factsOf(orders: readonly (readonly [number, number])[]): ReadonlySet<string> {
  return new Set(orders.map((pair) => pair.join()));
}

/** Neighbours in order, with the chance that they came in it. */
export function sequencesOf(events: readonly number[], neighbours: Neighbours): Sequence[] {
  return events.slice(1).map((later, j) => sequenceOf(events[j]!, later, neighbours));
}

/** How probable it is that one event came before another, or on one day with it. */
export function sequenceOf(
  earlier: number,
  later: number,
  { weights, facts, idsOf }: Neighbours,
): Sequence {
  const stated = facts.has(`${earlier},${later}`);
  const { before, same } = stated
    ? { before: 1, same: 0 }
    : compareDays(weights[earlier]!, weights[later]!);
  return {
    earlier: idsOf(earlier)[0]!,
    later: idsOf(later)[0]!,
    p: before,
    p_same_day: same,
    stated,
  };
}

/**
 * Largest standard error of any event's likeliest cell, from the spread between batches; batches that
 * take derivations for possible, and those that do not, are compared with their own kind.
 */
export function monteCarloError(
  { batches, batchSweeps, guarded, sweeps }: Tally,
  cellStart: Int32Array,
  nEvents: number,
): number {
  const kinds = [false, true].map((kind) => guarded.flatMap((g, j) => (g === kind ? [j] : [])));
  let worst = 0;
  for (let e = 0; e < nEvents; e++) {
    let top = cellStart[e]!;
    const total = (k: number) => batches.reduce((sum, batch) => sum + batch[k]!, 0);
    let most = total(top);
    for (let k = top + 1; k < cellStart[e + 1]!; k++) {
      const sum = total(k);
      if (sum > most) [top, most] = [k, sum];
    }
    const errors = kinds.map((kind) => {
      const share = kind.reduce((sum, j) => sum + batchSweeps[j]!, 0) / sweeps;
      return share * errorOfMean(kind.map((j) => batches[j]![top]! / batchSweeps[j]!));
    });
    worst = Math.max(worst, Math.hypot(...errors));
  }
  return worst;
}

function errorOfMean(values: readonly number[]): number {
  const n = values.length;
  if (n < 2) return 0;
  const mean = values.reduce((a, b) => a + b, 0) / n;
  return Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (n * (n - 1)));
}

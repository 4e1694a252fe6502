import { type Evidence, edtfOfRange, isoOf, weekdayOf } from '../evidence/index.ts';
import { partsByEvidence } from './apart.ts';
import { type Compiled, compile } from './compile.ts';
import { releasesOf } from './events.ts';
import { explainEvent } from './explain.ts';
import { leadsFor, trustByKind } from './leads.ts';
import { sourcesOf } from './reliability.ts';
import { planFor, sample } from './run.ts';
import type { Findings } from './say.ts';
import { compareDays, firstEvents, orderEvents } from './sequence.ts';
import {
  bestDay,
  type DayWeights,
  fewestDays,
  modesOf,
  shortestRun,
  spreadDays,
} from './spread.ts';
import type { State } from './state.ts';
import { averageCells, type Tally } from './tally.ts';
import type {
  DatedPrinting,
  Dating,
  ExplainedClaim,
  Lead,
  Sequence,
  WeekdayHabit,
} from './types.ts';
import { averageWeekdays, weekdayWeights } from './weekdays.ts';
import { sayWhy } from './why.ts';

export interface DateOptions {
  /** Whole number from which all chance is drawn. */
  readonly seed?: number;
  /** `first` answers soon and roughly; `refined` is the answer to quote. */
  readonly effort?: 'first' | 'refined';
  readonly onProgress?: (share: number) => void;
}

/**
 * Dates every printing of a dossier: release days with their doubt, order, slips, derivations and
 * leads, by a Bayesian model over release events (`docs/methods/dating.md`). Misleads where sources
 * share errors that no other source contradicts: then the answer is surer than it should be.
 *
 * @throws RangeError if the seed is not a whole number
 */
export function date(evidence: Evidence, options: DateOptions = {}): Dating {
  const { seed = 1, effort = 'refined', onProgress } = options;
  const compiled = compile(evidence, partsByEvidence(evidence, seed));
  const { problem } = compiled;
  if (problem.last < problem.first) return undated(evidence, seed, effort);
  const { tally, state } = sample(evidence, problem, planFor(problem, effort), seed, onProgress);
  return answer(evidence, compiled, tally, state, seed, effort);
}

function answer(
  evidence: Evidence,
  compiled: Compiled,
  tally: Tally,
  state: State,
  seed: number,
  effort: 'first' | 'refined',
): Dating {
  const { problem, releases } = compiled;
  const weights = weightsOf(compiled, tally, state);
  const findings: Findings = { evidence, compiled, tally, weights };
  const explained = releases.events.map((_, e) => explainEvent(findings, e));
  const printings = evidence.printings.map((_, i) => datedPrinting(findings, i, explained));
  const orders = [...releases.orders, ...releases.weakOrders];
  const events = orderEvents(weights, orders).filter((e) => releases.events[e]!.members.length > 0);
  const first = firstEvents(weights, orders);
  const idsOf = (e: number) => releases.events[e]!.members.map((i) => evidence.printings[i]!.id);
  return {
    printings,
    order: events.flatMap(idsOf),
    first: [...first]
      .flatMap(([e, p]) => idsOf(e).map((id) => ({ id, p })))
      .sort((a, b) => b.p - a.p),
    sequences: sequencesOf(events, weights, releases.orders, idsOf),
    sources: sourcesOf(evidence, compiled, tally, weights),
    weekdays: weekdaysOf(compiled, weights),
    leads: leadsOf(evidence, compiled, weights, explained),
    monte_carlo_error: monteCarloError(tally, problem.cellStart, problem.nEvents),
    seed,
    effort,
  };
}

function undated(evidence: Evidence, seed: number, effort: 'first' | 'refined'): Dating {
  const printings = evidence.printings.map(
    ({ id }): DatedPrinting => ({
      id,
      best: null,
      edtf: '/',
      p_best: 0,
      interval95: null,
      p_interval: 0,
      days: [],
      state: 'open',
      modes: [],
      together: [],
      claims: [],
      why: sayWhy(evidence, { day: 0, p: 0, from: 0, to: 0, state: 'open', claims: [] }),
    }),
  );
  const sources = evidence.sources.map(({ id }) => ({
    id,
    accuracy: null,
    accuracy95: null,
    claims: 0,
    derives: [],
    habits: [],
  }));
  const { events, orders } = releasesOf(evidence);
  const flat = events.map((): DayWeights => ({ days: Int32Array.of(0), p: Float64Array.of(1) }));
  const undatedOrder = orderEvents(flat, orders).filter((e) => events[e]!.members.length > 0);
  const idsOf = (e: number) => events[e]!.members.map((i) => evidence.printings[i]!.id);
  return {
    printings,
    order: undatedOrder.flatMap(idsOf),
    first: [],
    sequences: sequencesOf(undatedOrder, flat, orders, idsOf).filter(({ stated }) => stated),
    sources,
    weekdays: [],
    leads: [],
    monte_carlo_error: 0,
    seed,
    effort,
  };
}

function weightsOf({ problem, releases }: Compiled, tally: Tally, state: State): DayWeights[] {
  const cells = averageCells(tally);
  const counts = { ...averageWeekdays(problem, tally), pooling: state.pooling, evenWeek: false };
  const week = new Float64Array(7);
  return releases.events.map((_, e) => {
    weekdayWeights(problem, counts, e, week);
    return spreadDays(problem, e, cells, week);
  });
}

function datedPrinting(
  { evidence, compiled, weights }: Findings,
  i: number,
  explained: readonly ExplainedClaim[][],
): DatedPrinting {
  const { releases } = compiled;
  const e = releases.eventOf[i]!;
  const spread = weights[e]!;
  const best = bestDay(spread);
  const run = shortestRun(spread, 0.95);
  const { days, p } = fewestDays(spread, 0.999);
  const { id } = evidence.printings[i]!;
  const claims = explained[e]!;
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
    id,
    best: isoOf(best.day),
    edtf: edtfOf(best, run),
    p_best: best.p,
    interval95: [isoOf(run.from), isoOf(run.to)],
    p_interval: run.p,
    days: Array.from(days, (d, j) => [isoOf(d), p[j]!] as const),
    state,
    modes: modesOf(spread).map(({ from, to, p }) => ({ from: isoOf(from), to: isoOf(to), p })),
    together: releases.events[e]!.members.filter((j) => j !== i).map(
      (j) => evidence.printings[j]!.id,
    ),
    claims,
    why,
  };
}

/** A day where one is known, marked uncertain below nine in ten; else the run that holds 95 %. */
function edtfOf(best: { day: number; p: number }, run: { from: number; to: number }): string {
  if (best.p >= 0.9) return isoOf(best.day);
  return best.p >= 0.5 ? `${isoOf(best.day)}?` : edtfOfRange(run.from, run.to);
}

function sequencesOf(
  events: readonly number[],
  weights: readonly DayWeights[],
  orders: readonly (readonly [number, number])[],
  idsOf: (e: number) => string[],
): Sequence[] {
  const stated = new Set(orders.map((pair) => pair.join()));
  return events.slice(1).map((later, j) => {
    const earlier = events[j]!;
    const known = stated.has(`${earlier},${later}`);
    const { before, same } = known
      ? { before: 1, same: 0 }
      : compareDays(weights[earlier]!, weights[later]!);
    return {
      earlier: idsOf(earlier)[0]!,
      later: idsOf(later)[0]!,
      p: before,
      p_same_day: same,
      stated: known,
    };
  });
}

function weekdaysOf(
  { problem, releases }: Compiled,
  weights: readonly DayWeights[],
): WeekdayHabit[] {
  const habits = new Map<
    number,
    { market: string; channel: string; shares: number[]; releases: number }
  >();
  releases.events.forEach(({ members, market, channel }, e) => {
    if (members.length === 0) return;
    const h = problem.habitOf[e]!;
    const habit = habits.get(h) ?? { market, channel, shares: [0, 0, 0, 0, 0, 0, 0], releases: 0 };
    habits.set(h, habit);
    habit.releases++;
    weights[e]!.days.forEach((d, j) => {
      habit.shares[weekdayOf(d) - 1]! += weights[e]!.p[j]!;
    });
  });
  return [...habits.values()].map((h) => ({ ...h, shares: h.shares.map((s) => s / h.releases) }));
}

function leadsOf(
  evidence: Evidence,
  { releases }: Compiled,
  weights: readonly DayWeights[],
  explained: readonly ExplainedClaim[][],
): Lead[] {
  const kindOf = new Map(evidence.sources.map((s) => [s.id, s.kind]));
  const trust = trustByKind(evidence, explained.flat());
  const leads = releases.events.flatMap(({ members }, e) => {
    if (members.length === 0) return [];
    const used = new Set(explained[e]!.map((c) => kindOf.get(c.source)!));
    return leadsFor(evidence.printings[members[0]!]!.id, weights[e]!, used, trust);
  });
  return leads.sort((a, b) => b.gain_bits - a.gain_bits).slice(0, 200);
}

/**
 * Largest standard error of any event's likeliest cell, from the spread between batches; batches that
 * take derivations for possible, and those that do not, are compared with their own kind.
 */
function monteCarloError(
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

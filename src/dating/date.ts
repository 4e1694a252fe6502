import { type Evidence, type SourceKind, weekdayOf } from '../evidence/index.ts';
import { datedEvent, datedPrinting, factsOf, monteCarloError, sequencesOf } from './answer.ts';
import { partsByEvidence } from './apart.ts';
import { type Compiled, compile } from './compile.ts';
import type { Releases } from './events.ts';
import { explainEvent } from './explain.ts';
import { leadsFor, trustByKind } from './leads.ts';
import { releaseNames } from './release-names.ts';
import { sourcesOf } from './reliability.ts';
import { planFor, sample } from './run.ts';
import type { Findings } from './say.ts';
import { firstEvents, type Middle, middleOf, orderEvents } from './sequence.ts';
import { type DayWeights, spreadDays } from './spread.ts';
import { averageCells, type Tally } from './tally.ts';
import type { Dating, ExplainedClaim, Lead, WeekdayHabit } from './types.ts';
import { undated } from './undated.ts';
import {
  type AverageWeek,
  averageWeekdays,
  countAverage,
  type WeekdayCounts,
  weekdayWeights,
} from './weekdays.ts';

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
  return fitted(evidence, options).dating;
}

/** What a dating was read off. */
export interface Fit extends Findings {
  /** How often releases fell on each weekday, on average. */
  readonly weekdays: WeekdayCounts;
  /** How far each kind of source is trusted, were there one more. */
  readonly trust: ReadonlyMap<SourceKind, number>;
  /** Of all events. */
  readonly middles: readonly Middle[];
  /** Events that hold printings, most probably earliest first. */
  readonly order: readonly number[];
}

/**
 * Dates a dossier, and gives what the answer was read off; nothing where no claim bounds any day.
 *
 * @param snapshots how many sweeps, at most, leave a snapshot of what was learned
 */
export function fitted(
  evidence: Evidence,
  { seed = 1, effort = 'refined', onProgress }: DateOptions,
  snapshots = 0,
): { readonly dating: Dating; readonly fit?: Fit } {
  const compiled = compile(evidence, partsByEvidence(evidence, seed));
  const { problem } = compiled;
  if (problem.last < problem.first) return { dating: undated(evidence, seed, effort) };
  const plan = planFor(problem, effort);
  const { tally, state } = sample(evidence, problem, plan, seed, onProgress, snapshots);
  const { pooling } = state;
  const weekdays = { ...averageWeekdays(problem, tally), pooling, evenWeek: false };
  const weights = weightsOf(compiled, tally, weekdays);
  const names = releaseNames(evidence, compiled.releases.events);
  const findings = { evidence, compiled, tally, weights, names };
  const explained = compiled.releases.events.map((_, e) => explainEvent(findings, e));
  const trust = trustByKind(evidence, explained.flat());
  const middles = weights.map(middleOf);
  const fit = { ...findings, weekdays, trust, middles, order: orderOf(compiled.releases, middles) };
  return { dating: answer(fit, explained, seed, effort), fit };
}

/** Events that hold printings, most probably earliest first. */
export function orderOf(
  { events, orders, weakOrders }: Releases,
  middles: readonly Middle[],
): number[] {
  const order = orderEvents(middles, [...orders, ...weakOrders]);
  return order.filter((e) => events[e]!.members.length > 0);
}

function answer(
  fit: Fit,
  explained: readonly ExplainedClaim[][],
  seed: number,
  effort: 'first' | 'refined',
): Dating {
  const { evidence, compiled, tally, weights, order } = fit;
  const { problem, releases } = compiled;
  const first = firstEvents(weights, [...releases.orders, ...releases.weakOrders]);
  const dated = explained.map((claims, e) => datedEvent(fit, e, claims));
  const idsOf = (e: number) => releases.events[e]!.members.map((i) => evidence.printings[i]!.id);
  return {
    printings: evidence.printings.map((_, i) =>
      datedPrinting(fit, i, dated[releases.eventOf[i]!]!),
    ),
    order: order.flatMap(idsOf),
    first: [...first]
      .flatMap(([e, p]) => idsOf(e).map((id) => ({ id, p })))
      .sort((a, b) => b.p - a.p),
    sequences: sequencesOf(order, { weights, facts: factsOf(releases.orders), idsOf }),
    sources: sourcesOf(evidence, compiled, tally, weights),
    weekdays: weekdaysOf(compiled, weights),
    leads: leadsOf(fit, explained),
    monte_carlo_error: monteCarloError(tally, problem.cellStart, problem.nEvents),
    seed,
    effort,
  };
}

function weightsOf(
  { problem, releases }: Compiled,
  tally: Tally,
  weekdays: WeekdayCounts & AverageWeek,
): DayWeights[] {
  const cells = averageCells(tally);
  return releases.events.map((_, e) => {
    countAverage(problem, weekdays, tally, e, -1);
    const spread = spreadDays(problem, e, cells, weekdayWeights(problem, weekdays, e));
    countAverage(problem, weekdays, tally, e, 1);
    return spread;
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
  { evidence, compiled: { releases }, weights, trust }: Fit,
  explained: readonly ExplainedClaim[][],
): Lead[] {
  const kindOf = new Map(evidence.sources.map((s) => [s.id, s.kind]));
  const leads = releases.events.flatMap(({ members }, e) => {
    if (members.length === 0) return [];
    const used = new Set(explained[e]!.map((c) => kindOf.get(c.source)!));
    return leadsFor(evidence.printings[members[0]!]!.id, weights[e]!, used, trust);
  });
  return leads.sort((a, b) => b.gain_bits - a.gain_bits).slice(0, 200);
}

import type { Claim } from '../../evidence/index.ts';
import { datedEvent, datedPrinting, monteCarloError, sequenceOf } from '../answer.ts';
import { orderOf } from '../date.ts';
import { explainEvent } from '../explain.ts';
import { leadsFor } from '../leads.ts';
import type { Findings } from '../say.ts';
import { firstEvents, middleOf } from '../sequence.ts';
import { type DayWeights, spreadDays } from '../spread.ts';
import { averageCells, type Tally } from '../tally.ts';
import type { DatedPrinting, ExplainedClaim, Lead } from '../types.ts';
import { countAverage, weekdayWeights } from '../weekdays.ts';
import type { DatingChange } from './change.ts';
import { type ClaimsChange, isClaim, type Run } from './compare.ts';
import type { Kept } from './kept.ts';
import { weekdaysOf } from './load.ts';
import { followed } from './moved.ts';
import { layPart, type Part } from './part.ts';
import { touchedBy } from './touched.ts';
import { tallyUnder } from './under.ts';

/**
 * Dates anew only the releases that a few changed claims concern, with what sequence facts tie to
 * them, and holds all else as it was learned: the sources' rates, lags, derivations and candidate
 * lags, histograms, weekdays, eras and every other release's day. Provisional: where a change tells
 * much about a source itself, only a dating of the whole takes that in
 * (`docs/methods/dating.md`). Undefined where the whole has to be dated instead: too many releases
 * are touched, a new claim lies outside the range of days, or the sequence leaves no day.
 *
 * @param kept what `openDating` kept
 * @param change from the evidence that was dated to the evidence now, by `compareClaims`
 */
export function redate(kept: Kept, change: ClaimsChange): DatingChange | undefined {
  const { claims } = kept.fit.evidence;
  const moved = followed(claims.length, change);
  const rows = movedRows(claims, change);
  const touched = touchedBy(kept, moved);
  if (!touched) return undefined;
  if (touched.size === 0) {
    const { order, first, sequences, leads, monte_carlo_error } = kept.dating;
    return { order, first, sequences, leads, monte_carlo_error, printings: [], rows };
  }
  const part = layPart(kept, moved, touched);
  const tally = part && tallyUnder(kept, part);
  return tally && { ...answerOf(kept, part, tally), rows };
}

function movedRows(claims: readonly Claim[], change: ClaimsChange): Run[] {
  return change.flatMap((piece) => {
    if (isClaim(piece) || piece.rows === 0) return [];
    const { from, to, rows } = piece;
    return [{ from: claims[from]!.row, to: claims[to - 1]!.row + 1, rows }];
  });
}

function answerOf(kept: Kept, part: Part, tally: Tally): Omit<DatingChange, 'rows'> {
  const { compiled, evidence, events, anew } = part;
  const weights = weightsOf(kept, part, tally);
  const names = events.map((whole) => kept.fit.names[whole]!);
  const findings: Findings = { evidence, compiled, tally, weights, names };
  const explained = events.slice(0, anew).map((_, e) => explainEvent(findings, e));
  const printings = explained.flatMap((claims, e): DatedPrinting[] => {
    const dated = datedEvent(findings, e, claims);
    return compiled.releases.events[e]!.members.map((i) => datedPrinting(findings, i, dated));
  });
  return {
    printings,
    ...sequencesNow(kept, part, weights),
    leads: leadsNow(kept, part, weights, explained),
    monte_carlo_error: Math.max(
      kept.dating.monte_carlo_error,
      monteCarloError(tally, compiled.problem.cellStart, anew),
    ),
  };
}

/** Distributions of the days of a part's releases; of those that are held, as they were. */
function weightsOf(kept: Kept, part: Part, tally: Tally): DayWeights[] {
  const { fit } = kept;
  const { events, anew } = part;
  const { problem } = part.compiled;
  const cells = averageCells(tally);
  const weekdays = { ...fit.weekdays, ...weekdaysOf(kept, part, fit.weekdays) };
  const days = fit.tally.days.map((day) => Int32Array.from(events, (whole) => day[whole]!));
  const known = { days, sweeps: fit.tally.sweeps };
  return events.map((whole, e) => {
    if (e >= anew) return fit.weights[whole]!;
    countAverage(problem, weekdays, known, e, -1);
    const spread = spreadDays(problem, e, cells, weekdayWeights(problem, weekdays, e));
    countAverage(problem, weekdays, known, e, 1);
    return spread;
  });
}

/** The order of all releases with the new days of some; what is said of other neighbours stays. */
function sequencesNow(
  { fit, ids, facts, before }: Kept,
  part: Part,
  weights: readonly DayWeights[],
) {
  const { releases } = fit.compiled;
  const all = fit.weights.slice();
  const middles = fit.middles.slice();
  const anew = new Set(part.events.slice(0, part.anew));
  for (let e = 0; e < part.anew; e++) {
    all[part.events[e]!] = weights[e]!;
    middles[part.events[e]!] = middleOf(weights[e]!);
  }
  const idsOf = (e: number) => ids[e]!;
  const order = orderOf(releases, middles);
  const first = firstEvents(all, [...releases.orders, ...releases.weakOrders]);
  return {
    order: order.flatMap(idsOf),
    first: [...first]
      .flatMap(([e, p]) => idsOf(e).map((id) => ({ id, p })))
      .sort((a, b) => b.p - a.p),
    sequences: order.slice(1).map((later, j) => {
      const earlier = order[j]!;
      const known = before.get(later);
      if (known?.earlier === earlier && !anew.has(earlier) && !anew.has(later))
        return known.sequence;
      return sequenceOf(earlier, later, { weights: all, facts, idsOf });
    }),
  };
}

/** The leads there were, save that those of releases dated anew are weighed again. */
function leadsNow(
  { dating, fit }: Kept,
  { compiled, evidence, anew }: Part,
  weights: readonly DayWeights[],
  explained: readonly ExplainedClaim[][],
): Lead[] {
  const kindOf = new Map(evidence.sources.map((s) => [s.id, s.kind]));
  const gone = new Set<string>();
  const fresh: Lead[] = [];
  for (let e = 0; e < anew; e++) {
    const { members } = compiled.releases.events[e]!;
    const id = members.length > 0 ? evidence.printings[members[0]!]!.id : undefined;
    if (id === undefined) continue;
    gone.add(id);
    const used = new Set(explained[e]!.map((c) => kindOf.get(c.source)!));
    fresh.push(...leadsFor(id, weights[e]!, used, fit.trust));
  }
  const rest = dating.leads.filter(({ printing }) => !gone.has(printing));
  return [...rest, ...fresh].sort((a, b) => b.gain_bits - a.gain_bits).slice(0, 200);
}

import type { Evidence } from '../evidence/index.ts';
import { layCells } from './cells.ts';
import { laySharedDays } from './coincidence.ts';
import { type Releases, releasesOf } from './events.ts';
import { startsOf } from './grow.ts';
import { layLinks } from './lay-links.ts';
import { layTerms } from './lay-terms.ts';
import type { Problem } from './problem.ts';
import { cutAtPeriods, layWeeks, statedFor } from './stated-weeks.ts';
import { type Statement, statementsOf } from './statements.ts';
import { type EventSupport, LARGE_REACH, supportsOf } from './support.ts';
import { type Survey, surveyOf } from './survey.ts';
import { ratesOf, runsOf } from './tables.ts';
import { thinned } from './thin.ts';
import { layViews } from './views.ts';

export interface Compiled {
  readonly problem: Problem;
  readonly statements: readonly Statement[];
  readonly releases: Releases;
  readonly survey: Survey;
}

/**
 * Lays a dossier out for the sampler.
 *
 * @param parts of printings that the evidence sets apart from their release
 */
export function compile(evidence: Evidence, parts?: ReadonlyMap<string, number>): Compiled {
  const releases = releasesOf(evidence, parts);
  const statements = statementsOf(evidence, releases);
  const survey = surveyOf(statements, releases, evidence.sources.length);
  const supports = supportsOf(statements, survey, releases);
  const laid = layOut(evidence, releases, statements, survey, supports);
  if (survey.reach !== LARGE_REACH) return laid;
  const kinds = evidence.sources.map((s) => s.kind);
  return { ...laid, problem: thinned(laid.problem, kinds) };
}

/** Lays out releases whose days lie where `supports` says. */
export function layOut(
  evidence: Pick<Evidence, 'products' | 'sources' | 'weekdays'>,
  releases: Releases,
  statements: readonly Statement[],
  survey: Survey,
  supports: readonly EventSupport[],
): Compiled {
  const nEvents = releases.events.length;
  const stated = statedFor(evidence.weekdays ?? [], releases.events);
  cutAtPeriods(supports, stated);
  const cells = layCells(supports, survey.first, survey.last);
  const views = layViews(statements, nEvents);
  const problem: Problem = {
    first: survey.first,
    last: survey.last,
    calendar: survey.calendar,
    nEvents,
    nSources: evidence.sources.length,
    ...cells,
    ...layWeeks(stated, cells),
    ...habitsOf(releases),
    ...views,
    ...layTerms(statements, views, cells, survey, evidence, releases),
    ...survey.lags,
    ...layLinks(survey.links, views, cells),
    ...laySharedDays(survey.links, statements, cells, nEvents),
    ...ratesOf(statements, views, releases, survey.eras),
    ...runsOf(statements, views, releases),
    ...layOrders(releases),
  };
  return { problem, statements, releases, survey };
}

function habitsOf(releases: Releases) {
  const markets = new Map<string, number>();
  const habits = new Map<string, number>();
  const index = (map: Map<string, number>, key: string) => {
    const known = map.get(key);
    if (known !== undefined) return known;
    map.set(key, map.size);
    return map.size - 1;
  };
  const marketOf = Int32Array.from(releases.events, ({ market }) => index(markets, market));
  const habitOf = Int32Array.from(releases.events, ({ market, channel }) =>
    index(habits, `${market}\n${channel}`),
  );
  return { marketOf, habitOf, nMarkets: markets.size, nHabits: habits.size };
}

function layOrders(releases: Releases) {
  const n = releases.events.length;
  const before: { e: number; gap: number }[][] = Array.from({ length: n }, () => []);
  const after: { e: number; gap: number }[][] = Array.from({ length: n }, () => []);
  const add = (pairs: readonly (readonly [number, number])[], gap: number) => {
    for (const [a, b] of pairs) {
      before[b]!.push({ e: a, gap });
      after[a]!.push({ e: b, gap });
    }
  };
  add(releases.orders, 1);
  add(releases.weakOrders, 0);
  return {
    beforeStart: startsOf(before),
    before: Int32Array.from(before.flat(), ({ e }) => e),
    beforeGap: Uint8Array.from(before.flat(), ({ gap }) => gap),
    afterStart: startsOf(after),
    after: Int32Array.from(after.flat(), ({ e }) => e),
    afterGap: Uint8Array.from(after.flat(), ({ gap }) => gap),
  };
}

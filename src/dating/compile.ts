import type { Evidence } from '../evidence/index.ts';
import { layCells } from './cells.ts';
import { laySharedDays } from './coincidence.ts';
import { type Releases, releasesOf } from './events.ts';
import { startsOf } from './grow.ts';
import { calendarOf } from './kernels.ts';
import { candidateLags } from './lags.ts';
import { layLinks } from './lay-links.ts';
import { layTerms } from './lay-terms.ts';
import { linksOf, siblingsOf } from './links.ts';
import type { Problem } from './problem.ts';
import { type Statement, statementsOf } from './statements.ts';
import { LARGE_REACH, rangeOf, SMALL_REACH, supportsOf } from './support.ts';
import { erasOf, ratesOf, runsOf } from './tables.ts';
import { layViews } from './views.ts';

export interface Compiled {
  readonly problem: Problem;
  readonly statements: readonly Statement[];
  readonly releases: Releases;
}

/** Dossiers above this many claims look at fewer single days round each claim. */
const LARGE = 3000;

/**
 * Lays a dossier out for the sampler.
 *
 * @param parts of printings that the evidence sets apart from their release
 */
export function compile(evidence: Evidence, parts?: ReadonlyMap<string, number>): Compiled {
  const releases = releasesOf(evidence, parts);
  const statements = statementsOf(evidence, releases);
  const { first, last } = rangeOf(statements);
  const calendar = calendarOf(first - 800, Math.max(last, first) + 800);
  const nEvents = releases.events.length;
  const nSources = evidence.sources.length;
  const lags = candidateLags(statements, nSources, nEvents);
  const siblings = siblingsOf(releases);
  const reach = statements.length > LARGE ? LARGE_REACH : SMALL_REACH;
  const orders = [...releases.orders, ...releases.weakOrders];
  const supports = supportsOf(statements, nEvents, siblings, lags, calendar, reach, orders);
  const cells = layCells(supports, first, last);
  const views = layViews(statements, nEvents);
  const links = linksOf(statements, siblings);
  const eras = erasOf(statements, nEvents);
  const problem: Problem = {
    first,
    last,
    calendar,
    nEvents,
    nSources,
    ...cells,
    ...habitsOf(releases),
    ...views,
    ...layTerms(statements, views, cells, lags, calendar, evidence, releases),
    ...lags,
    ...layLinks(links, views, cells),
    ...laySharedDays(links, statements, cells, nEvents),
    ...ratesOf(statements, views, releases, eras),
    ...runsOf(statements, views, releases),
    ...layOrders(releases),
  };
  return { problem, statements, releases };
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

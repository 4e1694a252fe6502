import type { Evidence } from '../../evidence/index.ts';
import { factsOf } from '../answer.ts';
import { doubtedAmong, grouped } from '../apart.ts';
import { type DateOptions, type Fit, fitted } from '../date.ts';
import type { Statement } from '../statements.ts';
import type { Dating, Sequence } from '../types.ts';
import { namesOf, numbersOf } from './names.ts';

/** Most snapshots that are kept of what was learned. */
const MOST_SNAPSHOTS = 40;

/** What is kept of a dating, so that a few changed claims are dated anew without the rest. */
export interface Kept {
  readonly dating: Dating;
  readonly fit: Fit;
  /** Numbers of rate cells, runs and histograms of periodicals in the whole problem, by name. */
  readonly rateOf: ReadonlyMap<string, number>;
  /** Names of the markets of the rate cells. */
  readonly markets: readonly string[];
  readonly runOf: ReadonlyMap<string, number>;
  readonly histOf: ReadonlyMap<string, number>;
  /** Ids of the printings of each event. */
  readonly ids: readonly (readonly string[])[];
  /** Sequence facts, as `earlier,later`. */
  readonly facts: ReadonlySet<string>;
  /** For each event, the one before it in order, and what is said of the two. */
  readonly before: ReadonlyMap<number, { readonly earlier: number; readonly sequence: Sequence }>;
  /** Printings of releases that may be in parts, so that their claims tell which belong together. */
  readonly doubted: ReadonlySet<string>;
  /** The statements of each source that have rows beside them, in the order of its rows. */
  readonly lists: readonly (readonly number[])[];
}

/**
 * Dates a dossier as `date` does, and keeps what `redate` needs; nothing is kept where no claim
 * bounds any day.
 *
 * @throws RangeError if the seed is not a whole number
 */
export function openDating(
  evidence: Evidence,
  options: DateOptions = {},
): { readonly dating: Dating; readonly kept?: Kept } {
  const { dating, fit } = fitted(evidence, options, MOST_SNAPSHOTS);
  if (!fit) return { dating };
  const { rates, markets, runs, series } = namesOf(fit.compiled, evidence);
  const { releases } = fit.compiled;
  const kept: Kept = {
    dating,
    fit,
    rateOf: numbersOf(rates),
    markets,
    runOf: numbersOf(runs),
    histOf: numbersOf(series),
    ids: releases.events.map(({ members }) => members.map((i) => evidence.printings[i]!.id)),
    facts: factsOf(releases.orders),
    before: beforeOf(fit, dating),
    doubted: new Set(doubtedAmong(grouped(evidence), evidence.claims).flatMap(({ ids }) => ids)),
    lists: listsOf(fit.compiled.statements, evidence.sources.length),
  };
  return { dating, kept };
}

function beforeOf({ order }: Fit, { sequences }: Dating): Kept['before'] {
  return new Map(
    sequences.map((sequence, j) => [order[j + 1]!, { earlier: order[j]!, sequence }] as const),
  );
}

/** Whether a statement stands in its source's list of days, with rows above and below it. */
export function isListed({ property, events }: Statement): boolean {
  return property === 'on-sale' && events.length === 1;
}

function listsOf(statements: readonly Statement[], nSources: number): number[][] {
  const lists: number[][] = Array.from({ length: nSources }, () => []);
  statements.forEach((statement, i) => {
    if (isListed(statement)) lists[statement.source]!.push(i);
  });
  return lists;
}

import type { Releases } from './events.ts';
import { calendarOf } from './kernels.ts';
import { candidateLags } from './lags.ts';
import { coverShares, DayCounts, filledShares, type Link, linksOf, siblingsOf } from './links.ts';
import type { Statement } from './statements.ts';
import { LARGE_REACH, rangeOf, SMALL_REACH, type Surroundings } from './support.ts';
import { erasOf } from './tables.ts';

/** What laying out a release looks up about the whole dossier. */
export interface Survey extends Surroundings {
  /** First and last day that releases may have; the last before the first where nothing is dated. */
  readonly first: number;
  readonly last: number;
  readonly eras: Uint8Array;
  /** Releases from which each statement may have been taken by mistake. */
  readonly links: readonly Link[][];
  readonly counts: DayCounts;
  /** Probability of each statement's value if its source filled in one day for many. */
  readonly filled: Float32Array;
  /** Probability of each statement's value if its source took a cover's date for the day of sale. */
  readonly covers: Float32Array;
}

/** Dossiers of more statements look at fewer days: near each claim, and far from all. */
const LARGE = 3000;

/** Looks a whole dossier over. */
export function surveyOf(
  statements: readonly Statement[],
  releases: Releases,
  nSources: number,
): Survey {
  const { first, last } = rangeOf(statements);
  const nEvents = releases.events.length;
  const siblings = siblingsOf(releases);
  const counts = new DayCounts();
  for (const statement of statements) counts.add(statement, 1);
  return {
    first,
    last,
    calendar: calendarOf(first - 800, Math.max(last, first) + 800),
    reach: statements.length > LARGE ? LARGE_REACH : SMALL_REACH,
    lags: candidateLags(statements, nSources, nEvents),
    siblings,
    eras: erasOf(statements, nEvents),
    links: linksOf(statements, siblings),
    counts,
    filled: filledShares(statements, counts),
    covers: coverShares(statements),
  };
}

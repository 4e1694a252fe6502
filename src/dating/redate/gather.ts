import type { Evidence } from '../../evidence/index.ts';
import { eventsOfClaim } from '../events.ts';
import { type Statement, statementsOf } from '../statements.ts';
import type { Kept } from './kept.ts';
import type { Moved, Placed } from './moved.ts';

/** What is said, after a change, of the releases that are dated anew. */
export interface Gathered {
  /** The evidence with the claims that concern those releases and no others. */
  readonly evidence: Evidence;
  /** Events are those of the whole; claims are numbered within `evidence`. */
  readonly statements: readonly Statement[];
  /** What was said of them before. */
  readonly old: readonly Statement[];
  /** Where a statement's first claim stands among the claims there were. */
  readonly placeOf: (statement: Statement) => number;
}

/** Gathers what is said of the releases that are dated anew. */
export function gather(
  { fit: { evidence, compiled } }: Kept,
  moved: Moved,
  touched: ReadonlySet<number>,
): Gathered {
  const { problem, statements, releases } = compiled;
  const numbers = new Set<number>();
  for (const e of touched) {
    for (let v = problem.viewStart[e]!; v < problem.viewStart[e + 1]!; v++)
      numbers.add(problem.viewStatement[v]!);
  }
  const old = Array.from(numbers, (i) => statements[i]!);
  const placed: Placed[] = moved.come.filter(({ claim }) =>
    eventsOfClaim(claim, releases).some((e) => touched.has(e)),
  );
  for (const at of old.flatMap(({ claims }) => claims)) {
    if (moved.isGone[at]) continue;
    const claim = evidence.claims[at]!;
    const rows = moved.rows[at]!;
    placed.push({ claim: rows === 0 ? claim : { ...claim, row: claim.row + rows }, at });
  }
  placed.sort((a, b) => a.at - b.at);
  const now = { ...evidence, claims: placed.map(({ claim }) => claim) };
  return {
    evidence: now,
    statements: statementsOf(now, releases),
    old,
    placeOf: ({ claims }) => placed[claims[0]!]!.at,
  };
}

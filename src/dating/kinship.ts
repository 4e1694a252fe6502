import type { Evidence, Source, SourceKind } from '../evidence/index.ts';
import type { Problem } from './problem.ts';

/** What is held of derivations before any statement is compared. */
export interface Kinship {
  /** Log prior odds, against deriving from none, that [source × nSources + other] derives directly. */
  readonly prior: Float64Array;
  /** Runs of each source. */
  readonly runsOf: readonly (readonly number[])[];
}

/** Prior odds of deriving from a source that it cites; from any other, shared among them. Judgement. */
const CITED = 4;
const ANY = 0.25;
/** Among fewer others than this, none is the likelier parent for there being few. Judgement. */
const FEW = 20;
/** A source that is cited by another, or speaks before it, hardly takes from it. Judgement. */
const AGAINST = 0.1;

/** How readily a kind of source takes its days from others. Judgement, no source. */
const BORROWS: Partial<Record<SourceKind, number>> = {
  'publisher-database': 0.3,
  packaging: 0.1,
  'press-release': 0.2,
  advertisement: 0.3,
  newspaper: 0.4,
  'own-observation': 0.1,
  'registration-record': 0.15,
  correspondence: 0.5,
};

/** Lays out who may have taken from whom: citations, kinds of source, and who spoke first. */
export function kinshipOf(evidence: Evidence, problem: Problem): Kinship {
  const { sources } = evidence;
  const n = sources.length;
  const spoken = spokenDays(evidence);
  const prior = new Float64Array(n * n);
  sources.forEach((source, s) => {
    sources.forEach((other, q) => {
      prior[s * n + q] = Math.log(oddsOf(source, other, n, spoken));
    });
  });
  const runsOf: number[][] = Array.from({ length: n }, () => []);
  for (let r = 0; r < problem.nRuns; r++) runsOf[problem.runSource[r]!]!.push(r);
  return { prior, runsOf };
}

/** The same, but that no source is held to derive from one that it does not cite. */
export function citedOnly({ sources }: Evidence, { prior, runsOf }: Kinship): Kinship {
  const cited = prior.slice();
  sources.forEach(({ cites }, s) => {
    sources.forEach(({ id }, q) => {
      if (!cites.includes(id)) cited[s * sources.length + q] = Number.NEGATIVE_INFINITY;
    });
  });
  return { prior: cited, runsOf };
}

function oddsOf(
  source: Source,
  other: Source,
  n: number,
  spoken: ReadonlyMap<string, number>,
): number {
  if (source.cites.includes(other.id)) return CITED;
  let odds = (ANY / Math.max(FEW, n - 1)) * (BORROWS[source.kind] ?? 1);
  if (other.cites.includes(source.id)) odds *= AGAINST;
  const own = spoken.get(source.id);
  const theirs = spoken.get(other.id);
  if (own !== undefined && theirs !== undefined && own < theirs) odds *= AGAINST;
  return odds;
}

/** The middle day on which a source stated its claims, where it says so. */
function spokenDays({ claims }: Evidence): Map<string, number> {
  const days = new Map<string, number[]>();
  for (const { source, stated_on } of claims) {
    const day = stated_on?.ranges[0]?.first;
    if (day === undefined || !Number.isFinite(day)) continue;
    const list = days.get(source);
    if (list) list.push(day);
    else days.set(source, [day]);
  }
  return new Map(
    [...days].map(([id, list]) => [id, list.sort((a, b) => a - b)[list.length >> 1]!]),
  );
}

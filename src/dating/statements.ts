import type { Claim, DateProperty, EdtfDate, Evidence } from '../evidence/index.ts';
import { eventsOfClaim, type Releases } from './events.ts';

/** What can be compared with a release day: a run of days within which the statement puts it. */
export interface Span {
  readonly lo: number;
  readonly hi: number;
}

/** One value that a source may have meant to state; several where its rows disagree. */
export interface StatedValue {
  /** Alternatives of one written value, such as the two readings of `3/4/96`. */
  readonly spans: readonly Span[];
  /** Probability that this value is the statement and the others are slips of the pen. */
  readonly weight: number;
  readonly approximate: boolean;
  readonly uncertain: boolean;
}

/** What one source says of one property of one release: all its rows on it together. */
export interface Statement {
  readonly source: number;
  readonly property: DateProperty;
  /** Events it may concern; one, save where the claim leaves it open. */
  readonly events: readonly number[];
  readonly values: readonly StatedValue[];
  /** Indices into `evidence.claims`. */
  readonly claims: readonly number[];
}

/** Chance that a row carries a slip of the pen of its own. Judgement, no source. */
const ROW_SLIP = 0.03;
/** Chance that a slip of the pen gives exactly the other value that was found. Judgement. */
const PEN_HITS = 1 / 200;

/**
 * Gathers claims into statements: a source says one thing of a release and repeats it on its rows,
 * so the statement, not the row, is the unit of evidence. Claims without a bounded date are left out.
 */
export function statementsOf(evidence: Evidence, releases: Releases): Statement[] {
  const sourceIndex = new Map(evidence.sources.map((s, i) => [s.id, i]));
  const groups = new Map<string, { source: number; events: number[]; claims: number[] }>();
  evidence.claims.forEach((claim, c) => {
    if (!claim.date || !bounded(claim.date)) return;
    const events = eventsOfClaim(claim, releases);
    if (events.length === 0) return;
    const source = sourceIndex.get(claim.source)!;
    const key = `${source} ${claim.property} ${events.length === 1 ? events[0] : events.join()}`;
    const group = groups.get(key);
    if (group) group.claims.push(c);
    else groups.set(key, { source, events, claims: [c] });
  });
  return [...groups.values()].map(({ source, events, claims }) => ({
    source,
    property: evidence.claims[claims[0]!]!.property as DateProperty,
    events,
    claims,
    values: valuesOf(claims.map((c) => evidence.claims[c]!)),
  }));
}

function bounded(date: EdtfDate): boolean {
  return date.ranges.some((r) => Number.isFinite(r.first) || Number.isFinite(r.last));
}

function valuesOf(rows: readonly Claim[]): StatedValue[] {
  const first = rows[0]!.date!;
  if (rows.length === 1 || rows.every((row) => row.value === rows[0]!.value)) {
    return [statedValue(first, 1)];
  }
  const counts = new Map<string, { date: EdtfDate; n: number }>();
  for (const row of rows) {
    const seen = counts.get(row.value);
    if (seen) seen.n++;
    else counts.set(row.value, { date: row.date!, n: 1 });
  }
  const values = [...counts.values()];
  const weights = values.map((u) =>
    values.reduce((w, v) => w * rowFactor(u.date, v.date) ** v.n, 1),
  );
  const total = weights.reduce((a, b) => a + b, 0);
  return values
    .map(({ date }, j) => statedValue(date, weights[j]! / total))
    .filter((v) => v.weight > 1e-6)
    .sort((a, b) => b.weight - a.weight);
}

/** Probability of one row's value, given the value that the source meant. */
function rowFactor(meant: EdtfDate, row: EdtfDate): number {
  if (row.text === meant.text) return 1 - ROW_SLIP;
  if (holds(row, meant)) return (1 - ROW_SLIP) / 3;
  return ROW_SLIP * PEN_HITS;
}

function holds(coarse: EdtfDate, fine: EdtfDate): boolean {
  return fine.ranges.every((f) =>
    coarse.ranges.some((c) => c.first <= f.first && f.last <= c.last),
  );
}

function statedValue(date: EdtfDate, weight: number): StatedValue {
  return {
    spans: date.ranges.map((r) => ({ lo: r.first, hi: r.last })),
    weight,
    approximate: date.approximate,
    uncertain: date.uncertain,
  };
}

/** Days that spans hold together, ten years at most. */
export function breadth(spans: readonly Span[]): number {
  const days = spans.reduce((sum, { lo, hi }) => sum + Math.min(hi - lo + 1, 3650), 0);
  return Math.min(days, 3650);
}

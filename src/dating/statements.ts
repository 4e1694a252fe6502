import {
  type Claim,
  DATE_PROPERTIES,
  type DateProperty,
  type EdtfDate,
  type Evidence,
} from '../evidence/index.ts';
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
export function statementsOf(
  evidence: Pick<Evidence, 'sources' | 'claims'>,
  releases: Releases,
): Statement[] {
  const sourceIndex = new Map(evidence.sources.map((s, i) => [s.id, i]));
  const nEvents = releases.events.length;
  const known = new Map<number | string, Draft>();
  const drafts: Draft[] = [];
  evidence.claims.forEach((claim, c) => {
    if (!isBounded(claim)) return;
    const events = eventsOfClaim(claim, releases);
    if (events.length === 0) return;
    const source = sourceIndex.get(claim.source)!;
    const p = DATE_PROPERTIES.indexOf(claim.property as DateProperty);
    const kind = source * DATE_PROPERTIES.length + p;
    const key = events.length === 1 ? kind * nEvents + events[0]! : `${kind} ${events.join()}`;
    const draft = known.get(key);
    if (draft) {
      draft.claims.push(c);
      return;
    }
    const begun = { source, property: DATE_PROPERTIES[p]!, events, values: NONE, claims: [c] };
    known.set(key, begun);
    drafts.push(begun);
  });
  const plain = new Map<EdtfDate, readonly StatedValue[]>();
  for (const draft of drafts)
    draft.values = valuesOf(
      draft.claims.map((c) => evidence.claims[c]!),
      plain,
    );
  return drafts;
}

interface Draft extends Omit<Statement, 'values' | 'claims'> {
  values: readonly StatedValue[];
  readonly claims: number[];
}

const NONE: readonly StatedValue[] = [];

/** Whether a claim has a date that begins or ends on a known day, and so bears on a release. */
export function isBounded({ date }: Claim): boolean {
  if (!date) return false;
  return date.ranges.some((r) => Number.isFinite(r.first) || Number.isFinite(r.last));
}

/** @param plain values of dates that stand alone, kept since many claims name the same date */
function valuesOf(
  rows: readonly Claim[],
  plain: Map<EdtfDate, readonly StatedValue[]>,
): readonly StatedValue[] {
  const first = rows[0]!.date!;
  if (rows.length === 1 || rows.every((row) => row.value === rows[0]!.value)) {
    const values = plain.get(first) ?? [statedValue(first, 1)];
    plain.set(first, values);
    return values;
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

import type { Evidence, SourceKind } from '../evidence/index.ts';
import type { DayWeights } from './spread.ts';
import type { ExplainedClaim, Lead } from './types.ts';

interface Kind {
  readonly kind: SourceKind;
  /** How often such a source names the true day, before any is seen here. Judgement, no source. */
  readonly trust: number;
  readonly words: string;
}

/** What one may yet look for. Common practice, no source. */
const KINDS: readonly Kind[] = [
  { kind: 'publisher-database', trust: 0.8, words: "the publisher's own list, kept or archived" },
  { kind: 'press-release', trust: 0.72, words: 'a notice to the trade that names the day' },
  { kind: 'store-listing', trust: 0.68, words: "a shop's dated listing or receipt" },
  { kind: 'advertisement', trust: 0.65, words: 'an advertisement with the day of sale' },
  { kind: 'newspaper', trust: 0.65, words: 'a local newspaper of those weeks' },
  { kind: 'checklist', trust: 0.55, words: 'a checklist made by other hands' },
  { kind: 'forum', trust: 0.45, words: 'talk of those days, with its date' },
];

/** Weight of the prior trust against what the dossier's own sources of a kind have shown. */
const PRIOR_CLAIMS = 8;

/** Mean trust in each kind, given how often its claims here were right. */
export function trustByKind(
  evidence: Evidence,
  claims: Iterable<ExplainedClaim>,
): Map<SourceKind, number> {
  const kindOf = new Map(evidence.sources.map((s) => [s.id, s.kind]));
  const right = new Map<SourceKind, number>();
  const all = new Map<SourceKind, number>();
  for (const { source, property, p_right, span } of claims) {
    if (property !== 'on-sale' || span[0] !== span[1]) continue;
    const kind = kindOf.get(source)!;
    right.set(kind, (right.get(kind) ?? 0) + p_right);
    all.set(kind, (all.get(kind) ?? 0) + 1);
  }
  return new Map(
    KINDS.map(({ kind, trust }) => [
      kind,
      (PRIOR_CLAIMS * trust + (right.get(kind) ?? 0)) / (PRIOR_CLAIMS + (all.get(kind) ?? 0)),
    ]),
  );
}

/**
 * Expected information, in bits, of one more exact day from a source that names the true day with
 * probability `trust`, and otherwise half the time one of the other days thought possible, half the
 * time a day that nobody thought of: the mutual information of day and claim (`lindley:1956`).
 */
export function expectedGain({ p }: DayWeights, trust: number): number {
  const confused = (1 - trust) / 2;
  let claim = confused > 0 ? -confused * Math.log2(confused) : 0;
  let given = claim;
  for (const q of p) {
    const here = q * (trust + confused);
    if (here > 0) claim -= here * Math.log2(here);
    const self = trust + confused * q;
    if (self > 0 && q > 0) given -= q * self * Math.log2(self);
    const others = confused * q * (1 - q);
    if (others > 0) given -= others * Math.log2(confused * q);
  }
  return Math.max(0, claim - given);
}

/** The two most telling leads for one printing. */
export function leadsFor(
  printing: string,
  weights: DayWeights,
  used: ReadonlySet<SourceKind>,
  trust: ReadonlyMap<SourceKind, number>,
): Lead[] {
  return KINDS.filter(({ kind }) => !used.has(kind))
    .map(({ kind, words }) => ({
      printing,
      kind,
      gain_bits: Math.round(expectedGain(weights, trust.get(kind)!) * 1e4) / 1e4,
      words,
    }))
    .filter((lead) => lead.gain_bits >= 0.01)
    .sort((a, b) => b.gain_bits - a.gain_bits)
    .slice(0, 2);
}

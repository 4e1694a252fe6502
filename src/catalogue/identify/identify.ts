import type { Printing } from '../types.ts';
import { alikePairs } from './apart.ts';
import { lookKind } from './looks.ts';
import { type Marks, marksOf, traitName } from './marks.ts';
import { entropy, type NextLook, nextLooks } from './next.ts';
import { priorOf } from './prior.ts';
import { groupsOf, type Models, modelsOf, type Seen } from './seen.ts';
import type { CandidateKind, CounterfeitKind, Hypothesis, Reading, TraitRow } from './types.ts';
import { type Levels, learned, levelsBefore, misreadAt, overLevels, weigh } from './weigh.ts';

/** What a dossier knows that tells one printing from another. */
export interface Known {
  readonly printings: readonly Printing[];
  readonly counterfeits: readonly CounterfeitKind[];
  readonly traits: readonly TraitRow[];
  /** Expected number of copies by id of a printing or counterfeit, on any one scale. */
  readonly about: ReadonlyMap<string, number>;
  /** Other copies of the desk: how often they are misread is learned from them. */
  readonly others: readonly Seen[];
}

/** One thing that the copy may be. */
export interface Candidate {
  readonly id: string;
  readonly kind: CandidateKind;
  readonly p: number;
}

/** Which printing a copy is, and how to find out more. */
export interface Identified {
  /** The likeliest first. */
  readonly candidates: readonly Candidate[];
  /** That it is none of them; all `p` and this add up to 1. */
  readonly unlisted: number;
  /** What is not known yet, in bits. */
  readonly entropy_bits: number;
  /** The best for its effort first. */
  readonly next: readonly NextLook[];
  /** Candidates of 1 % or more that no known trait tells apart. */
  readonly alike: readonly (readonly [string, string])[];
  /** Readings that say nothing, since no printing's value of that trait is known. */
  readonly unused: readonly Reading[];
  /** Expected share of readings by eye that are wrong, after what was learned. */
  readonly misread: number;
}

/** Candidates below it are not told apart in words. */
const LIKELY = 0.01;

/**
 * Which printing, counterfeit or alteration a copy is: the probability of each from what was seen,
 * with each reading's chance of being wrong. It misleads where a printing is not in the dossier and
 * looks like one that is, or where a trait is stated wrongly.
 */
export function identify(known: Known, seen: Seen): Identified {
  const marks = marksOf(known.printings, known.counterfeits, known.traits);
  const models = modelsOf(marks);
  const prior = priorOf(marks.hypotheses, known.about);
  const levels = levelsFrom(known.others, { marks, models, prior });
  const { groups, unused } = groupsOf(seen, models, marks);
  const { joint } = weigh(groups, prior, levels);
  const p = overLevels(joint);
  const candidateOf = candidatesOf(marks.hypotheses);
  const open = openTraits(marks, seen);
  const likely = [...p.keys()].filter(
    (h) => (p[h] as number) >= LIKELY && marks.hypotheses[h]?.kind !== 'unlisted',
  );
  return {
    candidates: candidates(marks.hypotheses, p, candidateOf),
    unlisted: p.at(-1) as number,
    entropy_bits: entropy(p, candidateOf),
    next: nextLooks(models, open, { prior, levels, groups, joint, candidateOf }),
    alike: alikePairs(models, likely).map(([a, b]) => [
      (marks.hypotheses[a] as Hypothesis).id,
      (marks.hypotheses[b] as Hypothesis).id,
    ]),
    unused,
    misread: usualMisread(levels),
  };
}

interface Ground {
  readonly marks: Marks;
  readonly models: Models;
  readonly prior: Float64Array;
}

function levelsFrom(others: readonly Seen[], { marks, models, prior }: Ground): Levels {
  const before = levelsBefore();
  const evidence = others.map(
    (seen) => weigh(groupsOf(seen, models, marks).groups, prior, before).logEvidence,
  );
  return learned(before, evidence);
}

/** Traits that a look at the card tells and that its owner has not looked at. */
function openTraits({ traits }: Marks, { readings }: Seen): string[] {
  const looked = new Set(
    readings
      .filter(({ sees }) => sees !== 'listing' && sees !== 'label')
      .map(({ trait }) => traitName(trait)),
  );
  return [...traits.values()].flatMap(({ name, seen }) => (seen && !looked.has(name) ? name : []));
}

/** Hypotheses of one id count together. */
function candidatesOf(hypotheses: readonly Hypothesis[]): Int32Array {
  const first = new Map<string, number>();
  return Int32Array.from(hypotheses, ({ id }, h) => {
    if (!first.has(id)) first.set(id, h);
    return first.get(id) as number;
  });
}

function candidates(
  hypotheses: readonly Hypothesis[],
  p: Float64Array,
  candidateOf: Int32Array,
): Candidate[] {
  const sums = new Float64Array(p.length);
  p.forEach((one, h) => {
    const at = candidateOf[h] as number;
    sums[at] = (sums[at] as number) + one;
  });
  return hypotheses
    .flatMap(({ id, kind }, h): readonly Candidate[] =>
      kind === 'unlisted' || candidateOf[h] !== h ? [] : [{ id, kind, p: sums[h] as number }],
    )
    .sort((a, b) => b.p - a.p);
}

function usualMisread({ shifts, weights }: Levels): number {
  return shifts.reduce(
    (sum, shift, m) => sum + (weights[m] as number) * misreadAt(lookKind('eye').misread, shift),
    0,
  );
}

import type { Report, Seen } from '../types.ts';
import { type Assigned, assigned, type Candidate } from './assign.ts';
import { candidatesFor } from './block.ts';
import type { Told } from './fields.ts';
import { type Pairs, vocabularyOf, without } from './learned.ts';
import { FIELDS, type Field, LEVEL, type Levels, levelsOf, numbersOf } from './levels.ts';
import { type LabelWords, labelWords, lexiconOf } from './lexicon.ts';
import {
  addHabit,
  columnsOf,
  type Habits,
  levelOf,
  noHabits,
  silences,
  unmatched,
  weightOf,
} from './weights.ts';
import { levelled } from './words.ts';

/** The labels of one report, and which printings are counted under each. */
export interface Matching {
  readonly report: Report;
  /** By label: printings by their place in the dossier, with the probability of each. */
  readonly held: Pairs;
  /** By label: a printing that the dossier does not have. */
  readonly foreign: Float64Array;
  /** By printing: that the service does not list it. */
  readonly unlisted: Float64Array;
  /** By label: distinct certificates that the owner looked at, by printing. */
  readonly looked: readonly ReadonlyMap<number, number>[];
  /** What a label says of a printing, field by field. */
  compared(label: number, printing: number): Compared;
}

/** Fields by how a label and a printing go together; those that either leaves open are in none. */
export interface Compared {
  readonly agrees: readonly Field[];
  readonly near: readonly Field[];
  readonly differs: readonly Field[];
}

/** Weights of fields that depend on each other overclaim by about this. Measured, see the method. */
const TEMPER = 0.65;
/** A word that stands for nothing speaks for a printing that the dossier does not have. Judgement, no source. */
const STRANGE = 2.5;
/** It counts in full where the rest of the label tells less than this. Judgement, no source. */
const TELLING = 2;
/** The best labels of a printing are looked at, and those not this much worse. */
const MOST = 12;
const WORSE = 9;

/** Rounds in which words and habits are learned, and sweeps of the last one. */
function effortFor(pairs: number): { rounds: number; sweeps: number } {
  if (pairs > 1_000_000) return { rounds: 1, sweeps: 12 };
  return pairs > 60_000 ? { rounds: 2, sweeps: 60 } : { rounds: 4, sweeps: 300 };
}

/** Matches the labels of a service's report to printings. */
export function matched(report: Report, told: Told, seen: readonly Seen[]): Matching {
  const taken = labelWords(report.labels);
  const lexicon = lexiconOf(told, taken.words, taken.often);
  const numbers = numbersOf(told);
  const columns = columnsOf(told, numbers);
  const witness = witnessOf(report, told, seen);
  const { rounds, sweeps } = effortFor(report.labels.length * told.ids.length);
  let held: Pairs = report.labels.map(() => new Map());
  let habits: Habits = noHabits(columns);
  let answer: Assigned | undefined;
  let problem: Candidate[][] = [];
  let levels: readonly Levels[] = [];
  for (let round = 0; round <= rounds; round++) {
    const vocabulary = vocabularyOf(taken.labels, held, told, lexicon);
    levels = taken.labels.map((label, at) => {
      const words =
        round === 0 ? lexicon : without(label, held[at] as never, vocabulary, lexicon, told);
      return levelsOf(label, words, told, numbers);
    });
    habits = noHabits(columns);
    held.forEach((pairs, label) => {
      for (const [printing, p] of pairs)
        addHabit(habits, columns, told, levels[label] as Levels, printing, p);
    });
    problem = candidates(taken.labels, levels, held, habits, told, columns, witness);
    const last = round === rounds;
    const unlisted = witness.unlisted;
    answer = assigned(
      { labels: report.labels.length, candidates: problem, unlisted },
      last ? sweeps : Math.ceil(sweeps / 4),
      1 + round,
    );
    held = heldBy(answer, problem, report.labels.length);
  }
  const { foreign, unlisted } = answer as Assigned;
  const compared = (label: number, printing: number): Compared => {
    const at = (level: number) =>
      FIELDS.filter(
        (field) =>
          (columns.of[field][printing] as number) >= 0 &&
          levelOf(field, printing, levels[label] as Levels, columns, told) === level,
      );
    return { agrees: at(LEVEL.agrees), near: at(LEVEL.near), differs: at(LEVEL.differs) };
  };
  return { report, held, foreign, unlisted, looked: witness.looked, compared };
}

function candidates(
  labels: readonly LabelWords[],
  levels: readonly Levels[],
  held: Pairs,
  habits: Habits,
  told: Told,
  columns: ReturnType<typeof columnsOf>,
  witness: Witness,
): Candidate[][] {
  const lists: Candidate[][] = told.ids.map(() => []);
  const among = candidatesFor(told, columns);
  const silence = silences(columns, habits);
  labels.forEach((_, label) => {
    if (witness.confirmed[label] === null) return;
    const here = levels[label] as Levels;
    const ifNot = unmatched(here, columns, told);
    const looked = witness.looked[label] as ReadonlyMap<number, number>;
    const sure = witness.confirmed[label] as ReadonlySet<number>;
    for (const printing of new Set([...among(here), ...looked.keys(), ...sure])) {
      const own = (held[label] as ReadonlyMap<number, number>).get(printing) ?? 0;
      const words = weightOf(printing, here, ifNot, columns, told, habits, silence, own);
      const strange = here.strange * (words < TELLING ? STRANGE : STRANGE / 4);
      const weight = TEMPER * (words - strange);
      const seen = witness.speaks(label, printing);
      if (weight + seen < -12 && seen <= 0) continue;
      (lists[printing] as Candidate[]).push({ label, weight, seen });
    }
  });
  return lists.map(bestOnes);
}

function bestOnes(list: Candidate[]): Candidate[] {
  const value = ({ weight, seen }: Candidate) => weight + seen;
  list.sort((a, b) => value(b) - value(a));
  const best = list[0];
  if (best === undefined) return list;
  return list.slice(0, MOST).filter((one) => value(one) > value(best) - WORSE);
}

function heldBy(answer: Assigned, problem: readonly Candidate[][], labels: number): Pairs {
  const held = Array.from({ length: labels }, () => new Map<number, number>());
  problem.forEach((list, printing) => {
    list.forEach(({ label }, i) => {
      const p = answer.p[printing]?.[i] as number;
      if (p > 1e-3) (held[label] as Map<number, number>).set(printing, p);
    });
  });
  return held;
}

/** What the owner confirmed, and saw with their own eyes. */
interface Witness {
  readonly looked: readonly ReadonlyMap<number, number>[];
  /** By label; null where it is none of the dossier's. */
  readonly confirmed: readonly (ReadonlySet<number> | null)[];
  readonly unlisted: Float64Array;
  /** Log of how much it speaks for a printing under a label. */
  speaks(label: number, printing: number): number;
}

/** Chance that an owner takes one printing for another. Judgement, no source. */
const MISTAKEN = Math.log(0.06);

function witnessOf(report: Report, told: Told, seen: readonly Seen[]): Witness {
  const index = new Map(told.ids.map((id, at) => [id, at]));
  const labelAt = new Map(report.labels.map((label, at) => [levelled(label).trim(), at]));
  const looked = report.labels.map(() => new Map<number, Set<string>>());
  const copies = told.ids.map(() => new Set<string>());
  for (const { service, printings, label, certificate, day } of seen) {
    const printing = index.get(printings[0] ?? '');
    if (service !== report.service || printings.length !== 1 || printing === undefined) continue;
    const name = certificate || `${day}`;
    copies[printing]?.add(name);
    const at = label === '' ? undefined : labelAt.get(levelled(label).trim());
    if (at === undefined) continue;
    const here = looked[at] as Map<number, Set<string>>;
    here.set(printing, (here.get(printing) ?? new Set()).add(name));
  }
  const counts = looked.map((here) => new Map([...here].map(([at, names]) => [at, names.size])));
  const all = new Float64Array(told.ids.length);
  for (const here of counts) for (const [at, n] of here) all[at]! += Math.min(2, n);
  const confirmed = report.confirmed.map(
    (ids) => ids && new Set(ids.flatMap((id) => index.get(id) ?? [])),
  );
  const homes = new Set(confirmed.flatMap((here) => (here?.size === 1 ? [...here] : [])));
  const unlisted = Float64Array.from(copies, (names, at) => {
    const sure = homes.has(at) ? -9 : 0;
    return sure + MISTAKEN * 0.5 * Math.min(4, names.size);
  });
  return {
    looked: counts,
    confirmed,
    unlisted,
    speaks: (label, printing) => {
      const here = Math.min(2, counts[label]?.get(printing) ?? 0);
      const elsewhere = MISTAKEN * ((all[printing] as number) - here);
      const sure = confirmed[label] as ReadonlySet<number>;
      if (sure.has(printing)) return elsewhere + (sure.size === 1 ? 8 : 3);
      if (sure.size > 1) return elsewhere - 6;
      return elsewhere + (here > 0 ? 2 * here : 0) + (homes.has(printing) ? -6 : 0);
    },
  };
}

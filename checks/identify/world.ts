import {
  type CounterfeitKind,
  type Counts,
  expectedNumbers,
  type Known,
  type Reading,
  readValue,
  type Seen,
  type TraitRow,
} from '../../src/catalogue/index.ts';
import { type Chance, chance, pick } from '../../src/maths/index.ts';

/** How hard a world is: shares of rows that are missing and of readings that are wrong. */
export interface Hardness {
  readonly missing: number;
  readonly misread: number;
  /** Traits seen on a copy. */
  readonly seen: readonly [least: number, most: number];
}

export const HARDNESS = {
  easy: { missing: 0.1, misread: 0.03, seen: [5, 7] },
  medium: { missing: 0.25, misread: 0.08, seen: [4, 6] },
  hard: { missing: 0.4, misread: 0.15, seen: [3, 5] },
} as const satisfies Readonly<Record<string, Hardness>>;

/** A trait of the invented world: words, or numbers with a tolerance. */
export interface TrueTrait {
  readonly name: string;
  readonly words: readonly string[] | null;
  readonly tolerance: number;
}

/** One thing that is about, with all that is true of it. */
export interface TrueThing {
  readonly id: string;
  readonly weight: number;
  /** By trait: the place of its word, or its number. */
  readonly values: readonly number[];
  /** By trait: whether the dossier has a row of it. */
  readonly told: readonly boolean[];
  /** The printing that it passes for, where it is a counterfeit. */
  readonly of: number | null;
}

/** What was seen of one trait. */
export interface Sight {
  readonly trait: number;
  readonly value: number;
}

export interface World {
  readonly traits: readonly TrueTrait[];
  readonly things: readonly TrueThing[];
  readonly supply: ReadonlyMap<string, number>;
  readonly misread: number;
  readonly copies: readonly { readonly truth: number; readonly sights: readonly Sight[] }[];
}

const WORDS = 'amber birch cobalt dun ember fawn garnet hazel ivory jet'.split(' ');

/** An invented dossier with copies whose truth is known, all from a seed. */
export function worldOf(
  printings: number,
  hardness: Hardness,
  copies: number,
  seed: number,
): World {
  const random = chance(seed);
  const traits = Array.from({ length: printings > 50 ? 12 : 9 }, (_, t): TrueTrait => {
    const number = t % 4 === 3;
    const kinds = 2 + random.below(printings > 50 ? 6 : 4);
    return { name: `trait ${t}`, words: number ? null : WORDS.slice(0, kinds), tolerance: 0.04 };
  });
  const printed = Array.from({ length: printings }, (_, i) =>
    thing(random, i, traits, hardness, printings),
  );
  const odd = Array.from({ length: Math.max(2, Math.round(printings / 12)) }, (_, c): TrueThing => {
    const of = random.below(printings);
    const base = printed[of]!;
    const own = traits.map(() => random.uniform() < 0.3);
    return {
      id: `odd-${c}`,
      weight: base.weight * 0.1 * random.uniform(),
      values: base.values.map((value, t) => (own[t] ? drawn(random, traits[t]!) : value)),
      told: own,
      of,
    };
  });
  const things = [...printed, ...odd];
  const supply = new Map(printed.map(({ id, weight }) => [id, poisson(random, weight)]));
  const all = things.reduce((sum, { weight }) => sum + weight, 0);
  const seen = Array.from({ length: copies }, () => {
    const weights = things.map(({ weight }) => weight);
    const truth = pick(random, weights, all);
    return { truth, sights: sightsOf(random, things[truth]!, traits, hardness) };
  });
  return { traits, things, supply, misread: hardness.misread, copies: seen };
}

function thing(
  random: Chance,
  i: number,
  traits: readonly TrueTrait[],
  { missing }: Hardness,
  printings: number,
): TrueThing {
  return {
    id: `p-${i}`,
    weight: ((20 * 14) / printings) * Math.exp(random.normal()) * 3,
    values: traits.map((trait) => drawn(random, trait)),
    told: traits.map(() => random.uniform() >= missing),
    of: null,
  };
}

function drawn(random: Chance, { words }: TrueTrait): number {
  return words ? random.below(words.length) : 1.6 + 0.3 * random.uniform();
}

function sightsOf(
  random: Chance,
  { values }: TrueThing,
  traits: readonly TrueTrait[],
  { seen: [least, most], misread }: Hardness,
): Sight[] {
  const order = traits.map((_, t) => ({ t, at: random.uniform() })).sort((a, b) => a.at - b.at);
  return order.slice(0, least + random.below(most - least + 1)).map(({ t }) => {
    const { words, tolerance } = traits[t]!;
    const wrong = random.uniform() < misread;
    const value = values[t]!;
    if (words === null)
      return {
        trait: t,
        value: wrong ? 1.5 + 0.5 * random.uniform() : value + (random.normal() * tolerance) / 1.96,
      };
    const other = (value + 1 + random.below(words.length - 1)) % words.length;
    return { trait: t, value: wrong ? other : value };
  });
}

function poisson(random: Chance, mean: number): number {
  let count = 0;
  for (let p = random.uniform(); p > Math.exp(-mean) && count < 2000; count++)
    p *= random.uniform();
  return count;
}

function valueOfText(text: string) {
  const read = readValue(text);
  if (!read.ok) throw new Error(read.expected);
  return read.value;
}

/** What a dossier holds of a world; the last `desk` copies stand on the desk with what was seen. */
export function knownIn(world: World, desk: number): Known {
  const { traits, things, supply, copies } = world;
  const printings = things.filter(({ of }) => of === null).map(({ id }) => ({ id }));
  const counterfeits = things.flatMap(({ id, of }): readonly CounterfeitKind[] =>
    of === null ? [] : [{ id, printings: [things[of]!.id], kind: 'counterfeit' }],
  );
  const rows = things.flatMap(({ id, values, told }) =>
    traits.flatMap(({ name, words, tolerance }, t): readonly TraitRow[] => {
      if (!told[t]) return [];
      const text = words ? words[values[t]!]! : `${values[t]!.toFixed(2)}±${tolerance} g`;
      const sees = words ? 'eye' : 'scales';
      return [{ of: [id], trait: name, value: valueOfText(text), sees, region: '', publish: true }];
    }),
  );
  const counts: Counts[] = [{ by: supply, sd: 0.4 }];
  return {
    printings,
    counterfeits,
    traits: rows,
    about: expectedNumbers(
      printings.map(({ id }) => id),
      counts,
    ),
    others: copies.slice(copies.length - desk).map(({ sights }) => seenIn(world, sights)),
  };
}

/** What the desk holds of a copy. */
export function seenIn({ traits }: World, sights: readonly Sight[]): Seen {
  const readings = sights.map(({ trait, value }): Reading => {
    const { name, words } = traits[trait]!;
    const text = words ? words[value]! : `${value.toFixed(2)} g`;
    return { trait: name, value: valueOfText(text), sees: null, sd: null };
  });
  return { readings, named: [] };
}

/**
 * Naive Bayes, told how often readings are wrong: a trait agrees, differs, or is not known, each
 * with a fixed chance; the prior from copies on offer, a counterfeit a twentieth of its printing.
 */
export function naiveBayes({ traits, things, supply, misread }: World, sights: readonly Sight[]) {
  const offered = (at: number) => (supply.get(things[at]!.id) ?? 0) + 0.5;
  const logs = things.map(({ values, told, of }, at) => {
    const base = of === null ? null : things[of]!;
    const prior = of === null ? offered(at) : 0.05 * offered(of);
    return sights.reduce((log, { trait, value }) => {
      const { words, tolerance } = traits[trait]!;
      const known = told[trait] || base?.told[trait];
      const truth = told[trait] ? values[trait]! : (base ?? { values }).values[trait]!;
      if (words) {
        const k = words.length;
        const p = !known ? 1 / k : truth === value ? 1 - misread : misread / (k - 1);
        return log + Math.log(p);
      }
      const sd = tolerance / 1.96;
      const normal = Math.exp(-0.5 * ((value - truth) / sd) ** 2) / (sd * Math.sqrt(2 * Math.PI));
      return log + Math.log(known ? (1 - misread) * normal + misread * 2 : 1 / 0.3);
    }, Math.log(prior));
  });
  const most = Math.max(...logs);
  const raw = logs.map((log) => Math.exp(log - most));
  const sum = raw.reduce((all, one) => all + one, 0);
  return raw.map((one) => one / sum);
}

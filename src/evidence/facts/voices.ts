import type { Evidence } from '../types.ts';
import { type Word, wordsOf } from './heard.ts';
import type { Parents } from './parents.ts';
import { priorOf } from './prior.ts';
import type { Item, Problem, Tying, Voice } from './problem.ts';
import { OWN, type Topic } from './statements.ts';
import type { Reliability } from './types.ts';
import { type Vocabulary, vocabularies } from './vocabulary.ts';

/** Chance that the collector's own row repeats one of the sources that speak of the matter. */
const OWN_REPEATS = 0.5;

/** A topic as it is weighed. */
export interface Heard {
  readonly topic: Topic;
  readonly words: readonly Word[];
  readonly group: number;
  /** Values that there may be. */
  readonly size: number;
  /** Values that are named, in the order of the item's candidates. */
  readonly keys: readonly string[];
  readonly indexes: ReadonlyMap<string, number>;
}

/** Takes the repetitions of each source together and counts the values that there may be. */
export function hear(evidence: Evidence, topics: readonly Topic[]): Heard[] {
  const all = vocabularies(evidence, topics);
  return topics.map((topic) => {
    const { group, size, values } = all.get(topic.property) as Vocabulary;
    const words = wordsOf(topic.statements);
    const keys = [...new Set(words.map(({ key }) => key))].sort();
    return { topic, words, group, size, keys, indexes: values };
  });
}

/** What is heard as a problem of latent truth; sources in the order of `ids`, `OWN` the first. */
export function problemOf(
  evidence: Evidence,
  heard: readonly Heard[],
  known: readonly Reliability[],
  ids: readonly string[],
  parents: Parents,
): Problem {
  const place = new Map(ids.map((id, i) => [id, i]));
  const voices = heard.flatMap(({ words, indexes }, item) =>
    words.map((word): Voice => {
      const { source, key, weight } = word;
      const chance = source === OWN ? repeatsAny(key, words) : repeats(word, words, parents);
      return { item, source: place.get(source)!, value: indexes.get(key)!, weight, ...chance };
    }),
  );
  const vocabulary: number[] = [];
  for (const { group, size } of heard) vocabulary[group] = size;
  return {
    items: heard.map(
      ({ group, keys, indexes }): Item => ({
        group,
        candidates: keys.map((key) => indexes.get(key)!),
      }),
    ),
    voices,
    tying: oneCoin(evidence, ids, known, vocabulary),
    vocabulary,
    classPseudo: 1,
    own: 'left out',
    enough: 1e-6,
  };
}

/** Each source is right at one rate; where it is wrong, any other value of the vocabulary will do. */
function oneCoin(
  { sources }: Evidence,
  ids: readonly string[],
  known: readonly Reliability[],
  vocabulary: readonly number[],
): Tying {
  const kinds = new Map(sources.map(({ id, kind }) => [id, kind]));
  const reliability = new Map(known.map((one) => [one.id, one]));
  return {
    columns: 2,
    pseudo: Float64Array.from(ids.flatMap((id) => priorOf(kinds.get(id), reliability.get(id)))),
    cell: (source, truth, value) => 2 * source + (truth === value ? 0 : 1),
    share: (group, truth, value) => (truth === value ? 1 : 1 / (vocabulary[group]! - 1)),
  };
}

function repeats({ source, key }: Word, words: readonly Word[], parents: Parents) {
  let copied = 0;
  let derived = 0;
  for (const [from, p] of parents.get(source) ?? []) {
    const said = words.filter((word) => word.source === from);
    if (said.length === 0) continue;
    derived += p;
    copied += said.some((word) => word.key === key) ? p / said.length : 0;
  }
  return { copied, derived };
}

function repeatsAny(key: string, words: readonly Word[]) {
  const others = words.filter(({ source }) => source !== OWN);
  if (others.length === 0) return { copied: 0, derived: 0 };
  const same = others.filter((word) => word.key === key).length;
  return { copied: (OWN_REPEATS * same) / others.length, derived: OWN_REPEATS };
}

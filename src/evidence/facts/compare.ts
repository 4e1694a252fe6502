import type { Source } from '../types.ts';
import { type Compared, dependence } from './dependence.ts';
import { Pairs, priorDependence, statedDerivations, TAKEN } from './parents.ts';
import { OWN } from './statements.ts';
import type { Reliability } from './types.ts';
import type { Heard } from './voices.ts';

/** Facts that two sources must both speak of before they are compared. */
const ENOUGH = 3;
/** Error rates nearer to 0 or 1 than these are taken for no more than luck. */
const LEAST = 0.01;
const MOST = 0.6;

/** The order in which sources are looked at: the least derived first, then by what they say. */
export function orderOf(
  sources: readonly Source[],
  known: readonly Reliability[],
  heard: readonly Heard[],
): string[] {
  const direct = statedDerivations(sources, known);
  const derived = (id: string) => [...direct.get(id)!.values()].reduce((sum, p) => sum + p, 0);
  const said = new Map(sources.map(({ id }) => [id, [] as string[]]));
  for (const { topic, words } of heard)
    for (const { source, key } of words)
      said.get(source)?.push(`${topic.printing} ${topic.property} ${key}`);
  const text = new Map([...said].map(([id, lines]) => [id, lines.sort().join('\n')]));
  const rank = new Map(
    sources.map(({ id }) => [id, { derived: derived(id), count: said.get(id)!.length }]),
  );
  return [...said.keys()].sort((a, b) => {
    const [x, y] = [rank.get(a)!, rank.get(b)!];
    if (x.derived !== y.derived) return x.derived - y.derived;
    if (x.count !== y.count) return y.count - x.count;
    return text.get(a)! < text.get(b)! ? -1 : 1;
  });
}

/** Chances that one of two sources takes from the other, before their facts are compared. */
export function statedPairs(sources: readonly Source[], known: readonly Reliability[]): Pairs {
  const pairs = new Pairs();
  for (const [id, parents] of statedDerivations(sources, known))
    for (const [from, p] of parents)
      pairs.set(id, from, Math.min(1, p + (pairs.get(id, from) ?? 0)));
  return pairs;
}

/**
 * The same chances once the facts that both speak of are compared under the values that are
 * probably right (`dong:2009`). Existence is left out: to speak of a thing is no copying.
 *
 * @param p probability of a value of a topic
 * @param error share of a source's words that are wrong
 */
export function comparedPairs(
  sources: readonly Source[],
  known: readonly Reliability[],
  heard: readonly Heard[],
  p: (topic: number, key: string) => number,
  error: (source: string) => number,
): Pairs {
  const direct = statedDerivations(sources, known);
  const pairs = statedPairs(sources, known);
  for (const [names, facts] of sharedFacts(heard, p)) {
    const [a, b] = names.split(' ') as [string, string];
    if (facts.length < ENOUGH) continue;
    const errorRate = Math.min(MOST, Math.max(LEAST, (error(a) + error(b)) / 2));
    const assumed = { errorRate, copyRate: TAKEN, prior: priorDependence(a, b, direct) };
    pairs.set(a, b, dependence(facts, assumed));
  }
  return pairs;
}

function sharedFacts(
  heard: readonly Heard[],
  p: (topic: number, key: string) => number,
): Map<string, Compared[]> {
  const all = new Map<string, Compared[]>();
  heard.forEach(({ topic, words, size }, i) => {
    if (topic.property === 'exists') return;
    const told = words.filter(({ source, weight }) => source !== OWN && weight === 1);
    for (const a of told)
      for (const b of told) {
        if (a.source >= b.source) continue;
        const same = a.key === b.key;
        const fact = { same, right: p(i, a.key), falseValues: size - 1 };
        const facts = all.get(`${a.source} ${b.source}`);
        if (facts === undefined) all.set(`${a.source} ${b.source}`, [fact]);
        else facts.push(fact);
      }
  });
  return all;
}

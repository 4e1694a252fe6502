import type { Evidence } from '../types.ts';
import { settle } from './settle.ts';
import { OWN, type Statement, type Topic, topicsOf } from './statements.ts';
import type { Fact, FactClaim, FactValue, Reliability } from './types.ts';
import { type Side, why } from './words.ts';

/**
 * Weighs the claims that are no dates (number, finish, edition, existence …) by how reliable their
 * sources are: by kind, by their share of right days where `reliability` tells it, and above all by
 * how often they agree elsewhere with what is probably right. A source that repeats another adds
 * little; the row of `printings.csv` is one more voice. Method: `docs/methods/facts.md`
 * (`dawid:1979`, `dong:2009`, `asuncion:2009`).
 *
 * Misleads where all sources share an error that none is known to have taken from another, and
 * where a dossier holds few disputed facts: then the kinds of the sources decide.
 *
 * @param reliability `sources` of a `Dating`, or nothing
 * @returns one entry for each printing and property that a claim speaks of, in order of printings
 */
export function weighFacts(evidence: Evidence, reliability: readonly Reliability[] = []): Fact[] {
  const topics = topicsOf(evidence);
  const settled = settle(evidence, topics, reliability);
  const chances = new Map(topics.map((topic, i) => [idOf(topic), settled[i]!.p]));
  const chance = (topic: Named, key: string) => chances.get(idOf(topic))?.get(key) ?? 0;
  const among = new Map(evidence.claims.map(({ row, printings }) => [row, printings]));
  const titles = new Map(evidence.sources.map(({ id, title }) => [id, title ?? id]));
  const facts = topics.map((topic, i): Fact => {
    const { printing, property, statements } = topic;
    const sides = sidesOf(topic, (key) => chance(topic, key));
    return {
      printing,
      property,
      values: sides.map(({ value, p, claims, own }) => ({ value, p, claims, own })),
      p_other: settled[i]!.p_other,
      disputed: sides.length > 1,
      claims: claimsOf(topic, among, chance),
      why: why(property, sides, statements, settled[i]!.repeating, titles),
    };
  });
  return inOrder(facts, evidence);
}

type Named = Pick<Topic, 'printing' | 'property'>;

function idOf({ printing, property }: Named): string {
  return `${printing} ${property}`;
}

function inOrder(facts: readonly Fact[], { printings }: Evidence): Fact[] {
  const place = new Map(printings.map(({ id }, i) => [id, i]));
  return [...facts].sort(
    (a, b) => place.get(a.printing)! - place.get(b.printing)! || (a.property < b.property ? -1 : 1),
  );
}

function sidesOf({ statements }: Topic, p: (key: string) => number): (FactValue & Side)[] {
  const byKey = new Map<string, Statement[]>();
  for (const statement of statements)
    byKey.set(statement.key, [...(byKey.get(statement.key) ?? []), statement]);
  return [...byKey]
    .map(([key, said]) => ({
      key,
      value: commonest(said.map(({ value }) => value)),
      p: p(key),
      claims: said.flatMap(({ row }) => (row === undefined ? [] : [row])),
      own: said.some(({ source }) => source === OWN),
    }))
    .sort((a, b) => b.p - a.p || (a.key < b.key ? -1 : 1));
}

/** The way of writing that occurs most, of those the first. */
function commonest(written: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const value of written) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].reduce((best, next) => (next[1] > best[1] ? next : best))[0];
}

function claimsOf(
  { printing, property, statements }: Topic,
  among: ReadonlyMap<number, readonly string[]>,
  chance: (topic: Named, key: string) => number,
): FactClaim[] {
  return statements.flatMap(({ row, source, value, key, among: many }) => {
    if (row === undefined) return [];
    const meant = many > 1 ? among.get(row)! : [printing];
    const p = (id: string) => chance({ printing: id, property }, key);
    // Of several printings, not known which: right if it holds for any of them.
    const p_right = 1 - meant.reduce((none, id) => none * (1 - p(id)), 1);
    return [{ row, source, value, p_right, slip: p_right < 0.5 }];
  });
}

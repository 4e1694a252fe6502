import type { Printing } from '../../catalogue/index.ts';
import { type Claim, DATE_PROPERTIES, type Evidence } from '../types.ts';
import { keyOf } from './normal.ts';

/** The source of what the rows of `printings.csv` say; no id of a dossier can be this. */
export const OWN = '';

/** What one source says of one property of one printing. */
export interface Statement {
  readonly source: string;
  readonly key: string;
  /** As written. */
  readonly value: string;
  /** Row of `claims.csv`; absent for the collector's own row and for what is only implied. */
  readonly row?: number;
  /** How many printings the claim may mean. */
  readonly among: number;
}

/** A property of a printing of which some claim speaks. */
export interface Topic {
  readonly printing: string;
  readonly property: string;
  readonly statements: Statement[];
}

const DATES: ReadonlySet<string> = new Set(DATE_PROPERTIES);
const SILENT: ReadonlySet<string> = new Set(['exists', 'unlisted-on']);

/**
 * Sorts the claims that are no dates by printing and property, and adds the voices that no claim
 * has: the collector's own row, and for `exists` a yes of every source that tells anything else of
 * the printing. A claim on a product holds for the printings that lie in it; that a product
 * exists says so of a printing only where it is alone in it.
 */
export function topicsOf(evidence: Evidence): Topic[] {
  const inside = contentsOf(evidence);
  const keyIn = keysOf(evidence);
  const topics = new Map<string, Topic>();
  const speaking = new Map<string, Set<string>>();
  for (const claim of evidence.claims) {
    const printings = meantBy(claim, inside);
    if (!SILENT.has(claim.property) && claim.printings.length === 1)
      for (const id of printings) add(speaking, id, claim.source);
    if (DATES.has(claim.property) || claim.value.trim() === '') continue;
    const among = Math.max(claim.printings.length, 1);
    for (const id of printings)
      topicFor(topics, id, claim.property).statements.push({
        source: claim.source,
        key: keyIn(claim.property, claim.value),
        value: claim.value.trim(),
        row: claim.row,
        among,
      });
  }
  const rows = new Map(evidence.printings.map((printing) => [printing.id, printing]));
  for (const topic of topics.values()) hearOthers(topic, rows, speaking, keyIn);
  return [...topics.values()];
}

function hearOthers(
  { printing, property, statements }: Topic,
  rows: ReadonlyMap<string, Printing>,
  speaking: ReadonlyMap<string, ReadonlySet<string>>,
  keyIn: (property: string, value: string) => string,
): void {
  if (property === 'exists') {
    const explicit = new Set(statements.map(({ source }) => source));
    for (const source of speaking.get(printing) ?? [])
      if (!explicit.has(source)) statements.push({ source, key: 'yes', value: 'yes', among: 1 });
    return;
  }
  const own = (rows.get(printing) as Readonly<Record<string, string>> | undefined)?.[property];
  if (own !== undefined && own.trim() !== '')
    statements.push({ source: OWN, key: keyIn(property, own), value: own.trim(), among: 1 });
}

/** A product's title stands for its id. */
function keysOf({ products }: Evidence): (property: string, value: string) => string {
  const ids = new Map(products.map(({ id, title }) => [keyOf(title ?? id), keyOf(id)]));
  return (property, value) => {
    const key = keyOf(value);
    return property === 'product' ? (ids.get(key) ?? key) : key;
  };
}

function meantBy(claim: Claim, inside: ReadonlyMap<string, ReadonlySet<string>>): string[] {
  if (claim.product === undefined) return [...claim.printings];
  if (claim.printings.length > 0) return [...claim.printings];
  const printings = [...(inside.get(claim.product) ?? [])];
  const listed = claim.property === 'exists' && keyOf(claim.value) === 'yes';
  return listed && printings.length > 1 ? [] : printings;
}

function contentsOf({ printings, contents, products }: Evidence): Map<string, Set<string>> {
  const known = new Set(products.map(({ id }) => id));
  const inside = new Map<string, Set<string>>();
  for (const { id, product } of printings)
    if (product !== undefined && known.has(product)) add(inside, product, id);
  for (const { product, printing } of contents) add(inside, product, printing);
  return inside;
}

function add(map: Map<string, Set<string>>, key: string, value: string): void {
  const set = map.get(key) ?? new Set();
  map.set(key, set.add(value));
}

function topicFor(topics: Map<string, Topic>, printing: string, property: string): Topic {
  const key = `${printing} ${property}`;
  const topic = topics.get(key) ?? { printing, property, statements: [] };
  topics.set(key, topic);
  return topic;
}

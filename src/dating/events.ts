import type { Claim, Evidence } from '../evidence/index.ts';

/** Printings that are taken to have come out on one day. */
export interface ReleaseEvent {
  /** Indices into `evidence.printings`. */
  readonly members: readonly number[];
  /** Id or words; empty where not known. */
  readonly product: string;
  readonly market: string;
  readonly channel: string;
}

/** The release events of a dossier and the sequence facts among them. */
export interface Releases {
  readonly events: readonly ReleaseEvent[];
  /** For each printing, the index of its event. */
  readonly eventOf: Int32Array;
  readonly printingIndex: ReadonlyMap<string, number>;
  /** Pairs of event indices, earlier first. */
  readonly orders: readonly (readonly [number, number])[];
  readonly eventsOfProduct: ReadonlyMap<string, readonly number[]>;
}

/**
 * Groups printings that share product, market, edition, wave and channel into release events.
 * A printing whose product is not known, that is sold in several products, or that a sequence fact
 * sets apart from its group, stands alone.
 */
export function releasesOf(evidence: Evidence): Releases {
  const printingIndex = new Map(evidence.printings.map((p, i) => [p.id, i]));
  const keys = groupKeys(evidence, printingIndex);
  const groups = new Map<string, number[]>();
  keys.forEach((key, i) => {
    const group = groups.get(key);
    if (group) group.push(i);
    else groups.set(key, [i]);
  });
  const eventOf = new Int32Array(keys.length);
  const events = [...groups.values()].map((members, e): ReleaseEvent => {
    for (const i of members) eventOf[i] = e;
    const { product = '', market, language, channel = '' } = evidence.printings[members[0]!]!;
    return { members, product, market: market ?? language ?? '', channel };
  });
  const orders = new Map<string, readonly [number, number]>();
  for (const { earlier, later } of evidence.orders) {
    const pair = [
      eventOf[printingIndex.get(earlier)!]!,
      eventOf[printingIndex.get(later)!]!,
    ] as const;
    orders.set(pair.join(), pair);
  }
  return {
    events,
    eventOf,
    printingIndex,
    orders: [...orders.values()],
    eventsOfProduct: byProduct(evidence, events, eventOf, printingIndex),
  };
}

function groupKeys(evidence: Evidence, printingIndex: ReadonlyMap<string, number>): string[] {
  const products = new Map<string, Set<string>>();
  for (const { product, printing } of evidence.contents) {
    const set = products.get(printing);
    if (set) set.add(product);
    else products.set(printing, new Set([product]));
  }
  const keys = evidence.printings.map((p, i) => {
    const listed = products.get(p.id);
    const severalProducts =
      listed !== undefined && new Set([...listed, p.product ?? '']).size > 1 + (p.product ? 0 : 1);
    if (severalProducts || !p.product) return `alone ${i}`;
    return JSON.stringify([p.product, p.market ?? p.language, p.edition, p.wave, p.channel]);
  });
  return setApart(keys, evidence, printingIndex);
}

/** Gives a key of its own to each printing that a sequence fact sets apart from its group. */
function setApart(
  keys: string[],
  evidence: Evidence,
  printingIndex: ReadonlyMap<string, number>,
): string[] {
  for (const { earlier, later } of evidence.orders) {
    const a = printingIndex.get(earlier)!;
    const b = printingIndex.get(later)!;
    if (keys[a] === keys[b]) keys[b] = `apart ${b}`;
  }
  return keys;
}

function byProduct(
  evidence: Evidence,
  events: readonly ReleaseEvent[],
  eventOf: Int32Array,
  printingIndex: ReadonlyMap<string, number>,
): Map<string, number[]> {
  const out = new Map<string, number[]>();
  const add = (product: string, e: number) => {
    const list = out.get(product);
    if (!list) out.set(product, [e]);
    else if (!list.includes(e)) list.push(e);
  };
  events.forEach((event, e) => {
    if (event.product) add(event.product, e);
  });
  for (const { product, printing } of evidence.contents) {
    const i = printingIndex.get(printing);
    if (i !== undefined) add(product, eventOf[i]!);
  }
  return out;
}

/** The events that a claim may concern, each once. */
export function eventsOfClaim(claim: Claim, releases: Releases): number[] {
  if (claim.printings.length === 1) {
    return [releases.eventOf[releases.printingIndex.get(claim.printings[0]!)!]!];
  }
  if (claim.printings.length > 1) {
    return [
      ...new Set(claim.printings.map((id) => releases.eventOf[releases.printingIndex.get(id)!]!)),
    ];
  }
  return [...(releases.eventsOfProduct.get(claim.product ?? '') ?? [])];
}

import type { Printing } from '../catalogue/index.ts';
import type { Claim, Evidence } from '../evidence/index.ts';

/** Printings that are taken to have come out on one day. */
export interface ReleaseEvent {
  /** Indices into `evidence.printings`; none for a product that is dated only as such. */
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
  /** Pairs of event indices, earlier first, never the same day. */
  readonly orders: readonly (readonly [number, number])[];
  /** The same, but the two may share a day: a printing and the products that it lies in. */
  readonly weakOrders: readonly (readonly [number, number])[];
  readonly eventsOfProduct: ReadonlyMap<string, readonly number[]>;
}

/**
 * Groups printings that share product, market, edition, wave and channel into release events.
 * A printing whose product is not known, that is sold in several products, or that a sequence fact
 * sets apart from its group, stands alone.
 *
 * @param parts of printings that the evidence sets apart from their group; part 0 when left out
 */
export function releasesOf(
  evidence: Evidence,
  parts: ReadonlyMap<string, number> = new Map(),
): Releases {
  const printingIndex = new Map(evidence.printings.map((p, i) => [p.id, i]));
  const keys = groupKeys(evidence, printingIndex, parts);
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
  const all = [...events, ...productEvents(evidence, events)];
  const weakOrders = productOrders(evidence, all, eventOf, [...orders.values()]);
  return {
    events: all,
    eventOf,
    printingIndex,
    orders: [...orders.values()],
    weakOrders,
    eventsOfProduct: byProduct(evidence, all, eventOf, printingIndex, weakOrders),
  };
}

/** The products of each printing that lies in several of them. */
function severalProducts({ printings, contents }: Evidence): Map<string, Set<string>> {
  const products = new Map<string, Set<string>>();
  for (const { product, printing } of contents) {
    products.set(printing, (products.get(printing) ?? new Set()).add(product));
  }
  for (const { id, product } of printings) if (product) products.get(id)?.add(product);
  for (const [id, set] of products) if (set.size < 2) products.delete(id);
  return products;
}

/** Events for products that are dated in their own right, since no printing lies in them alone. */
function productEvents(evidence: Evidence, events: readonly ReleaseEvent[]): ReleaseEvent[] {
  const several = severalProducts(evidence);
  const own = new Set<string>();
  for (const { members, product } of events) {
    if (members.some((i) => !several.has(evidence.printings[i]!.id))) own.add(product);
  }
  const markets = new Map(evidence.products.map((p) => [p.id, p.market ?? '']));
  return [...new Set([...several.values()].flatMap((set) => [...set]))]
    .filter((product) => !own.has(product))
    .map((product) => ({ members: [], product, market: markets.get(product) ?? '', channel: '' }));
}

/**
 * A printing in several products came no later than any of them in its market, unless a sequence
 * fact says otherwise; what else of a product is of another edition or wave tells nothing.
 */
function productOrders(
  evidence: Evidence,
  events: readonly ReleaseEvent[],
  eventOf: Int32Array,
  stated: readonly (readonly [number, number])[],
): [number, number][] {
  const several = severalProducts(evidence);
  const orders: [number, number][] = [];
  const { printings } = evidence;
  printings.forEach(({ id }, i) => {
    const products = several.get(id);
    if (!products) return;
    const own = eventOf[i]!;
    events.forEach(({ members, product, market }, e) => {
      const alone = members.some((j) => several.has(printings[j]!.id));
      const like = members.every((j) => sameIssue(printings[j]!, printings[i]!));
      if (alone || !like || !products.has(product) || market !== events[own]!.market) return;
      if (!reaches(e, own, [...stated, ...orders])) orders.push([own, e]);
    });
  });
  return orders;
}

/** Whether two printings are of one edition and print wave: others of a product came on days of their own. */
function sameIssue(a: Printing, b: Printing): boolean {
  return a.edition === b.edition && a.wave === b.wave;
}

/** Whether sequence facts put an event before another. */
function reaches(
  from: number,
  to: number,
  orders: readonly (readonly [number, number])[],
): boolean {
  const found = new Set([from]);
  for (const e of found) for (const [a, b] of orders) if (a === e) found.add(b);
  return found.has(to);
}

function groupKeys(
  evidence: Evidence,
  printingIndex: ReadonlyMap<string, number>,
  parts: ReadonlyMap<string, number>,
): string[] {
  const several = severalProducts(evidence);
  const keys = evidence.printings.map((p, i) =>
    !p.product || several.has(p.id)
      ? `alone ${i}`
      : JSON.stringify([
          p.product,
          p.market ?? p.language,
          p.edition,
          p.wave,
          p.channel,
          parts.get(p.id) ?? 0,
        ]),
  );
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
  weakOrders: readonly (readonly [number, number])[],
): Map<string, number[]> {
  // What follows its product's own event through a fact is not dated by the product's claims again.
  const follows = new Set(weakOrders.map(([own, e]) => `${own} ${events[e]!.product}`));
  const out = new Map<string, number[]>();
  const add = (product: string, e: number) => {
    const list = out.get(product);
    if (!list) out.set(product, [e]);
    else if (!list.includes(e)) list.push(e);
  };
  events.forEach((event, e) => {
    if (event.product && !follows.has(`${e} ${event.product}`)) add(event.product, e);
  });
  for (const { product, printing } of evidence.contents) {
    const i = printingIndex.get(printing);
    if (i !== undefined && !follows.has(`${eventOf[i]} ${product}`)) add(product, eventOf[i]!);
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

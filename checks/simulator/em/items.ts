import type { Claim, Evidence } from '../../../src/evidence/index.ts';
import { grouped } from '../groups.ts';

/** Printings that share product, market, edition, wave and channel. */
export interface Group {
  readonly index: number;
  readonly printings: readonly string[];
  readonly product: string;
  readonly market: string;
  readonly channel: string;
}

/** A value that a statement may have meant, with the chance of its rows given that it did. */
export interface Meant {
  readonly first: number;
  readonly last: number;
  readonly weight: number;
}

/** All that one source says of one release under one property. */
export interface Item {
  readonly group: Group;
  readonly source: string;
  readonly property: string;
  readonly meant: readonly Meant[];
  readonly claims: readonly Claim[];
  readonly series: string;
}

/** The groups of a dossier; printings without a product stand alone. */
export function groupsOf(evidence: Evidence): Group[] {
  const keyed = grouped(evidence.printings, (p) =>
    p.product ? [p.product, p.market, p.edition, p.wave, p.channel].join('\u0000') : p.id,
  );
  return [...keyed.values()].map((list, index) => ({
    index,
    printings: list.map((p) => p.id),
    product: list[0]!.product ?? list[0]!.id,
    market: list[0]!.market ?? '',
    channel: list[0]!.channel ?? '',
  }));
}

/** The statements of a dossier, rows of one source about one group taken together. */
export function itemsOf(evidence: Evidence, groups: readonly Group[], pen: number): Item[] {
  const byPrinting = new Map(groups.flatMap((g) => g.printings.map((id) => [id, g] as const)));
  const series = new Map(evidence.products.map((p) => [p.id, p.series ?? '']));
  const usable = evidence.claims.filter((c) => c.date !== undefined && c.printings.length === 1);
  const keyed = grouped(usable, (c) =>
    [c.source, byPrinting.get(c.printings[0]!)!.index, c.property].join(' '),
  );
  return [...keyed.values()].map((claims) => {
    const group = byPrinting.get(claims[0]!.printings[0]!)!;
    const { source, property } = claims[0]!;
    const meant = meantBy(claims, pen);
    return { group, source, property, meant, claims, series: series.get(group.product) ?? '' };
  });
}

const rangeOf = (claim: Claim) => {
  const ranges = claim.date!.ranges;
  return { first: ranges[0]!.first, last: ranges[ranges.length - 1]!.last };
};

/** Every value of the rows may be the one meant; the others are then slips of the pen. */
function meantBy(claims: readonly Claim[], pen: number): Meant[] {
  const counts = grouped(claims.map(rangeOf), (range) => `${range.first} ${range.last}`);
  const weights = [...counts.values()].map((list) => {
    const weight = (1 - pen) ** list.length * (pen / 60) ** (claims.length - list.length);
    return { ...list[0]!, weight };
  });
  const most = Math.max(...weights.map((one) => one.weight));
  return weights.map((one) => ({ ...one, weight: one.weight / most }));
}

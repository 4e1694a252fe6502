import type { Printing, Product } from '../../../src/catalogue/index.ts';
import type { DateProperty, SourceKind } from '../../../src/evidence/index.ts';
import type { Chance } from '../chance.ts';
import { grouped } from '../groups.ts';
import { MANNERS } from './numbers.ts';

/** Printings that come out on one day. */
export interface Release {
  readonly index: number;
  readonly product: string;
  readonly market: string;
  readonly channel: string;
  readonly printings: readonly string[];
}

export interface Origin {
  readonly id: string;
  readonly kind: SourceKind;
  readonly cites: readonly string[];
}

export type Precision = 'day' | 'month' | 'year';

/** That a source says something of a release, and how finely; not yet what. */
export interface Slot {
  readonly source: number;
  readonly release: Release;
  readonly property: DateProperty;
  readonly precision: Precision;
  readonly mark: '' | '~' | '?';
}

/** Everything that the prior takes as given: who speaks of what. */
export interface Design {
  readonly printings: readonly Printing[];
  readonly products: readonly Product[];
  readonly releases: readonly Release[];
  readonly sources: readonly Origin[];
  /** In the order of the rows, source by source. */
  readonly slots: readonly Slot[];
  /** Pairs of releases whose order somebody knows. */
  readonly known: readonly (readonly [Release, Release])[];
}

export interface Wish {
  readonly printings: number;
  readonly sources: number;
  /** Shares of on-sale values that name but a month or year, or carry a mark. */
  readonly coarse: number;
  readonly marked: number;
  /** Statements of other properties, for each release. */
  readonly others: number;
  /** Known orders, for each release. */
  readonly orders: number;
}

const MARKETS = ['harbour', 'hills', 'islands'];
const CHANNELS = ['shops', 'post'];
const KINDS = Object.keys(MANNERS) as SourceKind[];
const OTHERS: readonly DateProperty[] = [
  'announced',
  'cover-date',
  'label-year',
  'copyright-year',
  'printed-on',
  'seen-by',
  'not-before',
  'distributed-until',
];

/** Draws who speaks of what; at least two sources give each release a day of sale. */
export function designOf(chance: Chance, wish: Wish): Design {
  const { releases, printings, products } = worldOf(chance, wish.printings);
  const sources = sourcesOf(chance, wish.sources);
  const slots = slotsOf(chance, wish, releases, sources);
  const known = Array.from({ length: Math.round(wish.orders * releases.length) }, () => {
    const [a, b] = chance.shuffle(releases);
    return [a!, b!] as const;
  });
  return { printings, products, releases, sources, slots, known };
}

function worldOf(chance: Chance, wanted: number) {
  const printings: Printing[] = [];
  const products: Product[] = [];
  const releases: Release[] = [];
  const markets = MARKETS.slice(0, wanted > 20 ? 3 : 2);
  while (printings.length < wanted) {
    const product = `product-${products.length + 1}`;
    products.push({
      id: product,
      ...(chance.yes(0.5) && { series: `series-${chance.whole(1, 2)}` }),
    });
    for (const market of chance.shuffle(markets).slice(0, 2)) {
      const channel = chance.yes(0.75) ? CHANNELS[0]! : CHANNELS[1]!;
      const count = Math.min(chance.yes(0.3) ? 2 : 1, wanted - printings.length);
      if (count <= 0) break;
      const own = Array.from({ length: count }, (_, i) => `p${printings.length + i + 1}`);
      for (const id of own) printings.push({ id, product, market, channel });
      releases.push({ index: releases.length, product, market, channel, printings: own });
    }
  }
  return { printings, products, releases };
}

function sourcesOf(chance: Chance, count: number): Origin[] {
  const ids = Array.from({ length: count }, (_, i) => `s${String(i + 1).padStart(2, '0')}`);
  return ids.map((id) => {
    const other = chance.pick(ids);
    return { id, kind: chance.pick(KINDS), cites: other !== id && chance.yes(0.2) ? [other] : [] };
  });
}

function slotsOf(
  chance: Chance,
  wish: Wish,
  releases: readonly Release[],
  sources: readonly Origin[],
): Slot[] {
  const slots: Slot[] = [];
  const onSale = (source: number, release: Release): Slot => {
    const coarse = chance.yes(wish.coarse);
    const precision = coarse ? (chance.yes(0.7) ? 'month' : 'year') : 'day';
    const marks = coarse ? (['?'] as const) : (['~', '?'] as const);
    const mark = chance.yes(wish.marked) ? chance.pick(marks) : '';
    return { source, release, property: 'on-sale', precision, mark };
  };
  const byProduct = [...grouped(releases, ({ product }) => product).values()];
  const heard = releases.map(() => 0);
  sources.forEach((_, s) => {
    const covered = byProduct.filter(() => chance.yes(0.65)).flat();
    for (const release of covered) {
      if (chance.yes(0.15)) continue;
      slots.push(onSale(s, release));
      heard[release.index]! += 1;
    }
  });
  for (const release of releases) {
    const silent = chance
      .shuffle(sources.map((_, s) => s))
      .filter((s) => !speaks(slots, s, release));
    for (const s of silent.slice(0, Math.max(0, 2 - heard[release.index]!))) {
      slots.push(onSale(s, release));
    }
  }
  return [...slots.sort(bySource), ...otherSlots(chance, wish, releases, sources)];
}

const bySource = (a: Slot, b: Slot) => a.source - b.source || a.release.index - b.release.index;

function speaks(slots: readonly Slot[], s: number, release: Release): boolean {
  return slots.some((slot) => slot.source === s && slot.release === release);
}

function otherSlots(
  chance: Chance,
  wish: Wish,
  releases: readonly Release[],
  sources: readonly Origin[],
): Slot[] {
  const slots = new Map<string, Slot>();
  for (let i = 0; i < wish.others * releases.length; i++) {
    const source = chance.whole(0, sources.length - 1);
    const release = chance.pick(releases);
    const property = chance.pick(OTHERS);
    const precision = property.endsWith('-year') ? 'year' : 'day';
    const key = `${source} ${release.index} ${property}`;
    slots.set(key, { source, release, property, precision, mark: '' });
  }
  return [...slots.values()].sort(bySource);
}

import type { Claim, OrderFact, SourceKind } from '../../src/evidence/index.ts';
import type { Chance } from './chance.ts';
import { holds, type Precision, written } from './dates.ts';
import type { ClaimTruth, Habits, Release } from './types.ts';
import type { World } from './world.ts';

export interface Made {
  readonly claims: readonly Omit<Claim, 'row'>[];
  readonly truths: readonly Omit<ClaimTruth, 'row'>[];
  /** Services and papers that only state these. */
  readonly services: readonly { readonly id: string; readonly kind: SourceKind }[];
  readonly orders: readonly OrderFact[];
}

/** Rates of one dossier's other properties, drawn anew for each. */
interface Rates {
  readonly onTime: number;
  readonly late: number;
  readonly early: number;
  readonly seen: number;
  readonly bound: number;
  readonly falseBound: number;
  readonly label: number;
  readonly design: number;
  readonly series: ReadonlyMap<string, string>;
  readonly lead: ReadonlyMap<string, number>;
  readonly labels: ReadonlyMap<string, number>;
}

type Maker = (
  chance: Chance,
  release: Release,
  rates: Rates,
) => { day: number; precision: Precision };

const size = (chance: Chance, scale: number) =>
  Math.max(1, Math.round(scale * Math.exp(chance.normal(0, 1))));

const coarse = (chance: Chance, day: number, month: number): Precision =>
  chance.weighted([day, month, 1 - day - month]) === 0
    ? 'day'
    : chance.yes(month / (1 - day))
      ? 'month'
      : 'year';

const MAKERS: Readonly<Record<string, Maker>> = {
  announced(chance, release, rates) {
    const way = chance.weighted([rates.onTime, 0.85 - rates.onTime, 0.15]);
    const by = way === 0 ? 0 : way === 1 ? -size(chance, rates.late) : size(chance, rates.early);
    return { day: release.day + by, precision: coarse(chance, 0.6, 0.35) };
  },
  'copyright-year': (chance, release) => ({
    day: release.day - 365 * chance.weighted([0.65, 0.25, 0.07, 0.03]),
    precision: 'year',
  }),
  'printed-on': (chance, release) => ({
    day: release.day - 5 - size(chance, 30),
    precision: coarse(chance, 0.5, 0.45),
  }),
  'seen-by': (chance, release, rates) => ({
    day: release.day + (chance.yes(rates.falseBound) ? -1 : 1) * (size(chance, rates.seen) - 1),
    precision: coarse(chance, 0.75, 0.2),
  }),
  'not-before': (chance, release, rates) => ({
    day: release.day - (chance.yes(rates.falseBound) ? -1 : 1) * (size(chance, rates.bound) - 1),
    precision: coarse(chance, 0.75, 0.2),
  }),
  'unlisted-on': (chance, release) => ({
    day: release.day + (chance.yes(0.2) ? 1 : -1) * size(chance, 60),
    precision: 'day',
  }),
  'distributed-until': (chance, release) => ({
    day: release.day + 20 + size(chance, 200),
    precision: coarse(chance, 0.3, 0.5),
  }),
};

const KINDS: Readonly<Record<string, readonly SourceKind[]>> = {
  announced: ['press-release', 'advertisement', 'magazine', 'newspaper', 'store-listing'],
  'copyright-year': ['packaging', 'own-observation', 'registration-record'],
  'printed-on': ['packaging', 'own-observation', 'correspondence'],
  'seen-by': ['forum', 'archive-snapshot', 'auction-record', 'own-observation', 'advertisement'],
  'not-before': ['correspondence', 'newspaper', 'magazine', 'archive-snapshot'],
  'unlisted-on': ['archive-snapshot', 'store-listing', 'checklist', 'magazine'],
  'distributed-until': ['correspondence', 'advertisement', 'store-listing'],
  'label-year': ['grading-label'],
  'cover-date': ['magazine'],
};

const SHARES: Readonly<Record<string, number>> = {
  announced: 3,
  'label-year': 2,
  'cover-date': 3,
  'seen-by': 2.5,
  'copyright-year': 1,
  'printed-on': 0.6,
  'not-before': 1,
  'unlisted-on': 0.8,
  'distributed-until': 0.5,
};

/** About `count` claims of the other properties, and true orders of some releases. */
export function otherClaims(
  chance: Chance,
  world: World,
  sources: readonly Habits[],
  count: number,
): Made {
  const rates = ratesOf(chance, world);
  const issues = world.releases.filter((release) => rates.series.has(release.product));
  const weights = Object.entries(SHARES).map(([property, share]) =>
    property === 'cover-date' && issues.length === 0 ? 0 : share * chance.gamma(1),
  );
  const services = [1, 2, 3].map((n) => ({ id: `service-${n}`, kind: 'grading-label' as const }));
  const paper = { id: 'paper', kind: 'magazine' as const };
  const makers = [...sources, ...services, paper];
  const claims: Omit<Claim, 'row'>[] = [];
  const truths: Omit<ClaimTruth, 'row'>[] = [];
  const said = new Set<string>();
  for (let tries = 0; claims.length < count && tries < count * 20; tries++) {
    const property = Object.keys(SHARES)[chance.weighted(weights)]!;
    const release = chance.pick(property === 'cover-date' ? issues : world.releases);
    const able = makers.filter((one) => KINDS[property]!.includes(one.kind));
    if (able.length === 0) continue;
    const source = chance.pick(able).id;
    const printing = chance.pick(release.printings);
    const key = `${source} ${printing} ${property}`;
    if (said.has(key)) continue;
    said.add(key);
    const date = dateFor(chance, property, release, rates);
    claims.push({ printings: [printing], source, property, value: date.text, date });
    truths.push({ how: property, pen: false, right: holds(date, release.day) });
  }
  return { claims, truths, services: [...services, paper], orders: ordersOf(chance, world) };
}

function ratesOf(chance: Chance, world: World): Rates {
  const lead = new Map<string, number>();
  const series = new Map<string, string>();
  for (const product of world.products) {
    if (product.series === undefined) continue;
    series.set(product.id, product.series);
    if (!lead.has(product.series)) lead.set(product.series, chance.whole(-5, 75));
  }
  const label = chance.between(0.5, 0.95);
  const labels = new Map(
    world.releases.map((r) => [
      r.id,
      chance.yes(label) ? r.day : world.base.get(r.product)! - chance.whole(0, 400),
    ]),
  );
  return {
    onTime: chance.between(0.25, 0.75),
    late: chance.between(5, 60),
    early: chance.between(2, 15),
    seen: chance.between(10, 400),
    bound: chance.between(10, 200),
    falseBound: chance.between(0, 0.08),
    label,
    design: chance.between(0.5, 0.8),
    series,
    lead,
    labels,
  };
}

function dateFor(chance: Chance, property: string, release: Release, rates: Rates) {
  if (property === 'cover-date') {
    const lead = rates.lead.get(rates.series.get(release.product)!)!;
    return written(
      release.day + lead + Math.round(chance.normal(0, 2)),
      chance.yes(0.8) ? 'month' : 'day',
    );
  }
  if (property === 'label-year') {
    const own = chance.yes(0.9) ? rates.labels.get(release.id)! : release.day;
    return written(own, 'year');
  }
  const { day, precision } = MAKERS[property]!(chance, release, rates);
  return written(day, precision, precision !== 'day' && chance.yes(0.1) ? '~' : '');
}

/** True sequences of neighbouring releases, a few in a dozen. */
function ordersOf(chance: Chance, world: World): OrderFact[] {
  const share = chance.between(0, 0.2);
  const sorted = [...world.releases].sort((a, b) => a.day - b.day);
  const pairs = sorted.flatMap((release, i) => {
    const later = sorted[i + chance.whole(1, 3)];
    if (later === undefined || later.day === release.day || !chance.yes(share)) return [];
    return [
      { earlier: release.printings[0]!, later: later.printings[0]!, reason: 'seen side by side' },
    ];
  });
  return pairs.map((pair, i) => ({ ...pair, row: i + 2 }));
}

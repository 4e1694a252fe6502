import type { Printing, Product } from '../../src/catalogue/index.ts';
import { dayOf, weekdayOf } from '../../src/evidence/index.ts';
import type { Chance } from './chance.ts';
import type { Release } from './types.ts';

export interface World {
  readonly printings: readonly Printing[];
  readonly products: readonly Product[];
  readonly releases: readonly Release[];
  readonly weekdays: ReadonlyMap<string, readonly number[]>;
  readonly markets: readonly string[];
  readonly first: number;
  readonly last: number;
  /** Day on which each product first came out anywhere. */
  readonly base: ReadonlyMap<string, number>;
  /** Chance that a source which states a release has a row for the printing. */
  readonly fame: ReadonlyMap<string, number>;
}

const MARKETS = [
  ['BR', 'pt'],
  ['FI', 'fi'],
  ['KR', 'ko'],
  ['CZ', 'cs'],
  ['CL', 'es'],
  ['EE', 'et'],
  ['GR', 'el'],
  ['TH', 'th'],
] as const;
const FINISHES = ['plain', 'foil', 'glitter', 'stamped', 'matt', 'raised'];

interface Rules {
  readonly markets: readonly string[];
  readonly manyMarkets: number;
  readonly sameDay: number;
  readonly delay: readonly number[];
  readonly perRelease: number;
  readonly editions: number;
  readonly waves: number;
  readonly channels: number;
  readonly periodicals: number;
  readonly nobody: number;
  readonly first: number;
  readonly last: number;
}

function rulesOf(chance: Chance, printings: number, hard: boolean): Rules {
  const most = Math.min(8, 2 + Math.round(Math.log10(printings) * 2));
  const count = chance.whole(Math.max(2, most - 2), most);
  const markets = chance.shuffle(MARKETS.map(([market]) => market)).slice(0, count);
  const first = dayOf(chance.whole(1988, 2006), 1, 1) + chance.whole(0, 364);
  const years = chance.between(1.5, 4) + Math.log10(printings) * chance.between(1, 4);
  return {
    markets,
    manyMarkets: chance.between(0.15, 0.7),
    sameDay: chance.between(0, 0.5),
    delay: markets.map(() => chance.between(10, 320)),
    perRelease: chance.between(0.1, 1),
    editions: chance.between(0, 0.4),
    waves: chance.between(0, 0.5),
    channels: chance.between(0, 0.35),
    periodicals: chance.yes(0.6) ? chance.between(0.05, 0.25) : 0,
    nobody: chance.between(0, printings > 1000 ? 0.04 : hard ? 0.3 : 0.15),
    first,
    last: first + Math.round(years * 365),
  };
}

/** Shares of the seven weekdays in one market and channel: none, some, or one with 95 %. */
function weekdayHabit(chance: Chance): number[] {
  const base = [1, 1, 1, 1, 1, chance.between(0.1, 1), chance.between(0.05, 0.6)];
  const total = base.reduce((sum, w) => sum + w, 0);
  const strength = chance.yes(0.25) ? 0 : chance.between(0.2, 0.95);
  const favourite = chance.weighted([1, 1, 1.5, 1.5, 2.5, 1, 0.2]);
  return base.map((w, i) => ((1 - strength) * w) / total + (i === favourite ? strength : 0));
}

/** The products, releases and printings of one dossier. */
export function makeWorld(chance: Chance, printings: number, hard: boolean): World {
  const rules = rulesOf(chance, printings, hard);
  const weekdays = new Map<string, readonly number[]>();
  const made = {
    products: [] as Product[],
    releases: [] as Release[],
    printings: [] as Printing[],
  };
  const base = new Map<string, number>();
  const snap = (day: number, market: string, channel: string) => {
    const key = `${market}/${channel}`;
    if (!weekdays.has(key)) weekdays.set(key, weekdayHabit(chance));
    const wanted = chance.weighted(weekdays.get(key)!) + 1;
    const ahead = (wanted - weekdayOf(day) + 7) % 7;
    return day + (ahead > 3 ? ahead - 7 : ahead);
  };
  const series = [1, 2, 3].map((n) => ({
    name: `paper-${n}`,
    market: chance.pick(rules.markets),
    rhythm: chance.pick([14, 30.44, 30.44, 61]),
    start: rules.first + chance.whole(-200, 100),
  }));
  while (made.printings.length < printings) {
    const left = printings - made.printings.length;
    const product = chance.yes(rules.periodicals)
      ? issueOf(chance, chance.pick(series), rules)
      : boxOf(chance, made.products.length + 1, rules);
    if (base.has(product.product.id)) continue;
    made.products.push(product.product);
    const before = made.printings.length;
    for (const slot of product.slots) {
      if (made.printings.length - before >= left) break;
      const day = snap(slot.day, slot.market, slot.channel);
      base.set(slot.product, Math.min(day, base.get(slot.product) ?? day));
      const room = printings - made.printings.length;
      const cards = cardsOf(chance, slot, made.printings.length + 1, room, rules.perRelease);
      made.printings.push(...cards);
      made.releases.push({
        ...slot,
        id: `e${made.releases.length + 1}`,
        day,
        printings: cards.map((card) => card.id),
        coarse: chance.yes(rules.nobody),
      });
    }
  }
  const obscure = chance.between(0.1, printings > 1000 ? 0.4 : 0.9);
  const fame = new Map(made.printings.map(({ id }) => [id, chance.beta(1, obscure)]));
  return {
    ...made,
    weekdays,
    base,
    fame,
    markets: rules.markets,
    first: rules.first,
    last: rules.last,
  };
}

type Slot = Pick<Release, 'product' | 'market' | 'edition' | 'wave' | 'channel' | 'day'>;

/** One number of a periodical, sold in one market by the rhythm of its series. */
function issueOf(
  chance: Chance,
  series: { name: string; market: string; rhythm: number; start: number },
  rules: Rules,
): { product: Product; slots: Slot[] } {
  const issue = 1 + chance.whole(0, Math.floor((rules.last - series.start) / series.rhythm));
  const id = `${series.name}-${issue}`;
  const day = Math.round(series.start + series.rhythm * (issue - 1) + chance.normal(0, 1.5));
  return {
    product: {
      id,
      kind: 'periodical',
      market: series.market,
      series: series.name,
      issue: `${issue}`,
    },
    slots: [{ product: id, market: series.market, edition: '', wave: '', channel: '', day }],
  };
}

/** A product with the markets, editions, waves and channels in which it came out. */
function boxOf(chance: Chance, number: number, rules: Rules): { product: Product; slots: Slot[] } {
  const id = `box-${number}`;
  const start = chance.between(rules.first, rules.last);
  const chosen = rules.markets.filter((_, i) => chance.yes(i === 0 ? 0.8 : rules.manyMarkets));
  const markets = chosen.length > 0 ? chosen : [chance.pick(rules.markets)];
  const editions = chance.yes(rules.editions) ? ['first', 'second'] : [''];
  const waves = chance.yes(rules.waves) ? ['1', '2', '3'].slice(0, chance.whole(2, 3)) : [''];
  const channels = chance.yes(rules.channels) ? ['shops', chance.pick(['mail', 'events'])] : [''];
  const gaps = {
    edition: chance.between(40, 400),
    wave: chance.between(14, 200),
    channel: chance.normal(0, 25),
  };
  const slots: Slot[] = [];
  for (const market of markets) {
    const usual = rules.delay[rules.markets.indexOf(market)]!;
    const later =
      market === markets[0] || chance.yes(rules.sameDay)
        ? 0
        : usual * (0.3 + 2 * chance.beta(2, 3));
    editions.forEach((edition, e) => {
      waves.forEach((wave, w) => {
        channels.forEach((channel, c) => {
          if (slots.length > 0 && chance.yes(0.15)) return;
          const jitter = e + w + c > 0 ? chance.normal(0, 6) : 0;
          const day = start + later + e * gaps.edition + w * gaps.wave + c * gaps.channel + jitter;
          slots.push({ product: id, market, edition, wave, channel, day: Math.round(day) });
        });
      });
    });
  }
  return { product: { id, kind: chance.pick(['box', 'pack', 'tin', 'game']) }, slots };
}

/** The printings of one release, told apart by number and finish. */
function cardsOf(chance: Chance, slot: Slot, from: number, room: number, more: number): Printing[] {
  let count = 1;
  while (count < 6 && chance.yes(more / (1 + more))) count += 1;
  const language = MARKETS.find(([market]) => market === slot.market)![1];
  const named = {
    ...(slot.edition && { edition: slot.edition }),
    ...(slot.wave && { wave: slot.wave }),
    ...(slot.channel && { channel: slot.channel }),
  };
  return Array.from({ length: Math.min(count, room) }, (_, i) => ({
    id: `p${from + i}`,
    language,
    market: slot.market,
    product: slot.product,
    number: String(chance.whole(1, 200)),
    finish: FINISHES[i]!,
    ...named,
  }));
}

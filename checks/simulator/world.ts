import type { Content, Printing, Product } from '../../src/catalogue/index.ts';
import { weekdayOf } from '../../src/evidence/index.ts';
import { pullApart } from './apart.ts';
import type { Chance } from './chance.ts';
import { rulesOf } from './rules.ts';
import { boxOf, cardsOf, issueOf } from './slots.ts';
import type { Temper } from './tempers.ts';
import type { Release } from './types.ts';

export interface World {
  readonly printings: readonly Printing[];
  readonly products: readonly Product[];
  readonly releases: readonly Release[];
  readonly contents: readonly Content[];
  /** Days on which products that repeat a printing came out. */
  readonly gifts: ReadonlyMap<string, number>;
  readonly weekdays: ReadonlyMap<string, readonly number[]>;
  readonly markets: readonly string[];
  readonly first: number;
  readonly last: number;
  /** Day on which each product first came out anywhere. */
  readonly base: ReadonlyMap<string, number>;
  /** Chance that a source which states a release has a row for the printing. */
  readonly fame: ReadonlyMap<string, number>;
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
export function makeWorld(chance: Chance, printings: number, temper: Temper): World {
  const rules = rulesOf(chance, printings, temper);
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
  const obscure = chance.within(temper.obscure);
  const fame = new Map(made.printings.map(({ id }) => [id, chance.beta(1, obscure)]));
  return {
    ...pullApart(chance, made, temper),
    printings: made.printings,
    weekdays,
    base,
    fame,
    markets: rules.markets,
    first: rules.first,
    last: rules.last,
  };
}

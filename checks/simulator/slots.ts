import type { Printing, Product } from '../../src/catalogue/index.ts';
import type { Chance } from './chance.ts';
import { MARKETS, type Rules } from './rules.ts';
import type { Release } from './types.ts';

const FINISHES = ['plain', 'foil', 'glitter', 'stamped', 'matt', 'raised'];

/** A place in which a product comes out. */
export type Slot = Pick<Release, 'product' | 'market' | 'edition' | 'wave' | 'channel' | 'day'>;

/** One number of a periodical, sold in one market by the rhythm of its series. */
export function issueOf(
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
export function boxOf(
  chance: Chance,
  number: number,
  rules: Rules,
): { product: Product; slots: Slot[] } {
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
export function cardsOf(
  chance: Chance,
  slot: Slot,
  from: number,
  room: number,
  more: number,
): Printing[] {
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

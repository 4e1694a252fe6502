import type { Claim } from '../../src/evidence/index.ts';
import type { Chance } from './chance.ts';
import { written } from './dates.ts';
import { grouped } from './groups.ts';
import type { ClaimTruth, Habits } from './types.ts';
import type { World } from './world.ts';

type Bare = Omit<Claim, 'row'>;

/**
 * Some claims say less than which printing: it is one of two of a market, or the product is meant.
 * Only products that came out once are meant in that way.
 */
export function blurred(
  chance: Chance,
  world: World,
  claims: readonly Bare[],
  rate: number,
): Bare[] {
  const places = new Map(world.printings.map((p) => [p.id, p]));
  const byMarket = grouped(world.printings, (p) => p.market);
  const counts = grouped(world.releases, (release) => release.product);
  return claims.map((claim) => {
    const printing = places.get(claim.printings[0] ?? '');
    if (printing?.product === undefined || !chance.yes(rate)) return claim;
    if (chance.yes(0.5) && counts.get(printing.product)!.length === 1) {
      return { ...claim, printings: [], product: printing.product };
    }
    const other = chance.pick(byMarket.get(printing.market)!);
    if (other.id === printing.id) return claim;
    return { ...claim, printings: chance.shuffle([printing.id, other.id]) };
  });
}

/** What sources say of the day of products that repeat a printing: mostly right. */
export function giftClaims(
  chance: Chance,
  world: World,
  sources: readonly Habits[],
): { claims: Bare[]; truths: Omit<ClaimTruth, 'row'>[] } {
  const claims: Bare[] = [];
  const truths: Omit<ClaimTruth, 'row'>[] = [];
  for (const [product, day] of world.gifts) {
    for (const source of chance.shuffle(sources).slice(0, chance.whole(1, 3))) {
      const right = chance.yes(0.8);
      const date = written(right ? day : day + chance.whole(1, 60), 'day');
      claims.push({
        printings: [],
        product,
        source: source.id,
        property: 'on-sale',
        value: date.text,
        date,
      });
      truths.push({ how: 'gift', pen: false, right });
    }
  }
  return { claims, truths };
}

import type { Content, Product } from '../../src/catalogue/index.ts';
import type { Chance } from './chance.ts';
import type { Temper } from './tempers.ts';
import type { Release } from './types.ts';

interface Made {
  readonly products: readonly Product[];
  readonly releases: readonly Release[];
}

interface Apart extends Made {
  readonly contents: readonly Content[];
  readonly gifts: ReadonlyMap<string, number>;
}

/**
 * Some printings stand apart from those that look like theirs: they came later without a reason
 * that the dossier knows, or lay in a second product as well, which may have come earlier.
 */
export function pullApart(chance: Chance, made: Made, temper: Temper): Apart {
  const rate = chance.within(temper.apart);
  const products = [...made.products];
  const contents: Content[] = [];
  const gifts = new Map<string, number>();
  const releases = made.releases.flatMap((release) => {
    const [printing, ...rest] = release.printings;
    if (printing === undefined || !chance.yes(rate)) return [release];
    const alone = (day: number) => {
      const one = { ...release, id: `${release.id}-apart`, day, printings: [printing] };
      return rest.length === 0 ? [one] : [{ ...release, printings: rest }, one];
    };
    if (rest.length > 0 && chance.yes(0.4)) return alone(release.day + chance.whole(7, 200));
    const gift = `gift-${gifts.size + 1}`;
    const day = release.day + (chance.yes(0.6) ? 1 : -1) * chance.whole(5, 120);
    gifts.set(gift, day);
    products.push({ id: gift, kind: 'tin', market: release.market });
    contents.push({ product: gift, printing }, { product: release.product, printing });
    return day < release.day ? alone(day) : [release];
  });
  return { products, releases, contents, gifts };
}

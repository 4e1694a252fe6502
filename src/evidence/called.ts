import { namesOf } from '../catalogue/index.ts';
import type { Evidence } from './types.ts';

/** What printings are called for short, by their ids; an id that is no printing stays what it is. */
export function printingCalled({
  printings,
  products,
}: Pick<Evidence, 'printings' | 'products'>): (id: string) => string {
  const titles = new Map(products.map(({ id, title }) => [id, title]));
  const names = namesOf(
    printings.map(({ id, ...cells }) => ({
      ...{ id, cells },
      productTitle: titles.get(cells.product ?? ''),
    })),
  );
  return (id) => names.get(id)?.short ?? id;
}

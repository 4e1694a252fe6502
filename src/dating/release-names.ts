import { namesOf, type Printing, type ToName } from '../catalogue/index.ts';
import type { Evidence } from '../evidence/index.ts';
import type { ReleaseEvent } from './events.ts';

/** What each release is called in a sentence, article included, by what its printings share. */
export function releaseNames(
  { printings, products }: Evidence,
  events: readonly ReleaseEvent[],
): string[] {
  const titles = new Map(products.map(({ id, title }) => [id, title]));
  const rows = events.map(({ members }): ToName | undefined => {
    const [first, ...others] = members.map((i) => printings[i]!);
    if (!first) return undefined;
    const cells = shared(first, others);
    return { id: first.id, cells, productTitle: titles.get(first.product ?? '') };
  });
  const names = namesOf(rows.filter((row) => row !== undefined));
  return events.map(({ product }, e) => {
    const row = rows[e];
    const title = titles.get(product) ?? product;
    return `the ${row ? names.get(row.id)!.short : title.replace(/^The /, '')}`;
  });
}

/** The columns in which printings are alike. */
function shared({ id: _, ...cells }: Printing, others: readonly Printing[]): ToName['cells'] {
  const same = Object.entries(cells).filter(([column, value]) =>
    others.every((other) => other[column as keyof Printing] === value),
  );
  return Object.fromEntries(same);
}

import { namesOf } from '../../catalogue/index.ts';
import type { Evidence } from '../../evidence/index.ts';

/** What the printings and sources of a dossier are called in a report, by their ids. */
export interface Called {
  readonly printing: (id: string) => string;
  readonly source: (id: string) => string;
}

/** Printings by their short names, sources by their titles; the id where there is none. */
export function calledIn(evidence: Pick<Evidence, 'printings' | 'products' | 'sources'>): Called {
  const products = new Map(evidence.products.map(({ id, title }) => [id, title]));
  const names = namesOf(
    evidence.printings.map(({ id, ...cells }) => ({
      id,
      cells,
      productTitle: products.get(cells.product ?? ''),
    })),
  );
  const titles = new Map(evidence.sources.map(({ id, title }) => [id, title]));
  return {
    printing: (id) => names.get(id)?.short ?? id,
    source: (id) => titles.get(id) ?? id,
  };
}

import type { Book } from './book.ts';

/** What the chronology shows: an empty list lets everything through. */
export interface Filter {
  readonly language: readonly string[];
  readonly market: readonly string[];
  readonly finish: readonly string[];
  readonly source: readonly string[];
  readonly order: 'release' | 'dossier';
}

export type FilterColumn = 'language' | 'market' | 'finish' | 'source';
export const FILTER_COLUMNS: readonly FilterColumn[] = ['language', 'market', 'finish', 'source'];

export const NO_FILTER: Filter = {
  language: [],
  market: [],
  finish: [],
  source: [],
  order: 'release',
};

/** Ids of the printings to show, in the order asked for. */
export function lanesOf(book: Book, filter: Filter): readonly string[] {
  const known = book.dossier.printings.filter(({ cells }) => !cells.replaced_by);
  const ids = known.map(({ id }) => id);
  const bySource = filter.source.length > 0 ? saidOf(book, new Set(filter.source)) : undefined;
  const lets = (id: string) => {
    const cells = book.printings.get(id)?.cells ?? {};
    const fits = (column: 'language' | 'market' | 'finish') =>
      filter[column].length === 0 || filter[column].includes(cells[column] ?? '');
    return fits('language') && fits('market') && fits('finish') && (bySource?.has(id) ?? true);
  };
  if (filter.order === 'dossier' || !book.dating) return ids.filter(lets);
  const rank = new Map(book.dating.order.map((id, at) => [id, at]));
  const last = rank.size;
  return ids.filter(lets).sort((a, b) => (rank.get(a) ?? last) - (rank.get(b) ?? last));
}

function saidOf(book: Book, sources: ReadonlySet<string>): ReadonlySet<string> {
  const ids = new Set<string>();
  for (const claim of book.dossier.claims) {
    if (sources.has(claim.source)) for (const id of claim.printings) ids.add(id);
  }
  for (const { id, claims } of book.dating?.printings ?? []) {
    if (claims.some((claim) => sources.has(claim.source))) ids.add(id);
  }
  return ids;
}

/** Values that a filter can take, in order of the alphabet; the empty value is *not known*. */
export function choicesOf(book: Book, column: FilterColumn): readonly string[] {
  if (column === 'source') return book.dossier.sources.map(({ id }) => id);
  const values = new Set(book.dossier.printings.map(({ cells }) => cells[column] ?? ''));
  return [...values].sort();
}

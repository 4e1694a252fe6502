import type { Book } from '../view/index.ts';

/** A printing that lies in a product; odds as the dossier writes them, empty where not known. */
export interface Inside {
  readonly printing: string;
  readonly odds: string;
}

/** The printings that a product holds, by its contents and by the printings' own rows. */
export function printingsIn(book: Book, product: string): readonly Inside[] {
  const odds = new Map<string, string>();
  for (const { id, cells } of book.dossier.printings)
    if (cells.product === product) odds.set(id, '');
  for (const content of book.dossier.contents) {
    if (content.product === product) odds.set(content.printing, content.cells.odds ?? '');
  }
  return [...odds].map(([printing, said]) => ({ printing, odds: said }));
}

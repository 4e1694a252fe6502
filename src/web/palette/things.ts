import { SCREENS } from '../app/screens.ts';
import { type Book, fullName, sourceName } from '../view/index.ts';

/** Something that can be found or done, by an id that says which. */
export interface Thing {
  readonly id: string;
  readonly words: string;
  readonly kind: string;
}

/** Everything the palette offers: screens, actions, then printings, products and sources. */
export function thingsOf(book: Book): readonly Thing[] {
  const { undo, redo, printings, products, sources } = book.dossier;
  return [
    ...SCREENS.map(([to, name]) => ({ id: `go:${to}`, words: name, kind: 'screen' })),
    { id: 'go:/listing', words: 'Weigh a listing', kind: 'screen' },
    { id: 'go:/key', words: 'The key on one page', kind: 'screen' },
    { id: 'go:/population/labels', words: 'Labels of the grading services', kind: 'screen' },
    { id: 'do:printing', words: 'Add a printing', kind: 'do' },
    { id: 'do:product', words: 'Add a product', kind: 'do' },
    ...(undo ? [{ id: 'do:undo', words: `Undo: ${undo.label}`, kind: 'do' }] : []),
    ...(redo ? [{ id: 'do:redo', words: `Redo: ${redo.label}`, kind: 'do' }] : []),
    { id: 'do:keys', words: 'List the keys', kind: 'do' },
    { id: 'do:light', words: 'Light look', kind: 'do' },
    { id: 'do:dark', words: 'Dark look', kind: 'do' },
    { id: 'do:print', words: 'Print this sheet', kind: 'do' },
    ...printings.map(({ id }) => ({
      id: `go:/printings/${id}`,
      words: fullName(book, id),
      kind: 'printing',
    })),
    ...products.map(({ id, cells }) => ({
      id: `go:/products/${id}`,
      words: cells.title || id,
      kind: 'product',
    })),
    ...sources.map(({ id }) => ({
      id: `go:/sources/${id}`,
      words: sourceName(book, id),
      kind: 'source',
    })),
  ];
}

/** The things whose words hold every word that was typed, at most `most` of them. */
export function found(things: readonly Thing[], typed: string, most = 30): readonly Thing[] {
  const words = plain(typed).split(/\s+/).filter(Boolean);
  const fit = things.filter((thing) => {
    const text = plain(`${thing.words} ${thing.kind} ${thing.id}`);
    return words.every((word) => text.includes(word));
  });
  return fit.slice(0, most);
}

function plain(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase();
}

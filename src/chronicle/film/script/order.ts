import type { Account, ToldPrinting } from '../../account/types.ts';

/** In which order a film tells of the printings: by release, or the collector's own list of ids. */
export type Telling = 'oldest' | 'newest' | readonly string[];

/** An entry of a collector's own list that the dossier does not have. */
export interface UnknownEntry {
  /** Line in the list, from 1. */
  readonly row: number;
  readonly found: string;
}

/** The ids of a list, one a line; blank lines and those that begin with # are left out. */
export function listedIds(
  text: string,
  { printings }: Pick<Account, 'printings'>,
): { readonly ids: readonly string[]; readonly unknown: readonly UnknownEntry[] } {
  const known = new Set(printings.map(({ id }) => id));
  const entries = text
    .replace(/^\ufeff/, '')
    .split(/\r?\n/)
    .map((line, i) => ({ row: i + 1, found: line.trim() }))
    .filter(({ found }) => found !== '' && !found.startsWith('#'));
  return {
    ids: [...new Set(entries.map(({ found }) => found).filter((id) => known.has(id)))],
    unknown: entries.filter(({ found }) => !known.has(found)),
  };
}

/** The printings in the order in which they are told; of a list, those alone that it names. */
export function inOrder(
  { printings }: Pick<Account, 'printings'>,
  order: Telling,
): readonly ToldPrinting[] {
  if (order === 'oldest') return printings;
  if (order === 'newest') return [...printings].reverse();
  return order.flatMap((id) => printings.filter((one) => one.id === id));
}

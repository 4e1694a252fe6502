import { type Name, namesOf } from '../../catalogue/index.ts';
import type { Account } from '../account/types.ts';
import type { Phrases } from './types.ts';

/** What each printing is called in a language, by its id. */
export function namesIn(
  { printings }: Pick<Account, 'printings'>,
  { names }: Phrases,
): ReadonlyMap<string, Name> {
  const rows = printings.map(({ id, cells, productTitle }) => ({
    id,
    cells,
    productTitle: productTitle ?? undefined,
  }));
  return namesOf(rows, names);
}

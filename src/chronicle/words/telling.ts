import type { Name } from '../../catalogue/index.ts';
import type { Account } from '../account/types.ts';
import { namesIn } from './names.ts';
import type { Phrases } from './types.ts';

/** One fact in a sentence, with the figure that it tells: an address that lasts. */
export interface Sentence {
  /** `release.PRINTING`, `population.PRINTING.SERVICE`; of a slip the key of its claim. */
  readonly figure: string;
  readonly text: string;
}

/** What sentences about the printings of an account are made with. */
export interface Telling {
  readonly account: Account;
  readonly phrases: Phrases;
  /** What a printing is called on its own page, with what tells it apart. */
  readonly named: (id: string) => Name;
  /** What a printing is called in a sentence. */
  readonly called: (id: string) => string;
  readonly source: (id: string) => string;
  readonly service: (id: string) => string;
}

/** Makes ready to tell an account in a language. */
export function tellingOf(account: Account, phrases: Phrases): Telling {
  const names = namesIn(account, phrases);
  const sources = new Map(account.sources.map(({ id, title }) => [id, title]));
  const services = new Map(account.services.map(({ id, title }) => [id, title]));
  return {
    account,
    phrases,
    named: (id) => names.get(id) ?? { title: id, detail: '', short: id },
    called: (id) => names.get(id)?.short ?? id,
    source: (id) => sources.get(id) ?? id,
    service: (id) => services.get(id) ?? id,
  };
}

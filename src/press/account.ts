import { type Account, accountOf, phrasesOf, resultsOf, storyValue } from '../chronicle/index.ts';
import type { Dating } from '../dating/index.ts';
import { accountGroundIn, type Dossier, type Fault, storyFaultsIn } from '../dossier/index.ts';
import { dayFrom } from '../evidence/index.ts';
import type { Told } from './told.ts';

/** How an account is worked out. */
export interface AccountOptions {
  readonly prices?: boolean;
  /** The day as of which it stands, `YYYY-MM-DD`; else the newest in the dossier. */
  readonly on?: string;
  readonly seed?: number;
}

/** An account, and what its stories name that is not in it. */
export interface Worked {
  readonly account: Account;
  /** The answer of dating that it rests on, what stays at home included. */
  readonly dating: Dating;
  readonly storyFaults: readonly Fault[];
}

/** Works out the account of a dossier. The same dossier and options give the same account. */
export function worked(
  dossier: Dossier,
  { prices = false, on, seed }: AccountOptions,
  told: Told,
): Worked {
  const ground = accountGroundIn(dossier, on === undefined ? null : dayFrom(on));
  const results = resultsOf(ground, {
    prices,
    ...(seed === undefined ? {} : { seed }),
    onProgress: (share) => told.begins('Working out the account', share / 2),
  });
  const account = accountOf(ground, results);
  const sources = new Set(account.sources.map(({ id }) => id));
  const storyFaults = storyFaultsIn(dossier, {
    source: (id) => sources.has(id),
    value: (name) => storyValue(name, account, phrasesOf('en')) !== undefined,
  });
  return { account, dating: results.dating, storyFaults };
}

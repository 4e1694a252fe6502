import { type DossierPrices, pricesIn } from '../../dossier/index.ts';
import { openThread, type Thread } from '../../host/index.ts';
import type { PriceGround } from '../../market/index.ts';
import type { Session, Shown } from '../session.ts';
import { PerState } from './per-state.ts';
import type { PricesReply } from './prices-thread.ts';

/** The prices of one state of the dossier; `found` is undefined where no table names a day. */
export interface Priced {
  readonly shown: Shown;
  readonly found?: DossierPrices;
  readonly reply?: PricesReply;
}

/** Prices the open dossier in a thread of its own, once for each state of it. */
export class Pricing {
  readonly #priced: PerState<Priced>;
  #thread: Thread<PriceGround, PricesReply> | undefined;

  constructor(session: Session) {
    this.#priced = new PerState(session, (shown, signal) => this.#price(shown, signal));
  }

  /** The prices of the newest state, as soon as they are fitted. */
  async priced(): Promise<Priced> {
    return await this.#priced.newest();
  }

  async close(): Promise<void> {
    await this.#thread?.close();
  }

  async #price(shown: Shown, signal: AbortSignal): Promise<Priced> {
    const found = pricesIn(shown.dossier, null);
    if (!found) return { shown };
    this.#thread ??= openThread(entry());
    return { shown, found, reply: await this.#thread.run(found.ground, signal) };
  }
}

function entry(): URL {
  const file = import.meta.url.endsWith('.ts') ? './prices-thread.ts' : './prices-thread.js';
  return new URL(file, import.meta.url);
}

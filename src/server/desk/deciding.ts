import type { DecideAnswer, DecideRequest, Plans } from '../../contract/index.ts';
import { deskIn, pricesIn } from '../../dossier/index.ts';
import { type Day, dayFrom, isoOf, printingCalled } from '../../evidence/index.ts';
import { deadlinesCalendar, decide, decisionsOn, supposing } from '../../market/index.ts';
import { Refused } from '../refusal.ts';
import type { Session, Shown } from '../session.ts';
import type { Decided, Priced } from './decided.ts';
import { answerOnWire, plansOnWire } from './on-wire.ts';
import type { Reckoner } from './reckoner.ts';

/** Days of one state of the dossier whose prices are kept. */
const KEPT_DAYS = 3;

/** Decides on the desk of the open dossier; prices are fitted once for each state of it and day. */
export class Deciding {
  readonly #session: Session;
  readonly #reckoner: Reckoner;
  #version = -1;
  readonly #priced = new Map<string, Promise<Priced | undefined>>();

  constructor(session: Session, reckoner: Reckoner) {
    this.#session = session;
    this.#reckoner = reckoner;
  }

  /** What may be done with each copy, as it is or as is supposed. */
  async decide({ on, supposed }: DecideRequest): Promise<DecideAnswer> {
    const priced = await this.priced(on);
    if (!priced) return { ...NOTHING, version: this.#session.version };
    const decided = decidedOn(priced, supposed);
    return answerOnWire(priced, decided);
  }

  /** What to send in together and what to buy for the wants. */
  async plans({ on, budget, supposed }: DecideRequest): Promise<Plans> {
    const priced = await this.priced(on);
    if (!priced) throw new Refused('bad-request', 'Say for which day: the dossier names none.');
    const { decisions, ground, wants, offers } = decidedOn(priced, supposed);
    const { tiers } = ground;
    const { plans } = await this.#reckoner.run({
      ...{ do: 'plans', decisions, tiers, wants, offers, budget },
    });
    return plansOnWire(priced.shown.version, plans!);
  }

  /** The deadlines that have not passed, as an iCalendar file. */
  async calendar(on: string | undefined): Promise<string> {
    const priced = await this.priced(on);
    if (!priced) throw new Refused('bad-request', 'Say for which day: the dossier names none.');
    const { ground } = decisionsOn(priced.desk, priced.prices);
    return deadlinesCalendar(ground, printingCalled(priced.shown.dossier.evidence));
  }

  /** The desk with its prices; undefined where no day is told and the dossier has none. */
  async priced(on: string | undefined): Promise<Priced | undefined> {
    const shown = await this.#session.shown();
    if (shown.version !== this.#version) {
      this.#version = shown.version;
      this.#priced.clear();
    }
    const key = on ?? '';
    const kept = this.#priced.get(key);
    if (kept) return await kept;
    const made = this.#price(shown, on);
    this.#priced.set(key, made);
    for (const old of [...this.#priced.keys()].slice(0, -KEPT_DAYS)) this.#priced.delete(old);
    made.catch(() => this.#priced.delete(key));
    return await made;
  }

  async #price(shown: Shown, on: string | undefined): Promise<Priced | undefined> {
    const found = pricesIn(shown.dossier, on === undefined ? null : dayIn(on));
    if (!found) return undefined;
    const { prices } = await this.#reckoner.run({ do: 'prices', ground: found.ground });
    return { shown, found, desk: deskIn(shown.dossier, found), prices: prices! };
  }
}

function decidedOn({ desk, prices }: Priced, supposed: DecideRequest['supposed']): Decided {
  const other = supposing(desk, prices, supposed);
  const from = decisionsOn(other.desk, other.prices);
  return { ...from, desk: other.desk, decisions: decide(from.ground, from.bids) };
}

function dayIn(text: string): Day {
  const day = /^\d{4}-\d\d-\d\d$/.test(text) ? dayFrom(text) : null;
  if (day !== null && isoOf(day) === text) return day;
  throw new Refused('bad-request', `${text} is no day of the calendar.`);
}

const NOTHING: Omit<DecideAnswer, 'version'> = {
  ...{ on: null, currency: '', regretLimit: null, copies: [], wants: [], tiers: [] },
  ...{ rates: [], taxRates: [], assumed: [] },
};

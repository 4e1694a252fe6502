import type { Name } from '../../../catalogue/index.ts';
import type { Account, ToldPrinting } from '../../account/types.ts';
import { tellDay, tellEdtf } from '../../words/days.ts';
import { namesIn } from '../../words/names.ts';
import { tellCount } from '../../words/numbers.ts';
import { whenSentence } from '../../words/release-sentences.ts';
import { factsOf } from '../../words/sentences.ts';
import { type Telling, tellingOf } from '../../words/telling.ts';
import type { Phrases } from '../../words/types.ts';

/** A printing in words, as stills show it. */
export interface ToldOnStill {
  readonly printing: ToldPrinting;
  readonly name: Name;
  /** The day or the run of days. */
  readonly day: string;
  /** The sentence that says how sure that is. */
  readonly when: string;
  /** `8 / 16`. */
  readonly place: string;
  /** What is said of copies that can turn up; empty where nothing is. */
  readonly extant: string;
  /** What is said of the share at a top grade, by service. */
  readonly tops: ReadonlyMap<string, string>;
  /** A day in words. */
  readonly sayDay: (iso: string) => string;
}

/** Every printing of an account in words, in order of release. */
export function toldOnStills(account: Account, phrases: Phrases): readonly ToldOnStill[] {
  const telling = tellingOf(account, phrases);
  const names = namesIn(account, phrases);
  return account.printings.map((printing) => toldOf(printing, names.get(printing.id)!, telling));
}

function toldOf(printing: ToldPrinting, name: Name, telling: Telling): ToldOnStill {
  const { phrases, account } = telling;
  const { release, id } = printing;
  const facts = factsOf(printing, telling);
  const [place, all] = [release.place, account.printings.length].map((n) => tellCount(phrases, n));
  return {
    printing,
    name,
    day: tellEdtf(
      phrases,
      release.state === 'day' && release.best !== null ? release.best : release.edtf,
    ),
    when: whenSentence(release, phrases),
    place: `${place} / ${all}`,
    extant: facts.find(({ figure }) => figure === `extant.${id}`)?.text ?? '',
    tops: new Map(
      printing.counts.map(({ service }) => [
        service,
        facts.find(({ figure }) => figure === `top.${id}.${service}`)?.text ?? '',
      ]),
    ),
    sayDay: (iso) => tellDay(phrases, iso),
  };
}

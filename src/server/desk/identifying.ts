import {
  type Identified,
  isLook,
  type Known,
  type Reading,
  readValue,
  type Seen,
  sayValue,
  traitChoices,
} from '../../catalogue/index.ts';
import type {
  CopyReading,
  IdentifyAnswer,
  IdentifyRequest,
  KeyAnswer,
} from '../../contract/index.ts';
import {
  copiesOf,
  type Dossier,
  keptOf,
  knownOf,
  newestDay,
  readerOf,
  seenOf,
} from '../../dossier/index.ts';
import { isoOf } from '../../evidence/index.ts';
import { Refused } from '../refusal.ts';
import type { Session, Shown } from '../session.ts';
import { choicesOnWire, identifiedOnWire, kindsOf } from './identified-on-wire.ts';
import type { Reckoner } from './reckoner.ts';

/** Names the printings of copies and listings by the open dossier, and makes its key. */
export class Identifying {
  readonly #session: Session;
  readonly #reckoner: Reckoner;
  #key: { readonly version: number; readonly answer: Promise<KeyAnswer> } | undefined;
  readonly #known = new WeakMap<Shown, Map<boolean, Known>>();

  constructor(session: Session, reckoner: Reckoner) {
    this.#session = session;
    this.#reckoner = reckoner;
  }

  /** Which printing a copy is, by what the desk holds of it and what is told. */
  async identify({ copy, saw, listing, graded }: IdentifyRequest): Promise<IdentifyAnswer> {
    const shown = await this.#session.shown();
    const { dossier } = shown;
    const row = copy === undefined ? undefined : copiesOf(dossier).find(({ id }) => id === copy);
    if (copy !== undefined && !row) throw new Refused('not-found', `There is no copy ${copy}.`);
    const known = this.knownIn(shown, row ? row.service !== '' : graded === true);
    const read = readerOf(dossier, known);
    const kept = copy === undefined ? NOTHING : keptOf(dossier, copy, read);
    const told = saw.map(readingIn);
    const said = listing === undefined ? [] : read(listing, 'listing');
    const readings: CopyReading[] = [
      ...kept.observed.map(({ reading, row: at }) => ({
        ...wordsOf(reading, 'seen'),
        row: at,
        cells: { ...dossier.tables.get('desk/observations.csv')?.record(at) },
      })),
      ...kept.measured.map((one) => wordsOf(one, 'measured')),
      ...told.map((one) => wordsOf(one, 'told')),
      ...[...kept.said, ...said].map((one) =>
        wordsOf(one, one.sees === 'label' ? 'label' : 'listing'),
      ),
    ];
    const all = [...kept.observed.map(({ reading }) => reading), ...kept.measured];
    const seen: Seen = { readings: [...all, ...told, ...kept.said, ...said], named: kept.named };
    const found = await this.found(shown, known, seen, copy);
    return {
      version: shown.version,
      on: dayOf(dossier),
      card: cardOf(dossier),
      ...identifiedOnWire(found),
      readings,
      traits: choicesOnWire(traitChoices(known)),
      kinds: kindsOf(dossier),
    };
  }

  /** The probabilities, how often looks err learned from the other copies of the desk. */
  async found(
    { dossier }: Shown,
    known: Known,
    seen: Seen,
    copy: string | undefined,
  ): Promise<Identified> {
    const read = readerOf(dossier, known);
    const others = copiesOf(dossier)
      .filter(({ id }) => id !== copy)
      .map(({ id }) => seenOf(dossier, id, read));
    const { identified } = await this.#reckoner.run({
      ...{ do: 'identify', seen, known: { ...known, others } },
    });
    return identified!;
  }

  /** What the dossier knows that tells its printings apart, read once for each state of it. */
  knownIn(shown: Shown, graded: boolean): Known {
    const by = this.#known.get(shown) ?? new Map<boolean, Known>();
    this.#known.set(shown, by);
    const known = by.get(graded) ?? knownOf(shown.dossier, dayOf(shown.dossier), graded);
    by.set(graded, known);
    return known;
  }

  /** The key to all printings, made once for each state of the dossier. */
  async key(): Promise<KeyAnswer> {
    const shown = await this.#session.shown();
    const { version, dossier } = shown;
    if (this.#key?.version !== version) {
      const answer = this.#reckoner
        .run({ do: 'key', known: this.knownIn(shown, false) })
        .then(({ key }) => ({
          ...{ version, on: dayOf(dossier), kinds: kindsOf(dossier) },
          // The step's answer is the wire's shape but for `readonly`, which a type test holds.
          key: key as KeyAnswer['key'],
        }));
      this.#key = { version, answer };
    }
    return await this.#key.answer;
  }
}

const NOTHING: ReturnType<typeof keptOf> = { observed: [], measured: [], said: [], named: [] };

function dayOf(dossier: Dossier): string {
  const newest = newestDay(dossier);
  return newest === null ? '' : isoOf(newest);
}

function cardOf({ manifest: { width_mm, height_mm } }: Dossier): IdentifyAnswer['card'] {
  return width_mm === null || height_mm === null ? null : [width_mm, height_mm];
}

function readingIn({ trait, value, sees }: IdentifyRequest['saw'][number]): Reading {
  const read = readValue(value);
  if (!read.ok) throw new Refused('bad-request', `${trait}: ${read.expected} is expected.`);
  return { trait, value: read.value, sees: isLook(sees) ? sees : null, sd: null };
}

function wordsOf({ trait, value, sees }: Reading, from: CopyReading['from']): CopyReading {
  return { trait, value: sayValue(value), sees: sees ?? '', from, row: null, cells: null };
}

import type { Known } from '../identify/identify.ts';
import { type Look, lookKind } from '../identify/looks.ts';
import { marksOf } from '../identify/marks.ts';
import type { TraitModel } from '../identify/outcomes.ts';
import { priorOf } from '../identify/prior.ts';
import { modelsOf } from '../identify/seen.ts';
import { bestDivision } from './choose.ts';
import { type Item, weightOf } from './split.ts';

/** One question of a key, with its leads. */
export interface Couplet {
  readonly number: number;
  /** The couplet that leads here; null for the first. */
  readonly from: number | null;
  readonly trait: string;
  readonly sees: Look;
  /** As written in the dossier; empty where it is not told. */
  readonly region: string;
  readonly leads: readonly Lead[];
}

/** What is seen, and where it leads: to a couplet, or to what the copy is. */
export interface Lead {
  readonly says: string;
  /** The same as written in the dossier, `none` where it is absent. */
  readonly value: string;
  /** Share of copies that come to this couplet and go this way. */
  readonly share: number;
  readonly to: number | null;
  /** Several, where no known trait tells them apart; empty where it leads to a couplet. */
  readonly ids: readonly string[];
}

/** A key to all printings and known counterfeits of a dossier. */
export interface IdentificationKey {
  readonly couplets: readonly Couplet[];
  /** Looks that a copy takes on average, and their effort, a look by eye being 1. */
  readonly expected_looks: number;
  readonly expected_effort: number;
  /** Share of copies whose way was left out, being too rare for the page. */
  readonly left_out: number;
  /** Groups that no known trait tells apart. */
  readonly alike: readonly (readonly string[])[];
  /** Traits in it that are marked to stay at home. */
  readonly keep_at_home: readonly string[];
}

/** Ways that fewer copies go, of a printing whose trait is not known, are left out of the page. */
const RARE = 0.0005;

/**
 * The identification key of a dossier: couplet by couplet the trait that tells most for its effort,
 * by how many of each are about. Readings are taken for right; use `identify` where one is in
 * doubt.
 *
 * @param traits `published`: without those of which a row is marked to stay at home
 */
export function identificationKey(
  known: Known,
  traits: 'all' | 'published' = 'all',
): IdentificationKey {
  const marks = marksOf(known.printings, known.counterfeits, known.traits);
  const { hypotheses } = marks;
  const models = [...modelsOf(marks).values()].filter(
    ({ trait }) => trait.seen && (traits === 'all' || trait.publish),
  );
  const prior = priorOf(hypotheses, known.about);
  const items = hypotheses.flatMap(({ kind }, at) =>
    kind === 'unlisted' ? [] : { at, weight: prior[at] as number },
  );
  const maker = new KeyMaker(
    models,
    hypotheses.map(({ id }) => id),
    weightOf(items),
  );
  maker.add(items, null);
  return maker.key();
}

class KeyMaker {
  readonly #models: readonly TraitModel[];
  readonly #ids: readonly string[];
  readonly #all: number;
  readonly #couplets: (Couplet | undefined)[] = [];
  readonly #alike = new Map<string, readonly string[]>();
  readonly #home = new Set<string>();
  #looks = 0;
  #effort = 0;
  #leftOut = 0;

  constructor(models: readonly TraitModel[], ids: readonly string[], all: number) {
    this.#models = models;
    this.#ids = ids;
    this.#all = all;
  }

  /** Adds the couplets for some items; where they lead. */
  add(items: readonly Item[], from: number | null): Pick<Lead, 'to' | 'ids'> {
    const kept = this.#kept(items);
    const division = new Set(this.#idsOf(kept)).size > 1 && bestDivision(this.#models, kept);
    if (!division) return this.#end(kept);
    const { trait } = division.model;
    const number = this.#couplets.push(undefined);
    if (!trait.publish) this.#home.add(trait.name);
    const all = weightOf(kept);
    this.#looks += all / this.#all;
    this.#effort += (all / this.#all) * lookKind(trait.look).effort;
    const leads = [...division.branches]
      .map(({ items: some, ...lead }) => ({ ...lead, share: weightOf(some) / all, some }))
      .sort((a, b) => b.share - a.share)
      .map(({ some, ...lead }) => ({ ...lead, ...this.add(some, number) }));
    const { name, look, region } = trait;
    this.#couplets[number - 1] = { number, from, trait: name, sees: look, region, leads };
    return { to: number, ids: [] };
  }

  key(): IdentificationKey {
    return {
      couplets: this.#couplets.flatMap((one) => one ?? []),
      expected_looks: this.#looks,
      expected_effort: this.#effort,
      left_out: this.#leftOut,
      alike: [...this.#alike.values()],
      keep_at_home: [...this.#home],
    };
  }

  /** Without ways that are too rare for the page; never without all. */
  #kept(items: readonly Item[]): readonly Item[] {
    const kept = items.filter(
      ({ weight, at }) => weight >= RARE * this.#all || this.#isWhole(at, weight),
    );
    this.#leftOut += (weightOf(items) - weightOf(kept)) / this.#all;
    return kept;
  }

  readonly #whole = new Map<number, number>();

  /** Whether nothing of an item went another way; so rare printings stay in the key. */
  #isWhole(at: number, weight: number): boolean {
    const most = this.#whole.get(at) ?? weight;
    this.#whole.set(at, Math.max(most, weight));
    return weight >= most * (1 - 1e-9);
  }

  #end(items: readonly Item[]): Pick<Lead, 'to' | 'ids'> {
    const ids = this.#idsOf([...items].sort((a, b) => b.weight - a.weight));
    if (ids.length > 1) this.#alike.set([...ids].sort().join(' '), ids);
    return { to: null, ids };
  }

  #idsOf(items: readonly Item[]): readonly string[] {
    return [...new Set(items.map(({ at }) => this.#ids[at] as string))];
  }
}

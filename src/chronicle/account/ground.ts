import type { TraitRow } from '../../catalogue/index.ts';
import type { Dating } from '../../dating/index.ts';
import type { Evidence, Fact } from '../../evidence/index.ts';
import type { Price, PriceGround } from '../../market/index.ts';
import type { Population, Records } from '../../population/index.ts';
import type { Correction, Subject, ToldCounterfeit, ToldPicture } from './types.ts';

/** What an account is made from, as a dossier holds it; nothing is left out yet. */
export interface AccountGround {
  readonly subject: Subject;
  readonly evidence: Evidence;
  /** Day number that the account holds for; null where nothing has a day. */
  readonly on: number | null;
  readonly records: Records;
  /** What prices are learned from, and in which currency; null where the dossier tells no day. */
  readonly prices: { readonly ground: PriceGround; readonly currency: string } | null;
  readonly traits: readonly TraitRow[];
  readonly counterfeits: readonly Omit<ToldCounterfeit, 'traits' | 'pictures'>[];
  /** Pictures of printings and counterfeits; those without rights or marked to stay are left out. */
  readonly pictures: readonly ToldPicture[];
  readonly corrections: readonly Correction[];
  /** Texts of `story/` by name. */
  readonly stories: ReadonlyMap<string, string>;
}

/** What the steps answer for a dossier. */
export interface Results {
  readonly dating: Dating;
  readonly population: Population;
  readonly facts: readonly Fact[];
  /** By printing; null where no price is shown. */
  readonly prices: ReadonlyMap<string, readonly Price[]> | null;
}

import type { TraitValue } from '../traits/value.ts';
import { sayValue } from '../traits/value.ts';
import type { Known } from './identify.ts';
import { type Look, lookKind } from './looks.ts';
import { marksOf } from './marks.ts';
import type { Hypothesis, Trait } from './types.ts';

/** A trait that a look at a card tells, with what it may show. */
export interface TraitChoice {
  readonly trait: string;
  readonly sees: Look;
  /** As written in the dossier; empty where it is not told. */
  readonly region: string;
  /** What its numbers measure; null where it is told in words. */
  readonly measure: string | null;
  /** What to weigh before the look; empty where it touches nothing. */
  readonly caution: string;
  /** Each value that is known, with the printings and kinds that show it. */
  readonly values: readonly { readonly value: TraitValue; readonly ids: readonly string[] }[];
}

/** The traits of a dossier that a look at a card tells, in the order of the dossier. */
export function traitChoices({ printings, counterfeits, traits }: Known): readonly TraitChoice[] {
  const marks = marksOf(printings, counterfeits, traits);
  return [...marks.traits.values()]
    .filter(({ seen }) => seen)
    .map((trait) => ({
      trait: trait.name,
      sees: trait.look,
      region: trait.region,
      measure: trait.measure,
      caution: lookKind(trait.look).caution,
      values: valuesOf(trait, marks.hypotheses),
    }));
}

function valuesOf(trait: Trait, hypotheses: readonly Hypothesis[]): TraitChoice['values'] {
  const found = new Map<string, { value: TraitValue; ids: Set<string> }>();
  for (const [h, value] of trait.values.entries()) {
    if (value === undefined) continue;
    const known = found.get(sayValue(value)) ?? { value, ids: new Set() };
    known.ids.add(hypotheses[h]?.id ?? '');
    found.set(sayValue(value), known);
  }
  return [...found.values()].map(({ value, ids }) => ({ value, ids: [...ids] }));
}

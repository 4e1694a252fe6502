import { sayTrait, sayValue, type TraitRow } from '../../catalogue/index.ts';
import { regionOf } from './region.ts';
import type { ToldTrait } from './types.ts';

/**
 * The traits of each printing and counterfeit that may be published. A trait that one row marks to
 * stay is told of none: the others would give away what to look at.
 */
export function toldTraits(rows: readonly TraitRow[]): ReadonlyMap<string, readonly ToldTrait[]> {
  const nameOf = ({ trait }: TraitRow) => sayTrait(trait.trim().toLowerCase());
  const home = new Set(rows.filter(({ publish }) => !publish).map(nameOf));
  const byBearer = new Map<string, ToldTrait[]>();
  for (const row of rows) {
    if (home.has(nameOf(row))) continue;
    const told = {
      trait: sayTrait(row.trait),
      value: sayValue(row.value),
      sees: row.sees,
      region: regionOf(row.region),
    };
    for (const id of row.of) byBearer.set(id, [...(byBearer.get(id) ?? []), told]);
  }
  return byBearer;
}

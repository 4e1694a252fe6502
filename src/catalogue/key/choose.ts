import { lookKind } from '../identify/looks.ts';
import type { TraitModel } from '../identify/outcomes.ts';
import { type Branch, branchesOf, type Item, weightOf } from './split.ts';

/** A trait that divides some items, with what it tells and takes. */
export interface Division {
  readonly model: TraitModel;
  readonly branches: readonly Branch[];
  /** In bits. */
  readonly gain: number;
  readonly effort: number;
}

/** Divisions that are looked into a second time; the others tell too little. */
const LOOKED_INTO = 8;

/**
 * The trait to ask for among these items: the one that tells most for its effort, it and the best
 * look after it taken together. Undefined where no trait divides them.
 */
export function bestDivision(
  models: readonly TraitModel[],
  items: readonly Item[],
): Division | undefined {
  const divisions = divisionsOf(models, items).slice(0, LOOKED_INTO);
  let best: { readonly division: Division; readonly rate: number } | undefined;
  for (const division of divisions) {
    const rate = rateWithNext(division, models, weightOf(items));
    if (!best || rate > best.rate) best = { division, rate };
  }
  return best?.division;
}

/** All divisions, the most information for the effort first. */
function divisionsOf(models: readonly TraitModel[], items: readonly Item[]): Division[] {
  return models
    .flatMap((model): readonly Division[] => {
      const branches = branchesOf(model, items);
      if (branches.length < 2) return [];
      const left = branches.reduce((sum, one) => sum + bitsOf(one.items), 0);
      const gain = (bitsOf(items) - left) / weightOf(items);
      return [{ model, branches, gain, effort: lookKind(model.trait.look).effort }];
    })
    .sort((a, b) => b.gain / b.effort - a.gain / a.effort);
}

function rateWithNext(
  { branches, gain, effort }: Division,
  models: readonly TraitModel[],
  all: number,
): number {
  let [bits, cost] = [gain, effort];
  for (const { items } of branches) {
    const [next] = divisionsOf(models, items);
    const share = weightOf(items) / all;
    bits += share * (next?.gain ?? 0);
    cost += share * (next?.effort ?? 0);
  }
  return bits / cost;
}

/** Entropy of some items times their weight, in bits. */
function bitsOf(items: readonly Item[]): number {
  const all = weightOf(items);
  return items.reduce(
    (sum, { weight }) => (weight > 0 ? sum - weight * Math.log2(weight / all) : sum),
    0,
  );
}

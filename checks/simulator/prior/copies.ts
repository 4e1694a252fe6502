import type { Chance } from '../chance.ts';
import { written } from '../dates.ts';
import type { Precision, Slot } from './design.ts';
import { MISCOPY } from './numbers.ts';
import type { Said } from './said.ts';

/** Whether what a slot holds may be taken from another source. */
export const copyable = ({ property }: Slot) => property === 'on-sale' || property === 'label-year';

const FINEST: readonly Precision[] = ['day', 'month', 'year'];

/**
 * A parent's value in the copy's own precision. Between days it is now and then written down wrong,
 * here always within ten days. A coarse value is hardly ever written down wrong in the model, nor
 * made finer save as the first day of its span; undefined stands for what is left of the
 * probability there.
 */
export function copied(chance: Chance, slot: Slot, from: Said): Said | undefined {
  const wrong = chance.yes(MISCOPY.chance);
  if (slot.precision === 'day' && from.slot.precision === 'day') {
    const by = wrong ? chance.whole(1, MISCOPY.within) * (chance.yes(0.5) ? 1 : -1) : 0;
    return { slot, day: from.day + by, how: 'copied' };
  }
  if (FINEST.indexOf(slot.precision) >= FINEST.indexOf(from.slot.precision)) {
    return wrong ? undefined : { slot, day: from.day, how: 'copied' };
  }
  if (slot.precision !== 'day' || !chance.yes(MISCOPY.first)) return undefined;
  return { slot, day: written(from.day, from.slot.precision).ranges[0]!.first, how: 'copied' };
}

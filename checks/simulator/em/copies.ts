import { grouped } from '../groups.ts';
import type { Item } from './items.ts';
import type { Parent } from './model.ts';
import type { State } from './posteriors.ts';

const key = (item: Item) => `${item.source} ${item.group.index}`;

/** Whether two statements can be of one day. */
export function agree(a: Item, b: Item): boolean {
  return a.meant.some((x) => b.meant.some((y) => x.first <= y.last && y.first <= x.last));
}

const improbable = (state: State, item: Item): boolean => {
  const g = item.group.index;
  let held = 0;
  state.days[g]!.forEach((day, i) => {
    if (item.meant.some(({ first, last }) => first <= day && day <= last)) held += state.p[g]![i]!;
  });
  return held < 0.3;
};

/**
 * A simple notion of copying: of the exact days that two sources both state and that look wrong,
 * at least three and more than half are the same. The smaller source is taken to be the copy.
 */
export function findCopies(state: State): (item: Item) => Parent | undefined {
  const exact = state.items.filter(
    (item) => item.property === 'on-sale' && item.meant.every((m) => m.first === m.last),
  );
  const bySource = grouped(exact, (item) => item.source);
  const byPlace = new Map(
    state.items.filter((i) => i.property === 'on-sale').map((i) => [key(i), i]),
  );
  const parents = new Map<string, { from: string; rate: number; strength: number }>();
  for (const [child, own] of bySource) {
    const wrong = own.filter((item) => improbable(state, item));
    for (const [from, theirs] of bySource) {
      if (from === child || theirs.length < own.length) continue;
      if (theirs.length === own.length && from > child) continue;
      const shared = wrong.filter((item) => byPlace.has(`${from} ${item.group.index}`));
      const same = shared.filter((item) =>
        agree(item, byPlace.get(`${from} ${item.group.index}`)!),
      );
      const strength = same.length / (shared.length + 1);
      if (same.length < 3 || strength < 0.5 || strength <= (parents.get(child)?.strength ?? 0))
        continue;
      parents.set(child, { from, rate: same.length / (shared.length + 0.5), strength });
    }
  }
  return (item) => {
    const parent = parents.get(item.source);
    const source = parent && byPlace.get(`${parent.from} ${item.group.index}`);
    return parent && source ? { rate: parent.rate, agrees: agree(item, source) } : undefined;
  };
}

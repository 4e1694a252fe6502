import { grouped } from '../groups.ts';
import type { Group } from './items.ts';
import type { Siblings } from './likelihood.ts';

/**
 * Chance of a sibling's day by the posteriors so far: the earliest of the product has 0.5, all its
 * releases and the rows next to it in its market's table share the rest.
 */
export function siblingsOf(
  groups: readonly Group[],
  days: readonly Int32Array[],
  p: readonly Float64Array[],
): Siblings {
  const best = groups.map((_, g) => bestOf(days[g]!, p[g]!));
  const byTime = [...groups].sort((a, b) => best[a.index]! - best[b.index]!);
  const products = grouped(byTime, (g) => g.product);
  const markets = grouped(byTime, (g) => g.market);
  const place = new Map<Group, number>();
  for (const list of markets.values()) {
    list.forEach((g, i) => {
      place.set(g, i);
    });
  }
  const others = groups.map((group) => {
    const kin = products.get(group.product)!.filter((g) => g !== group);
    const table = markets.get(group.market)!;
    const at = place.get(group)!;
    const next = [table[at - 1], table[at + 1]].filter((g) => g !== undefined);
    const parts: [Group, number][] = kin.map((g, i) => [
      g,
      0.75 * (0.4 / kin.length + (i === 0 ? 0.6 : 0)),
    ]);
    return [...parts, ...next.map((g): [Group, number] => [g, 0.25 / next.length])];
  });
  return (group, first, last) => {
    let sum = 0;
    for (const [g, share] of others[group.index]!)
      sum += share * massBetween(days[g.index]!, p[g.index]!, first, last);
    return sum;
  };
}

function bestOf(days: Int32Array, p: Float64Array): number {
  let at = 0;
  p.forEach((q, i) => {
    if (q > p[at]!) at = i;
  });
  return days[at]!;
}

function massBetween(days: Int32Array, p: Float64Array, first: number, last: number): number {
  let low = 0;
  let high = days.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (days[middle]! < first) low = middle + 1;
    else high = middle;
  }
  let sum = 0;
  for (let i = low; i < days.length && days[i]! <= last; i++) sum += p[i]!;
  return sum;
}

import { civilOf, dayOf } from '../../../src/evidence/index.ts';
import { grouped } from '../groups.ts';
import { swapped } from '../mistakes.ts';
import type { Group, Item } from './items.ts';

/** Days that some reading of some statement points at, for each group, ascending. */
export function candidatesOf(groups: readonly Group[], items: readonly Item[]): Int32Array[] {
  const byGroup = grouped(items, (item) => item.group.index);
  const ends = items.flatMap((item) => item.meant.flatMap((m) => [m.first, m.last]));
  const finite = ends.filter((day) => Number.isFinite(day)).sort((a, b) => a - b);
  const low = finite[Math.floor(finite.length * 0.01)] ?? 0;
  const high = finite[Math.floor(finite.length * 0.99)] ?? low;
  return groups.map((group) => {
    const days = new Set<number>();
    const own = byGroup.get(group.index) ?? [];
    if (groups.length <= 100 && own.length <= 5) span(days, low - 30, high + 30);
    for (const item of byGroup.get(group.index) ?? []) point(days, item);
    if (days.size === 0) for (const item of byGroup.get(group.index) ?? []) pointWide(days, item);
    if (days.size === 0) for (let day = low; day <= high; day++) days.add(day);
    return Int32Array.from(days).sort();
  });
}

function span(days: Set<number>, first: number, last: number): void {
  for (let day = first; day <= last; day++) days.add(day);
}

function point(days: Set<number>, item: Item): void {
  for (const { first, last } of item.meant) {
    if (item.property === 'on-sale' && first === last) pointDay(days, first);
    else if (item.property === 'on-sale' && last - first < 62) span(days, first - 10, last + 10);
    else if (item.property === 'cover-date' && last - first < 62) span(days, first - 75, last + 5);
    else if (item.property === 'announced' && first === last) span(days, first - 3, first + 40);
  }
}

function pointDay(days: Set<number>, day: number): void {
  const { year, month, dayOfMonth } = civilOf(day);
  span(days, day - 8, day + 8);
  for (const lag of [10, 14, 21, 28]) {
    days.add(day - lag);
    days.add(day + lag);
  }
  days.add(swapped(day));
  if (dayOfMonth === 1) span(days, day, dayOf(year, month + 1, 1) - 1);
  if (month === 1) days.add(dayOf(year + 1, month, dayOfMonth));
  if (month === 12) days.add(dayOf(year - 1, month, dayOfMonth));
}

/** Where nothing is stated closely: the years, and a while around bounds. */
function pointWide(days: Set<number>, item: Item): void {
  for (const { first, last } of item.meant) {
    if (last - first < 400) span(days, first - 60, last + 60);
  }
}

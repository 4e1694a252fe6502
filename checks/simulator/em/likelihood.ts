import { civilOf } from '../../../src/evidence/index.ts';
import { firstOfMonth, swapped, yearOff } from '../mistakes.ts';
import type { Group, Item, Meant } from './items.ts';
import { within } from './kernels.ts';
import { type Model, PARTS, type SourceModel } from './model.ts';

/** A day with the days that mistakes make of it. */
export interface Turned {
  readonly day: number;
  readonly swapped: number;
  readonly first: number;
  readonly year: number;
}

export function turn(day: number): Turned {
  return { day, swapped: swapped(day), first: firstOfMonth(day), year: yearOff(day) };
}

/** Chance that the group's siblings or the rows next to it give a day between two days. */
export type Siblings = (group: Group, first: number, last: number) => number;

const between = (day: number, range: Meant) => (range.first <= day && day <= range.last ? 1 : 0);

/** Rough chance of a slip of the pen: within the month, the month, the year. */
function penChance(day: number, range: Meant): number {
  if (range.first !== range.last) return Math.abs(range.first - day) < 400 ? 0.05 : 0;
  const said = civilOf(range.first);
  const meant = civilOf(day);
  if (said.year === meant.year && said.month === meant.month) return 0.65 / 30;
  if (said.dayOfMonth !== meant.dayOfMonth) return Math.abs(range.first - day) <= 3 ? 0.05 : 0;
  if (said.year === meant.year) return 0.12 / 11;
  return Math.abs(said.year - meant.year) === 1 && said.month === meant.month ? 0.12 / 2 : 0;
}

/** Chance of an on-sale statement, given the day, by the source's own doing. */
export function ownChance(
  item: Item,
  turned: Turned,
  source: SourceModel,
  constant: readonly number[],
): number {
  const right = source.right(item.group, turned.day);
  const { shares } = source;
  let total = 0;
  item.meant.forEach((range, i) => {
    const day = turned.day;
    const wrong =
      within(source.moved, range.first - day, range.last - day) +
      shares[5]! * between(turned.swapped, range) +
      shares[6]! * between(turned.first, range) +
      shares[7]! * between(turned.year, range) +
      shares[10]! * penChance(day, range) +
      constant[i]!;
    total += range.weight * (right * between(day, range) + (1 - right) * wrong);
  });
  return total;
}

/** What of a statement's chance does not depend on the day: siblings and filled-in days. */
export function constantsOf(item: Item, source: SourceModel, siblings: Siblings): number[] {
  return item.meant.map(
    ({ first, last }) =>
      source.shares[8]! * siblings(item.group, first, last) +
      source.shares[9]! * source.fill(first, last),
  );
}

/** Parts of the chance of one meant value: right, then each of `WAYS`. */
export function partsOf(
  item: Item,
  range: Meant,
  turned: Turned,
  source: SourceModel,
  siblings: Siblings,
): number[] {
  const { day } = turned;
  const right = source.right(item.group, day);
  const moved = [...PARTS, source.lag].map((k) => within(k, range.first - day, range.last - day));
  const rest = [
    between(turned.swapped, range),
    between(turned.first, range),
    between(turned.year, range),
    siblings(item.group, range.first, range.last),
    source.fill(range.first, range.last),
    penChance(day, range),
  ];
  const ways = [...moved, ...rest].map(
    (p, i) => (1 - right) * source.shares[i]! * p * range.weight,
  );
  return [right * between(day, range) * range.weight, ...ways];
}

/** Chance of any statement at each of the candidate days. */
export function likelihood(
  item: Item,
  days: readonly Turned[],
  model: Model,
  siblings: Siblings,
): Float64Array {
  if (item.property !== 'on-sale') return propertyChance(item, days, model);
  const source = model.sources.get(item.source)!;
  const constant = constantsOf(item, source, siblings);
  const parent = model.parent(item);
  return Float64Array.from(days, (turned) => {
    const own = ownChance(item, turned, source, constant);
    return parent === undefined ? own : (parent.agrees ? parent.rate : 0) + (1 - parent.rate) * own;
  });
}

function propertyChance(item: Item, days: readonly Turned[], model: Model): Float64Array {
  const lead = model.lead(item);
  return Float64Array.from(days, ({ day }) =>
    item.meant.reduce((sum, { first, last, weight }) => {
      return sum + weight * (within(lead, first - day, last - day) + 1e-5);
    }, 0),
  );
}

import { type Evidence, weekdayOf } from '../../../src/evidence/index.ts';
import { grouped } from '../groups.ts';
import { candidatesOf } from './candidates.ts';
import { type Group, groupsOf, type Item, itemsOf } from './items.ts';
import { likelihood, type Siblings, type Turned, turn } from './likelihood.ts';
import type { Model } from './model.ts';
import { siblingsOf } from './siblings.ts';

/** A dossier made ready, and what is believed of each group's day so far. */
export interface State {
  readonly groups: readonly Group[];
  readonly items: readonly Item[];
  readonly byGroup: ReadonlyMap<number, readonly Item[]>;
  days: Int32Array[];
  turned: (readonly Turned[])[];
  p: Float64Array[];
  siblings: Siblings;
  readonly orders: readonly (readonly [number, number])[];
}

export function begin(evidence: Evidence, pen: number): State {
  const groups = groupsOf(evidence);
  const items = itemsOf(evidence, groups, pen);
  const days = candidatesOf(groups, items);
  const p = days.map((list) => new Float64Array(list.length).fill(1 / list.length));
  const byPrinting = new Map(
    groups.flatMap((g) => g.printings.map((id) => [id, g.index] as const)),
  );
  return {
    groups,
    items,
    byGroup: grouped(items, (item) => item.group.index),
    days,
    turned: days.map((list) => Array.from(list, turn)),
    p,
    siblings: () => 1 / 2000,
    orders: evidence.orders.map(
      (o) => [byPrinting.get(o.earlier)!, byPrinting.get(o.later)!] as const,
    ),
  };
}

/** One pass: the posterior of each group's day under the model, neighbours as they were. */
export function expect(state: State, model: Model): void {
  const logs = state.groups.map((group) => logPosterior(state, group, model));
  for (let round = 0; round < 2; round++) state.p = logs.map((log, g) => ordered(state, g, log));
  state.siblings = siblingsOf(state.groups, state.days, state.p);
}

function logPosterior(state: State, group: Group, model: Model): Float64Array {
  const g = group.index;
  const week = model.weekday(group);
  const log = Float64Array.from(state.days[g]!, (day) => Math.log(week[weekdayOf(day) - 1]!));
  for (const item of state.byGroup.get(g) ?? []) {
    likelihood(item, state.turned[g]!, model, state.siblings).forEach((chance, i) => {
      log[i]! += Math.log(chance + 1e-12);
    });
  }
  return log;
}

/** The posterior once the sequences that are certain have cut it, by the others' posteriors. */
function ordered(state: State, g: number, log: Float64Array): Float64Array {
  const most = log.reduce((a, b) => Math.max(a, b), -Infinity);
  const p = log.map((x) => Math.exp(x - most));
  for (const [earlier, later] of state.orders) {
    if (earlier !== g && later !== g) continue;
    const other = earlier === g ? later : earlier;
    state.days[g]!.forEach((day, i) => {
      let allowed = 0;
      state.days[other]!.forEach((d, j) => {
        if (earlier === g ? d > day : d < day) allowed += state.p[other]![j]!;
      });
      p[i]! *= allowed + 1e-9;
    });
  }
  const total = p.reduce((sum, q) => sum + q, 0);
  return p.map((q) => q / total);
}

/** Drops the days that have become hopeless, so that later passes are fast. */
export function prune(state: State, least: number): void {
  state.groups.forEach(({ index: g }) => {
    const kept = Array.from(state.p[g]!, (_, i) => i).filter((i) => state.p[g]![i]! > least);
    state.days[g] = Int32Array.from(kept, (i) => state.days[g]![i]!);
    state.turned[g] = kept.map((i) => state.turned[g]![i]!);
    state.p[g] = Float64Array.from(kept, (i) => state.p[g]![i]!);
  });
}

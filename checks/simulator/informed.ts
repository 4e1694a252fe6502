import type { Evidence } from '../../src/evidence/index.ts';
import { agree } from './em/copies.ts';
import { answers } from './em/index.ts';
import type { Item } from './em/items.ts';
import { kernel, PROPERTIES } from './em/kernels.ts';
import { type Model, movedBy, type SourceModel, WAYS } from './em/model.ts';
import { begin, expect, prune } from './em/posteriors.ts';
import type { Answer } from './engine.ts';
import { type Habits, MISTAKES, type Truth } from './types.ts';

const logistic = (x: number) => 1 / (1 + Math.exp(-x));

/**
 * The limit: the baseline's model with each source's true rates, lags, filled-in days and
 * derivations and each market's true weekdays, nothing learned. Only approximately a limit, since
 * neighbours enter by their averaged posteriors.
 */
export function informed(evidence: Evidence, truth: Truth): Answer {
  if (truth.habits.length === 0) throw new RangeError('this style has no rates to be told');
  const pen = truth.habits.reduce((sum, h) => sum + h.pen, 0) / truth.habits.length;
  const state = begin(evidence, pen);
  const days = [...truth.days.values()];
  const first = Math.min(...days);
  const span = Math.max(...days) - first + 1;
  const sources = new Map(truth.habits.map((h) => [h.id, modelOfHabits(h, first, span)]));
  const places = new Map(
    state.items
      .filter((i) => i.property === 'on-sale')
      .map((i) => [`${i.source} ${i.group.index}`, i]),
  );
  const derived = new Map(
    truth.derivations.flatMap((d) => d.products.map((p) => [`${d.source} ${p}`, d] as const)),
  );
  const model: Model = {
    sources,
    weekday: (group) =>
      truth.weekdays.get(`${group.market}/${group.channel}`) ?? new Array(7).fill(1 / 7),
    lead: (item) => PROPERTIES[item.property]!,
    parent(item: Item) {
      const derivation = derived.get(`${item.source} ${item.group.product}`);
      const from = derivation && places.get(`${derivation.from} ${item.group.index}`);
      return derivation && from ? { rate: derivation.rate, agrees: agree(item, from) } : undefined;
    },
  };
  for (let round = 0; round < 4; round++) {
    expect(state, model);
    if (state.groups.length > 20) prune(state, 1e-9);
  }
  return { printings: answers(state) };
}

/** True shares in the model's own terms: the lag of its habit counts among what is not right. */
function modelOfHabits(habits: Habits, first: number, span: number): SourceModel {
  const chanceAt = (market: string, day: number) =>
    (1 - habits.lagShare) *
    logistic(
      habits.accuracy -
        (market === habits.home ? 0 : habits.abroad) +
        habits.drift * ((day - first) / span - 0.5),
    );
  const wrong =
    1 - habits.lagShare - (1 - habits.lagShare) * logistic(habits.accuracy - habits.abroad / 2);
  const share = (way: string) => {
    const names = way === 'sibling' ? ['sibling', 'row-shift'] : [way];
    const own = names.reduce(
      (sum, n) => sum + (habits.mistakes[MISTAKES.indexOf(n as never)] ?? 0),
      0,
    );
    return (
      wrong * own +
      (way === 'other-moment' ? habits.lagShare : 0) +
      (way === 'pen' ? habits.pen : 0)
    );
  };
  const raw = WAYS.map(share);
  const total = raw.reduce((sum, s) => sum + s, 0);
  const shares = raw.map((s) => s / total);
  const sd = Math.max(0.3, habits.spread);
  const lag = kernel((d) => Math.exp(-(((d - habits.lag) / sd) ** 2) / 2));
  return {
    right: (group, day) => chanceAt(group.market, day),
    shares,
    lag,
    moved: movedBy(shares, lag),
    fill: (from, to) => (from <= habits.fill && habits.fill <= to ? 1 : 0),
  };
}

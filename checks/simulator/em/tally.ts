import type { Item } from './items.ts';
import { partsOf, type Siblings, type Turned } from './likelihood.ts';
import type { Model } from './model.ts';
import { type Counts, noCounts, type Tally } from './rates.ts';

/** Days with less than this share of a posterior are passed over when counting. */
const LEAST = 1e-3;
const LAG = 4;
const FILL = 9;

/** Adds to the tally how a statement most probably came about, over the posterior of its day. */
export function count(
  tally: Tally,
  item: Item,
  days: readonly Turned[],
  p: Float64Array,
  model: Model,
  siblings: Siblings,
): void {
  if (item.property === 'cover-date') countLead(tally, item, days, p);
  if (item.property !== 'on-sale') return;
  const counts = tally.sources.get(item.source) ?? noCounts();
  tally.sources.set(item.source, counts);
  const source = model.sources.get(item.source)!;
  const parent = model.parent(item);
  days.forEach((turned, i) => {
    if (p[i]! < LEAST) return;
    const parts = item.meant.map((range) => partsOf(item, range, turned, source, siblings));
    const own = parts.flat().reduce((sum, part) => sum + part, 0);
    if (own <= 0) return;
    const mine = parent?.agrees
      ? ((1 - parent.rate) * own) / (parent.rate + (1 - parent.rate) * own)
      : 1;
    parts.forEach((list, m) => {
      addParts(counts, item, turned.day, list, (p[i]! * mine) / own, item.meant[m]!.first);
    });
  });
}

function addParts(
  counts: Counts,
  item: Item,
  day: number,
  parts: readonly number[],
  scale: number,
  value: number,
): void {
  const market = counts.markets.get(item.group.market) ?? { right: 0, all: 0 };
  counts.markets.set(item.group.market, market);
  parts.forEach((part, k) => {
    const n = part * scale;
    market.all += n;
    counts.all += n;
    if (k === 0) {
      counts.right += n;
      market.right += n;
      return;
    }
    counts.ways[k - 1]! += n;
    if (n < LEAST) return;
    if (k - 1 === LAG) add(counts.lags, value - day, n);
    if (k - 1 === FILL) add(counts.fills, value, n);
  });
}

function countLead(tally: Tally, item: Item, days: readonly Turned[], p: Float64Array): void {
  const lead = tally.leads.get(item.series) ?? new Map<number, number>();
  tally.leads.set(item.series, lead);
  const { first, last } = item.meant[0]!;
  days.forEach(({ day }, i) => {
    if (p[i]! < 0.02) return;
    for (let stated = first; stated <= last; stated += 3)
      add(lead, stated - day, (p[i]! * 3) / (last - first + 1));
  });
}

function add(counts: Map<number, number>, key: number, n: number): void {
  counts.set(key, (counts.get(key) ?? 0) + n);
}

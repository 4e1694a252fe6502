import { weekdayOf } from '../../../src/evidence/index.ts';
import type { Group, Item } from './items.ts';
import { ANY_LAG, type Kernel, kernel, PROPERTIES, REACH } from './kernels.ts';
import { type Model, movedBy, type Parent, type SourceModel, WAYS } from './model.ts';

/** Average share of each of `WAYS` among mistakes, as the simulator has them. */
export const AVERAGE: readonly number[] = [
  0.09, 0.13, 0.07, 0.05, 0.22, 0.04, 0.11, 0.04, 0.16, 0.06, 0.03,
];
/** Weight of the averages against a source's own statements, in statements. */
const WEIGHT = { right: 8, ways: 10, lag: 4, fill: 2, market: 6, weekday: 5, lead: 2 };
const WEEK = [0.13, 0.13, 0.17, 0.17, 0.24, 0.12, 0.04];

/** What the statements of one source were, by the posterior so far. */
export interface Counts {
  right: number;
  all: number;
  readonly ways: number[];
  readonly lags: Map<number, number>;
  readonly fills: Map<number, number>;
  readonly markets: Map<string, { right: number; all: number }>;
}

export function noCounts(): Counts {
  const ways = WAYS.map(() => 0);
  return { right: 0, all: 0, ways, lags: new Map(), fills: new Map(), markets: new Map() };
}

/** Everything that is counted in one pass. */
export interface Tally {
  readonly sources: Map<string, Counts>;
  readonly weekdays: Map<string, number[]>;
  readonly leads: Map<string, Map<number, number>>;
}

/** A source's rates from the told averages and its counts; `dossier` is the average accuracy. */
export function sourceModel(counts: Counts, dossier: number, years: number): SourceModel {
  const mean = (counts.right + WEIGHT.right * dossier) / (counts.all + WEIGHT.right);
  const ways = counts.ways.reduce((sum, n) => sum + n, 0);
  const shares = AVERAGE.map(
    (share, i) => (counts.ways[i]! + WEIGHT.ways * share) / (ways + WEIGHT.ways),
  );
  const lag = counts.lags.size === 0 ? ANY_LAG : learned(ANY_LAG, counts.lags, WEIGHT.lag);
  const markets = new Map(
    [...counts.markets].map(([market, { right, all }]) => [
      market,
      (right + WEIGHT.market * mean) / (all + WEIGHT.market),
    ]),
  );
  const filled = [...counts.fills.values()].reduce((sum, n) => sum + n, 0) + WEIGHT.fill;
  return {
    right: (group) => Math.min(0.995, markets.get(group.market) ?? mean),
    shares,
    lag,
    moved: movedBy(shares, lag),
    fill(first, last) {
      let sum = (WEIGHT.fill * (last - first + 1)) / (365 * years);
      for (const [day, n] of counts.fills) if (first <= day && day <= last) sum += n;
      return sum / filled;
    },
  };
}

/** A kernel after so many statements whose days from release are known. */
function learned(prior: Kernel, counts: ReadonlyMap<number, number>, weight: number): Kernel {
  return kernel((days) => weight * prior.p[days + REACH]! + (counts.get(days) ?? 0));
}

/** The model by what has been counted; before anything is, the told averages alone. */
export function modelOf(
  tally: Tally,
  ids: readonly string[],
  years: number,
  told: number,
  parent: (item: Item) => Parent | undefined,
): Model {
  const all = [...tally.sources.values()];
  const sum = (of: (one: Counts) => number) => all.reduce((total, one) => total + of(one), 0);
  const dossier = (sum((c) => c.right) + 20 * told) / (sum((c) => c.all) + 20);
  const sources = new Map(
    ids.map((id) => [id, sourceModel(tally.sources.get(id) ?? noCounts(), dossier, years)]),
  );
  const leads = new Map(
    [...tally.leads].map(([series, counts]) => [
      series,
      learned(PROPERTIES['cover-date']!, smoothed(counts), WEIGHT.lead),
    ]),
  );
  return {
    sources,
    parent,
    weekday: (group) => weekdayShares(tally, group),
    lead: (item) =>
      (item.property === 'cover-date' ? leads.get(item.series) : undefined) ??
      PROPERTIES[item.property]!,
  };
}

/** Counts of leads spread over a few days, since a series keeps its lead only roughly. */
function smoothed(counts: ReadonlyMap<number, number>): Map<number, number> {
  const spread = new Map<number, number>();
  for (const [days, n] of counts) {
    for (let by = -4; by <= 4; by++) {
      const share = n * 0.2 * Math.exp(-((by / 2) ** 2) / 2);
      spread.set(days + by, (spread.get(days + by) ?? 0) + share);
    }
  }
  return spread;
}

const weekdayKey = (group: Group) => `${group.market}/${group.channel}`;

function weekdayShares(tally: Tally, group: Group): number[] {
  const counts = tally.weekdays.get(weekdayKey(group)) ?? WEEK.map(() => 0);
  const total = counts.reduce((sum, n) => sum + n, 0) + WEIGHT.weekday;
  return WEEK.map((share, i) => (counts[i]! + WEIGHT.weekday * share) / total);
}

/** Adds a group's posterior to its market's weekdays. */
export function countWeekday(tally: Tally, group: Group, days: Int32Array, p: Float64Array): void {
  const key = weekdayKey(group);
  const counts = tally.weekdays.get(key) ?? WEEK.map(() => 0);
  days.forEach((day, i) => {
    counts[weekdayOf(day) - 1]! += p[i]!;
  });
  tally.weekdays.set(key, counts);
}

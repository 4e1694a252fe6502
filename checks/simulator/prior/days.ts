import { weekdayOf } from '../../../src/evidence/index.ts';
import type { Chance } from '../chance.ts';
import type { Release, Slot } from './design.ts';
import { POOLED, TOGETHER } from './numbers.ts';

/** How often releases fell on each weekday, Monday first. */
type Counts = number[];

/** Sweeps after which the weekdays of a dossier have settled. */
const SWEEPS = 50;

/**
 * Draws a day for each release: uniform over a range, times the weight of its weekday; neighbours in
 * some source's list may share a day. Weekdays are drawn by Gibbs sampling, each given those of the
 * other releases, since the method page gives their weights in this form only.
 */
export function drawDays(
  chance: Chance,
  releases: readonly Release[],
  slots: readonly Slot[],
  first: number,
  last: number,
): number[] {
  const shared = drawShared(chance, releases.length, neighbours(slots), last - first + 1);
  const weekdays = releases.map(() => 0);
  for (let i = 0; i < SWEEPS; i++) {
    for (const group of shared) {
      const weekday = chance.weighted(weekdayWeights(releases, weekdays, group));
      for (const index of group) weekdays[index] = weekday;
    }
  }
  const days: number[] = [];
  for (const group of shared) {
    const day = dayOn(chance, weekdays[group[0]!]!, first, last);
    for (const index of group) days[index] = day;
  }
  return days;
}

function dayOn(chance: Chance, weekday: number, first: number, last: number): number {
  for (;;) {
    const day = chance.whole(first, last);
    if (weekdayOf(day) - 1 === weekday) return day;
  }
}

/** Pairs of releases that stand next to each other in some source's list of days of sale. */
export function neighbours(slots: readonly Slot[]): readonly (readonly [number, number])[] {
  const onSale = slots.filter(({ property }) => property === 'on-sale');
  const pairs = new Map<string, readonly [number, number]>();
  onSale.slice(1).forEach(({ source, release }, i) => {
    const above = onSale[i]!;
    if (above.source !== source) return;
    const pair = [above.release.index, release.index].sort((a, b) => a - b) as [number, number];
    pairs.set(pair.join(), pair);
  });
  return [...pairs.values()];
}

/**
 * Draws which releases share a day. Each pair of neighbours counts 1 + N t / (1 − t) where they do,
 * so a tie between them weighs N t / (1 − t), and a group of tied releases has N days to choose from.
 */
function drawShared(
  chance: Chance,
  count: number,
  pairs: readonly (readonly [number, number])[],
  range: number,
): number[][] {
  const t = chance.beta(...TOGETHER);
  const weight = (range * t) / (1 - t);
  const tied = pairs.map(() => false);
  for (let i = 0; i < SWEEPS; i++) {
    pairs.forEach(([a, b], j) => {
      tied[j] = false;
      const group = groupsOf(
        count,
        pairs.filter((_, k) => tied[k]),
      );
      const free = group[a] === group[b] ? 1 : range;
      tied[j] = chance.yes(weight / (weight + free));
    });
  }
  const group = groupsOf(
    count,
    pairs.filter((_, k) => tied[k]),
  );
  return [...new Set(group)].map((g) => group.flatMap((of, e) => (of === g ? [e] : [])));
}

/** For each release the number of the group that ties put it in. */
function groupsOf(count: number, ties: readonly (readonly [number, number])[]): number[] {
  const group = Array.from({ length: count }, (_, e) => e);
  for (const [a, b] of ties) {
    const [from, to] = [group[b]!, group[a]!];
    for (let e = 0; e < count; e++) if (group[e] === from) group[e] = to;
  }
  return group;
}

/** Weight of each weekday for releases that share a day, given the others. */
function weekdayWeights(
  releases: readonly Release[],
  weekdays: readonly number[],
  own: readonly number[],
): Counts {
  const others = releases.filter(({ index }) => !own.includes(index));
  const all = pooled(countOf(others, weekdays), EVEN_WEEK, POOLED.even);
  return own.reduce(
    (weights, index) => {
      const { market, channel } = releases[index]!;
      const here = others.filter((one) => one.market === market);
      const ofMarket = pooled(countOf(here, weekdays), all, POOLED.dossier);
      const like = here.filter((one) => one.channel === channel);
      return pooled(countOf(like, weekdays), ofMarket, POOLED.market).map(
        (p, w) => p * weights[w]!,
      );
    },
    [1, 1, 1, 1, 1, 1, 1],
  );
}

const EVEN_WEEK: Counts = Array.from({ length: 7 }, () => 1 / 7);

function countOf(releases: readonly Release[], weekdays: readonly number[]): Counts {
  const counts: Counts = [0, 0, 0, 0, 0, 0, 0];
  for (const { index } of releases) counts[weekdays[index]!]! += 1;
  return counts;
}

/** Shares by counts and, with a weight, by what they are pooled to. */
function pooled(counts: Counts, to: Counts, weight: number): Counts {
  const n = counts.reduce((sum, c) => sum + c, 0);
  return counts.map((c, w) => (c + weight * to[w]!) / (n + weight));
}

/** Thirds of the releases by their days; one era where they lie within six years. */
export function erasOf(days: readonly number[]): number[] {
  const sorted = [...days].sort((a, b) => a - b);
  const n = sorted.length;
  if (n < 3 || sorted[n - 1]! - sorted[0]! < 6 * 365) return days.map(() => 0);
  const cuts = [sorted[Math.floor(n / 3)]!, sorted[Math.floor((2 * n) / 3)]!] as const;
  return days.map((day) => (day < cuts[0] ? 0 : day < cuts[1] ? 1 : 2));
}

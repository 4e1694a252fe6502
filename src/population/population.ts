import type { Evidence } from '../evidence/index.ts';
import { type Interval, type Shrinkage, shrinkage } from '../maths/index.ts';
import { seenByOf } from './certificates.ts';
import { extantOf } from './extant/extant.ts';
import { dayText, fallsOf, growthOf } from './growth.ts';
import { knownOf } from './known.ts';
import { toldOf } from './labels/fields.ts';
import { whyLow } from './low.ts';
import type { Tally } from './newest.ts';
import { lumpedRateOf, rateOf } from './rates.ts';
import { membersOf, type Part, partOf, type Read, readsOf } from './reads.ts';
import type {
  LabelMatch,
  Population,
  PrintingCount,
  Records,
  Seen,
  ServiceCount,
} from './types.ts';

/** Standard deviations between the ends of a central 95 %. */
const WIDTH = 3.92;
/** Matches less likely than this are not listed. */
const LISTED = 0.01;

/**
 * How many copies of each printing are graded, and how many can turn up, on a day.
 *
 * @param on a day number; reports and sightings after it are not looked at
 */
export function populationOf(records: Records, evidence: Evidence, on: number): Population {
  const told = toldOf(evidence);
  const seen = records.seen.filter(({ day }) => day <= on);
  const reads = readsOf(records, told, seen, on);
  const series = reads.map((read) => read.series);
  const services = told.ids.map((): ServiceCount[] => []);
  for (const read of reads) countService(read, reads, told.ids, services);
  const sightings = byPrinting(told.ids, seen);
  const looks = looksOf(reads, told.ids.length);
  const lows = whyLow(knownOf(told.ids, services, records, evidence, on));
  const printings = told.ids.map((id, at): PrintingCount => {
    const counts = services[at] as ServiceCount[];
    const mine = sightings[at] as Seen[];
    return {
      id,
      services: counts,
      extant: extantOf(mine, mostOf(mine, counts)),
      graded_at_most: counts.reduce((sum, one) => sum + Math.ceil(one.total95[1]), 0),
      seen_by: seenByOf(records.blocks, mine),
      low: lows[at] ?? null,
      certificates: certificatesOf(mine),
      looked: looks[at] as Record<string, number>,
    };
  });
  return {
    on: dayText(on),
    printings,
    matches: reads.flatMap((read) => matchesOf(read, told.ids)),
    growth: series.flatMap(growthOf),
    falls: series.flatMap(fallsOf),
    assumed: series.flatMap(({ service }) => (service.assumed ? service.id : [])),
  };
}

function certificatesOf(seen: readonly Seen[]): Record<string, string[]> {
  const certificates: Record<string, string[]> = {};
  for (const { service, certificate } of seen) {
    if (certificate === '') continue;
    const list = certificates[service] ?? [];
    if (!list.includes(certificate)) certificates[service] = [...list, certificate];
  }
  return certificates;
}

/** For each printing, how many slabs under each label of each service were looked at and were it. */
function looksOf(reads: readonly Read[], printings: number): Record<string, number>[] {
  const looks = Array.from({ length: printings }, (): Record<string, number> => ({}));
  for (const { series, matching } of reads)
    matching.looked.forEach((counts, label) => {
      const key = `${series.service.id}\n${series.newest.labels[label]}`;
      for (const [printing, count] of counts) {
        const mine = looks[printing];
        if (mine && count > 0) mine[key] = count;
      }
    });
  return looks;
}

/** The entries of one service, put to the printings that it lists. */
function countService(
  read: Read,
  reads: readonly Read[],
  ids: readonly string[],
  services: readonly ServiceCount[][],
): void {
  const { series, matching, tallies, homes } = read;
  const learned = shrinkage(tallies.map(({ top, total }) => ({ x: top, n: total })));
  homes.forEach((labels, printing) => {
    if (labels.length === 0) return;
    const parts = labels.map((label) => partOf(read, reads, label, printing));
    (services[printing] as ServiceCount[]).push({
      service: series.service.id,
      as_of: series.newest.asOf,
      labels: labels.map((label) => series.newest.labels[label] as string),
      ...summed(parts, learned),
      lumped_with: [
        ...new Set(
          labels.flatMap((label) =>
            membersOf(matching, label).flatMap((one) =>
              one === printing ? [] : (ids[one] as string),
            ),
          ),
        ),
      ],
      p_listed: 1 - (matching.unlisted[printing] as number),
      off_scale: Object.assign({}, ...labels.map((label) => (tallies[label] as Tally).offScale)),
    });
  });
}

function summed(parts: readonly Part[], learned: Shrinkage) {
  const sum = (value: (part: Part) => number) => parts.reduce((all, part) => all + value(part), 0);
  const n = sum(({ tally }) => tally.total);
  const x = sum(({ tally }) => tally.top);
  const total = sum(({ tally, share }) => tally.total * share);
  const total95: Interval = [
    sum(({ tally, share95 }) => tally.total * share95[0]),
    sum(({ tally, share95 }) => tally.total * share95[1]),
  ];
  const share = n > 0 ? total / n : 1;
  const whole = parts.every((part) => part.share === 1);
  const sure = n > 0 ? sum((part) => part.tally.total * part.sure) / n : 1;
  const rate = whole
    ? rateOf({ x, n }, learned, Math.round(20 * sure) / 20)
    : lumpedRateOf({ x, n }, share, (total95[1] - total95[0]) / n / WIDTH, learned);
  return { total, total95, top: sum(({ tally, share: s }) => tally.top * s), ...rate };
}

function byPrinting(ids: readonly string[], seen: readonly Seen[]): Seen[][] {
  const index = new Map(ids.map((id, at) => [id, at]));
  const lists = ids.map((): Seen[] => []);
  for (const one of seen) {
    const at = one.printings.length === 1 ? index.get(one.printings[0] as string) : undefined;
    if (at !== undefined) lists[at]?.push(one);
  }
  return lists;
}

/** What the services' counts allow; infinite where a copy was seen of a service that tells none. */
function mostOf(seen: readonly Seen[], counts: readonly ServiceCount[]): number {
  const counted = new Set(counts.map(({ service }) => service));
  if (seen.some(({ service, certificate }) => certificate !== '' && !counted.has(service)))
    return Number.POSITIVE_INFINITY;
  return counts.reduce((sum, { total95 }) => sum + total95[1], 0);
}

function matchesOf({ series, matching }: Read, ids: readonly string[]): LabelMatch[] {
  return series.newest.labels.flatMap((label, at) => {
    const pairs = [...(matching.held[at] as ReadonlyMap<number, number>)]
      .filter(([, p]) => p >= LISTED)
      .sort((a, b) => b[1] - a[1])
      .map(([printing, p]) => ({
        service: series.service.id,
        label,
        printing: ids[printing] as string,
        p,
        ...matching.compared(at, printing),
      }));
    const foreign = matching.foreign[at] as number;
    const none = {
      ...{ service: series.service.id, label, printing: null, p: foreign },
      ...{ agrees: [], near: [], differs: [] },
    };
    return foreign >= LISTED ? [...pairs, none] : pairs;
  });
}

import type { Evidence } from '../evidence/index.ts';
import { type Interval, type Shrinkage, shrinkage } from '../maths/index.ts';
import { seenByOf } from './certificates.ts';
import { extantOf } from './extant/extant.ts';
import { dayText, fallsOf, growthOf } from './growth.ts';
import { toldOf } from './labels/fields.ts';
import { type Matching, matched } from './labels/match.ts';
import { type Known, whyLow } from './low.ts';
import { type Lumped, sharesOf } from './lumps.ts';
import { type Series, seriesUpTo, type Tally, tallyOf } from './newest.ts';
import { lumpedRateOf, rateOf } from './rates.ts';
import type {
  LabelMatch,
  Population,
  PrintingCount,
  Records,
  Seen,
  ServiceCount,
} from './types.ts';

/** One service's newest report with its labels matched. */
interface Read {
  readonly series: Series;
  readonly matching: Matching;
  readonly tallies: readonly Tally[];
  /** By printing: its labels that are more likely its own than not. */
  readonly homes: readonly (readonly number[])[];
}

/** From this probability on a printing is taken to be counted under a label. */
const TAKEN = 0.5;
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
  const series = seriesUpTo(records, on);
  const reads = series.map((one): Read => {
    const matching = matched(one.newest, told, seen);
    const tallies = one.newest.labels.map((_, at) => tallyOf(one.newest, one.service, at));
    return { series: one, matching, tallies, homes: homesOf(matching, told.ids.length) };
  });
  const services = told.ids.map((): ServiceCount[] => []);
  for (const read of reads) countService(read, reads, told.ids, services);
  const sightings = byPrinting(told.ids, seen);
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
      looked: lookedAt(reads, at),
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

function lookedAt(reads: readonly Read[], printing: number): Record<string, number> {
  const entries = reads.flatMap(({ series, matching, homes }) =>
    (homes[printing] ?? []).map((label) => {
      const looked = matching.looked[label]?.get(printing) ?? 0;
      return [`${series.service.id}\n${series.newest.labels[label]}`, looked] as const;
    }),
  );
  return Object.fromEntries(entries.filter(([, count]) => count > 0));
}

function homesOf({ held }: Matching, printings: number): number[][] {
  const homes = Array.from({ length: printings }, (): number[] => []);
  held.forEach((pairs, label) => {
    for (const [printing, p] of pairs) if (p >= TAKEN) (homes[printing] as number[]).push(label);
  });
  return homes;
}

function membersOf({ held }: Matching, label: number): number[] {
  const pairs = held[label] as ReadonlyMap<number, number>;
  return [...pairs].flatMap(([printing, p]) => (p >= TAKEN ? printing : []));
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

/** A printing's part of one label. */
interface Part {
  readonly tally: Tally;
  readonly share: number;
  readonly share95: Interval;
  /** Share of the label's copies that are surely this printing's, as far as the match is sure. */
  readonly sure: number;
}

function partOf(read: Read, reads: readonly Read[], label: number, printing: number): Part {
  const tally = read.tallies[label] as Tally;
  const members = membersOf(read.matching, label);
  const sure = sureOf(read.matching.held[label] as ReadonlyMap<number, number>, printing);
  if (members.length < 2) return { tally, share: 1, share95: [1, 1], sure };
  const looked = read.matching.looked[label] as ReadonlyMap<number, number>;
  const lump = members.map((one): Lumped => {
    const apart = reads.flatMap((other) => (other === read ? [] : apartIn(other, one)));
    const sum = apart.length > 0 ? apart.reduce((a, b) => a + b, 0) : undefined;
    return { printing: one, looked: looked.get(one) ?? 0, apart: sum };
  });
  const share = sharesOf(lump).find((one) => one.printing === printing);
  return { tally, share: share?.mean ?? 0, share95: share?.interval95 ?? [0, 1], sure };
}

/** Half of what others may have under the label is taken off. Judgement, no source. */
function sureOf(held: ReadonlyMap<number, number>, printing: number): number {
  let others = 0;
  for (const [one, p] of held) if (one !== printing) others += p;
  return (held.get(printing) ?? 0) / (1 + others / 2);
}

/** What a service counts of a printing that it lists apart from all others. */
function apartIn({ homes, matching, tallies }: Read, printing: number): number[] {
  return (homes[printing] as readonly number[]).flatMap((label) =>
    membersOf(matching, label).length === 1 ? (tallies[label] as Tally).total : [],
  );
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
    : lumpedRateOf({ x, n }, share, learned);
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
      }));
    const foreign = matching.foreign[at] as number;
    const none = { service: series.service.id, label, printing: null, p: foreign };
    return foreign >= LISTED ? [...pairs, none] : pairs;
  });
}

function knownOf(
  ids: readonly string[],
  services: readonly ServiceCount[][],
  records: Records,
  evidence: Evidence,
  on: number,
): Known[] {
  const index = new Map(ids.map((id, at) => [id, at]));
  const raw = new Float64Array(ids.length);
  const graded = new Float64Array(ids.length);
  for (const offer of records.offers) {
    const at = index.get(offer.printing);
    if (at === undefined || offer.day > on) continue;
    raw[at]! += offer.raw;
    graded[at]! += offer.graded;
  }
  const odds = new Map<string, number>();
  for (const { printing, odds: chance } of evidence.contents)
    if (chance !== undefined) odds.set(printing, Math.max(chance, odds.get(printing) ?? 0));
  return ids.map((id, at) => ({
    graded: (services[at] as ServiceCount[]).reduce((sum, { total }) => sum + total, 0),
    offeredRaw: raw[at] as number,
    offeredGraded: graded[at] as number,
    odds: odds.get(id),
  }));
}

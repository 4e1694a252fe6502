import type { Interval } from '../maths/index.ts';
import type { Told } from './labels/fields.ts';
import { type Matching, matched } from './labels/match.ts';
import { type Lumped, sharesOf } from './lumps.ts';
import { type Series, seriesUpTo, type Tally, tallyOf } from './newest.ts';
import type { Records, Seen } from './types.ts';

/** One service's newest report with its labels matched. */
export interface Read {
  readonly series: Series;
  readonly matching: Matching;
  readonly tallies: readonly Tally[];
  /** By printing: its labels that are more likely its own than not. */
  readonly homes: readonly (readonly number[])[];
}

/** From this probability on a printing is taken to be counted under a label. */
const TAKEN = 0.5;

/** The newest report of each service up to a day, its labels matched. */
export function readsOf(records: Records, told: Told, seen: readonly Seen[], on: number): Read[] {
  return seriesUpTo(records, on).map((series) => {
    const { newest, service } = series;
    const matching = matched(newest, told, seen);
    const tallies = newest.labels.map((_, at) => tallyOf(newest, service, at));
    return { series, matching, tallies, homes: homesOf(matching, told.ids.length) };
  });
}

function homesOf({ held }: Matching, printings: number): number[][] {
  const homes = Array.from({ length: printings }, (): number[] => []);
  held.forEach((pairs, label) => {
    for (const [printing, p] of pairs) if (p >= TAKEN) (homes[printing] as number[]).push(label);
  });
  return homes;
}

/** The printings that are more likely under a label than not. */
export function membersOf({ held }: Matching, label: number): number[] {
  const pairs = held[label] as ReadonlyMap<number, number>;
  return [...pairs].flatMap(([printing, p]) => (p >= TAKEN ? printing : []));
}

/** A printing's part of one label. */
export interface Part {
  readonly tally: Tally;
  readonly share: number;
  readonly share95: Interval;
  /** Share of the label's copies that are surely this printing's, as far as the match is sure. */
  readonly sure: number;
}

/** A printing's part of one of its labels, by the owner's looks and what other services count apart. */
export function partOf(read: Read, reads: readonly Read[], label: number, printing: number): Part {
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

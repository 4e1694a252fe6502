import type { WeekdayFact } from '../evidence/index.ts';
import type { CellArrays } from './cells.ts';
import type { ReleaseEvent } from './events.ts';
import type { EventSupport } from './support.ts';

/** How many releases on its weekdays a stated habit counts for. Judgement, no source. */
export const STATED = 8;

/** The stated habits that hold for each event, by its market and channel. */
export function statedFor(
  facts: readonly WeekdayFact[],
  events: readonly Pick<ReleaseEvent, 'market' | 'channel'>[],
): (readonly WeekdayFact[])[] {
  if (facts.length === 0) return events.map(() => NONE);
  return events.map(({ market, channel }) =>
    facts.filter(
      (fact) => (fact.market ?? market) === market && (fact.channel ?? channel) === channel,
    ),
  );
}

const NONE: readonly WeekdayFact[] = [];

/** Cuts the background of each event where a habit stated for it begins and ends. */
export function cutAtPeriods(
  supports: readonly EventSupport[],
  stated: readonly (readonly WeekdayFact[])[],
): void {
  supports.forEach(({ cuts }, e) => {
    for (const { first, last } of stated[e]!) {
      if (Number.isFinite(first)) cuts.add(first);
      if (Number.isFinite(last)) cuts.add(last + 1);
    }
  });
}

/** For each event its kinds of week, the plain one first: what is stated of the days of its cells. */
export interface StatedWeeks {
  /** Where each event's kinds of week begin. */
  readonly weekStart: Int32Array;
  /** Releases that are stated to have fallen on each weekday, seven numbers a kind of week. */
  readonly weekStated: Float64Array;
  /** Seven times the place of a cell's kind of week among those of its event. */
  readonly cellWeek: Uint16Array;
}

/** Lays out the kinds of week; each cell lies within a period or outside it as a whole. */
export function layWeeks(
  stated: readonly (readonly WeekdayFact[])[],
  { cellStart, cellLo, cellHi }: CellArrays,
): StatedWeeks {
  const nEvents = stated.length;
  const weekStart = new Int32Array(nEvents + 1);
  const cellWeek = new Uint16Array(cellStart[nEvents]!);
  const counts: number[] = [];
  for (let e = 0; e < nEvents; e++) {
    const kinds = new Map<string, number>([['', 0]]);
    counts.push(...countsOf(NONE));
    for (let k = cellStart[e]!; stated[e]!.length > 0 && k < cellStart[e + 1]!; k++) {
      const within = stated[e]!.filter((f) => f.first <= cellLo[k]! && cellHi[k]! <= f.last);
      const key = within.map(({ row }) => row).join();
      if (!kinds.has(key)) {
        kinds.set(key, kinds.size);
        counts.push(...countsOf(within));
      }
      cellWeek[k] = 7 * kinds.get(key)!;
    }
    weekStart[e + 1] = weekStart[e]! + kinds.size;
  }
  return { weekStart, weekStated: Float64Array.from(counts), cellWeek };
}

function countsOf(facts: readonly WeekdayFact[]): number[] {
  const counts = [0, 0, 0, 0, 0, 0, 0];
  for (const { weekdays } of facts)
    for (const weekday of weekdays) counts[weekday - 1]! += STATED / weekdays.length;
  return counts;
}

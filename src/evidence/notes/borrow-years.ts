import { beginOf, hasYear, isDay, type Part } from './dates/part.ts';
import type { TimePhrase } from './dates/phrases-of-time.ts';
import type { Passage } from './passage.ts';

/** A time phrase whose readings all have a year, and whether the year was borrowed. */
export interface Completed {
  readonly time: TimePhrase;
  readonly index: number;
  readonly borrowed: boolean;
}

const complete = (time: TimePhrase) => time.parts.every(hasYear);

function withYear(time: TimePhrase, year: number): TimePhrase | undefined {
  const fill = (part: Part): Part => (hasYear(part) ? part : { ...part, year });
  const parts = time.parts
    .map(fill)
    .filter((part) => part.day === undefined || isDay(part.day, part.month ?? 0, part.year));
  if (parts.length === 0) return undefined;
  const filled = { ...time, parts, twoWay: parts.length > 1 };
  if (!time.last) return time.or ? { ...filled, or: fill(time.or) } : filled;
  const last = fill(time.last);
  const over = beginOf(last) < beginOf(parts[0]!) && last.year !== undefined;
  return { ...filled, last: over ? { ...last, year: last.year! + 1 } : last };
}

/** Whether only words that join stand between two dates: `January issue, 1996`. */
function near(passage: Passage, from: number, to: number): boolean {
  for (let at = from; at < to; at += 1) {
    if (passage.boundaries[at] === 'hard') return false;
    if (passage.roles[at] === 'free' && passage.boundaries[at] === 'none' && to - from > 6)
      return false;
  }
  return to - from <= 8;
}

function sameClause(passage: Passage, from: number, to: number): boolean {
  for (let at = from; at < to; at += 1) if (passage.boundaries[at] === 'hard') return false;
  return true;
}

/**
 * Gives every date of a passage a year: its own, that of the next or the last date of its clause,
 * or the one that the section states. Dates that find none are left out.
 */
export function withYears(passage: Passage, sectionYear: number | undefined): Completed[] {
  const { times } = passage;
  const result: Completed[] = [];
  const spent = new Set<number>();
  times.forEach((time, index) => {
    if (spent.has(index)) return;
    if (complete(time)) {
      result.push({ time, index, borrowed: false });
      return;
    }
    const next = times[index + 1];
    const bare = next?.style === 'bare' && !next.last && near(passage, time.to, next.from);
    if (bare && time.parts[0]!.month !== undefined) {
      spent.add(index + 1);
      const filled = withYear(time, next.parts[0]!.year!);
      if (filled) result.push({ time: filled, index, borrowed: false });
      return;
    }
    const year = yearFor(passage, index) ?? sectionYear;
    const filled = year === undefined ? undefined : withYear(time, year);
    if (filled) result.push({ time: filled, index, borrowed: true });
  });
  return result;
}

const REACH = 4;

function yearFor(passage: Passage, index: number): number | undefined {
  const { times } = passage;
  const here = times[index]!;
  for (let i = index + 1; i < Math.min(times.length, index + REACH); i += 1) {
    const year = times[i]!.parts[0]!.year;
    if (year !== undefined && sameClause(passage, here.to, times[i]!.from)) return year;
  }
  for (let i = index - 1; i >= Math.max(0, index - REACH); i -= 1) {
    const year = times[i]!.parts[0]!.year;
    if (year !== undefined) return year;
  }
  return undefined;
}

import { parseEdtf } from '../evidence/index.ts';

/** The printings that a cell means: forwarded ids and wholes followed, `a|b` as alternatives. */
export type Stands = (cell: string) => readonly string[];

/** First and last day that a cell can mean. */
export function daysOf(cell: string): { first: number; last: number } | undefined {
  const reading = parseEdtf(cell);
  if (!reading.ok) return undefined;
  const { ranges } = reading.date;
  const [first, last] = [ranges[0]?.first, ranges.at(-1)?.last];
  return first === undefined || last === undefined ? undefined : { first, last };
}

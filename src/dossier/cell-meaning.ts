import { parseEdtf } from '../evidence/index.ts';

/** First and last day that a cell can mean. */
export function daysOf(cell: string): { first: number; last: number } | undefined {
  const reading = parseEdtf(cell);
  if (!reading.ok) return undefined;
  const { ranges } = reading.date;
  const [first, last] = [ranges[0]?.first, ranges.at(-1)?.last];
  return first === undefined || last === undefined ? undefined : { first, last };
}

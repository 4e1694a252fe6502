import { MAX_LAGS } from './problem.ts';
import type { Statement } from './statements.ts';

/** A lag of one day is a reading of its own. */
const SHORTEST = 2;
const LONGEST = 400;
/** Share of a source's comparable days at which a difference recurs. */
const RECURS = 0.06;
/** The same where there is so much evidence that chance differences recur too. */
const RECURS_LARGE = 0.12;

/**
 * Candidate lags of each source: differences from other sources' days for the same release that
 * recur. Both sides of each difference are candidates, since which source dates another moment is
 * not known yet.
 *
 * @returns MAX_LAGS slots a source, and how many of them are used
 */
export function candidateLags(statements: readonly Statement[], nSources: number, nEvents: number) {
  const days = exactDays(statements, nEvents);
  const counts = Array.from({ length: nSources }, () => new Map<number, number>());
  const overlaps = new Int32Array(nSources);
  for (const list of days) countDifferences(list, counts, overlaps);
  const lags = new Int32Array(nSources * MAX_LAGS);
  const nLags = new Int32Array(nSources);
  counts.forEach((map, s) => {
    const least = Math.max(2, (overlaps[s]! > 200 ? RECURS_LARGE : RECURS) * overlaps[s]!);
    const best = [...map]
      .filter(([, n]) => n >= least)
      .sort((a, b) => b[1] - a[1] || Math.abs(a[0]) - Math.abs(b[0]) || a[0] - b[0])
      .slice(0, MAX_LAGS);
    nLags[s] = best.length;
    best.forEach(([lag], l) => {
      lags[s * MAX_LAGS + l] = lag;
    });
  });
  return { lags, nLags };
}

function exactDays(statements: readonly Statement[], nEvents: number): [number, number][][] {
  const days: [number, number][][] = Array.from({ length: nEvents }, () => []);
  for (const { property, events, source, values } of statements) {
    if (property !== 'on-sale' || events.length !== 1) continue;
    const spans = values[0]!.spans;
    if (spans.length === 1 && spans[0]!.lo === spans[0]!.hi)
      days[events[0]!]!.push([source, spans[0]!.lo]);
  }
  return days;
}

/** Counts each nonzero difference once a release and source, however many others share it. */
function countDifferences(
  list: readonly [number, number][],
  counts: Map<number, number>[],
  overlaps: Int32Array,
) {
  for (const [s, day] of list) {
    const seen = new Set<number>();
    let met = false;
    for (const [q, other] of list) {
      if (q === s) continue;
      met = true;
      const lag = day - other;
      if (Math.abs(lag) >= SHORTEST && Math.abs(lag) <= LONGEST) seen.add(lag);
    }
    if (met) overlaps[s]!++;
    for (const lag of seen) counts[s]!.set(lag, (counts[s]!.get(lag) ?? 0) + 1);
  }
}

import type { Evidence } from '../evidence/index.ts';
import { COPIED } from './attribution.ts';
import type { Compiled } from './compile.ts';
import { MAX_LAGS } from './problem.ts';
import { N_READINGS, NEAR_MOMENT, NOISE, OTHER_MOMENT, READINGS } from './readings.ts';
import type { DayWeights } from './spread.ts';
import type { Tally } from './tally.ts';
import type { DatedSource, Reading } from './types.ts';
import { sayLength } from './words.ts';

const WORDS: readonly string[] = [
  'right',
  'a day early',
  'a day late',
  'a few days off',
  'day and month swapped',
  'the first of the month for the month',
  'a year off about New Year',
  'another moment of the release',
  'a row out of step',
  'one day filled in for many',
  'the day of another market or wave',
  'no known way',
  'another moment of the release',
  'the date on the cover taken for the day of sale',
];

/** How reliable each source is, what it does when it errs, and from whom it derives. */
export function sourcesOf(
  evidence: Evidence,
  compiled: Compiled,
  tally: Tally,
  weights: readonly DayWeights[],
): DatedSource[] {
  const views = viewsBySource(compiled);
  return evidence.sources.map((source, s) => ({
    id: source.id,
    ...accuracyOf(evidence, compiled, tally, weights, views[s]!),
    derives: derivesOf(evidence, tally, s),
    habits: habitsOf(compiled, tally, views[s]!, s),
  }));
}

/** The first view of each on-sale statement, by source. */
function viewsBySource({ problem }: Compiled): number[][] {
  const out: number[][] = Array.from({ length: problem.nSources }, () => []);
  for (let v = 0; v < problem.nViews; v++) {
    if (problem.viewRate[v]! >= 0 && problem.viewRing[v]! >= v)
      out[problem.viewSource[v]!]!.push(v);
  }
  return out;
}

function accuracyOf(
  evidence: Evidence,
  { problem, statements }: Compiled,
  tally: Tally,
  weights: readonly DayWeights[],
  views: readonly number[],
) {
  let expected = 0;
  let rows = 0;
  const hits = new Float64Array(tally.days.length);
  for (const v of views) {
    const e = problem.viewEvent[v]!;
    for (const c of statements[problem.viewStatement[v]!]!.claims) {
      const { ranges } = evidence.claims[c]!.date!;
      const within = (d: number) => ranges.some((r) => r.first <= d && d <= r.last);
      rows++;
      const { days, p } = weights[e]!;
      for (let j = 0; j < days.length; j++) if (within(days[j]!)) expected += p[j]!;
      for (let t = 0; t < hits.length; t++) if (within(tally.days[t]![e]!)) hits[t]!++;
    }
  }
  if (rows === 0) return { accuracy: null, accuracy95: null, claims: 0 };
  hits.sort();
  const at = (q: number) => hits[Math.min(hits.length - 1, Math.floor(q * hits.length))]! / rows;
  const accuracy = expected / rows;
  return {
    accuracy,
    accuracy95: [Math.min(accuracy, at(0.025)), Math.max(accuracy, at(0.975))] as const,
    claims: rows,
  };
}

function derivesOf(evidence: Evidence, { parents, explained }: Tally, s: number) {
  const n = evidence.sources.length;
  const out: { from: string; p: number }[] = [];
  for (let q = 0; q < n; q++) {
    const p = parents[s * n + q]! / explained;
    if (p >= 0.01) out.push({ from: evidence.sources[q]!.id, p });
  }
  return out.sort((a, b) => b.p - a.p);
}

function habitsOf({ problem }: Compiled, tally: Tally, views: readonly number[], s: number) {
  const sums = new Float64Array(N_READINGS + 1);
  for (const v of views) {
    for (let r = 0; r <= COPIED; r++)
      sums[r]! += tally.readings[v * (N_READINGS + 1) + r]! / tally.explained;
  }
  sums[OTHER_MOMENT]! += sums[NEAR_MOMENT]!;
  sums[NEAR_MOMENT] = 0;
  const n = views.length;
  const out: {
    reading: Reading;
    words: string;
    share: number;
    share95: readonly [number, number];
  }[] = [];
  for (let r = 1; r <= COPIED; r++) {
    if (r === NOISE || sums[r]! < 0.5) continue;
    const share = sums[r]! / n;
    const sd = Math.sqrt((share * (1 - share)) / (n + 2));
    const words =
      r === COPIED
        ? 'taken from another source'
        : r === OTHER_MOMENT
          ? lagWords(problem.lags, tally, s)
          : WORDS[r]!;
    out.push({
      reading: nameOf(r),
      words,
      share,
      share95: [Math.max(0, share - 1.96 * sd), Math.min(1, share + 1.96 * sd)],
    });
  }
  return out.sort((a, b) => b.share - a.share);
}

function nameOf(r: number): Reading {
  if (r === COPIED) return 'copied';
  const name = READINGS[r]!;
  if (name === 'near-moment') return 'other-moment';
  return name === 'day-before' || name === 'day-after' ? 'next-day' : name;
}

function lagWords(lags: Int32Array, tally: Tally, s: number): string {
  let best = 0;
  for (let l = 1; l < MAX_LAGS; l++)
    if (tally.lags[s * MAX_LAGS + l]! > tally.lags[s * MAX_LAGS + best]!) best = l;
  const lag = lags[s * MAX_LAGS + best]!;
  return `${WORDS[OTHER_MOMENT]}, ${sayLength(lag)} ${lag > 0 ? 'after' : 'before'} it`;
}

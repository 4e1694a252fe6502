import cdf from '@stdlib/stats-base-dists-normal-cdf';
import type { Part } from './types.ts';

/** How far one grader's limit lies from another's, as a share of it. Judgement, no source. */
const TOLERANCE = 0.2;

/**
 * The probability that an amount stays within a limit, the limit itself known to a fifth. A limit
 * of 0 is exact: it allows nothing.
 */
export function within(parts: readonly Part[], atMost: number): number {
  return parts.reduce((sum, { weight, mean, sd }) => {
    const spread = Math.hypot(sd, mean > 0 ? TOLERANCE * atMost : 0);
    return sum + weight * (spread === 0 ? Number(mean <= atMost) : cdf(atMost, mean, spread));
  }, 0);
}

/** Marks that may or may not be there, each of a size with its error. */
export interface Doubtful {
  readonly p: number;
  readonly size: number;
  readonly sd: number;
}

/** Parts lighter than this are joined to their neighbour. */
const LIGHT = 1e-4;

/** The sum of sizes over marks that are each there with their own probability, as a mixture. */
export function totalOf(marks: readonly Doubtful[]): readonly Part[] {
  let parts: Part[] = [{ weight: 1, mean: 0, sd: 0 }];
  for (const { p, size, sd } of marks) {
    const there = parts.map((part) => ({
      weight: part.weight * p,
      mean: part.mean + size,
      sd: Math.hypot(part.sd, sd),
    }));
    const absent = parts.map((part) => ({ ...part, weight: part.weight * (1 - p) }));
    parts = joined([...absent, ...there]);
  }
  return parts;
}

/** Joins what is light to what lies beside it, so that a hundred marks stay a handful of parts. */
function joined(parts: readonly Part[]): Part[] {
  const sorted = parts.filter(({ weight }) => weight > 0).sort((a, b) => a.mean - b.mean);
  const kept: Part[] = [];
  const most = 64;
  const least = Math.max(LIGHT, sorted.length > most ? 0.5 / most : 0);
  for (const part of sorted) {
    const last = kept.at(-1);
    if (last && (part.weight < least || last.weight < least))
      kept[kept.length - 1] = both(last, part);
    else kept.push(part);
  }
  return kept;
}

/** One normal distribution with the weight, mean and variance of two. */
function both(a: Part, b: Part): Part {
  const weight = a.weight + b.weight;
  const mean = (a.weight * a.mean + b.weight * b.mean) / weight;
  const square =
    (a.weight * (a.sd ** 2 + a.mean ** 2) + b.weight * (b.sd ** 2 + b.mean ** 2)) / weight;
  return { weight, mean, sd: Math.sqrt(Math.max(0, square - mean ** 2)) };
}

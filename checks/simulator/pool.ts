import type { Bin, Score } from './figures.ts';

/** A mean over dossiers with its standard error. */
export interface Figure {
  readonly mean: number;
  readonly se: number;
}

/** Mean over dossiers of one figure, each dossier counting the same. */
export function figure(values: readonly number[]): Figure {
  const n = values.length;
  const mean = values.reduce((sum, v) => sum + v, 0) / n;
  const spread = values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / Math.max(1, n - 1);
  return { mean, se: Math.sqrt(spread / n) };
}

/** The bins of many dossiers put together. */
export function pooledBins(lists: readonly (readonly Bin[])[]): Bin[] {
  return Array.from({ length: 10 }, (_, i) => {
    const all = lists.map((list) => list[i]!);
    const count = all.reduce((sum, bin) => sum + bin.count, 0);
    const weigh = (of: (bin: Bin) => number) =>
      count === 0 ? 0 : all.reduce((sum, bin) => sum + bin.count * of(bin), 0) / count;
    return { stated: weigh((bin) => bin.stated), came: weigh((bin) => bin.came), count };
  });
}

/** Named, rightly named, true and found derivations of many dossiers. */
export function pooledDerivations(scores: readonly Score[]) {
  const sum = (of: (score: Score) => number) => scores.reduce((total, one) => total + of(one), 0);
  return {
    named: sum((one) => one.derived.named),
    precision: sum((one) => one.derived.named_right) / sum((one) => one.derived.named),
    recall: sum((one) => one.derived.found) / sum((one) => one.derived.true),
    bins: pooledBins(scores.map((one) => one.derived.bins)),
  };
}

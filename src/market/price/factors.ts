import type { PricedPrinting } from './types.ts';

/** A word that printings share, such as their language: they may be dear or cheap together. */
export interface Factor {
  readonly name: string;
  /** Level of each printing. */
  readonly level: Int32Array;
  readonly levels: number;
}

/**
 * The words that several printings share and not all of them. A word that is missing is a level of
 * its own. Of words that part the printings alike only the first is taken.
 */
export function factorsOf(printings: readonly PricedPrinting[]): Factor[] {
  const names = new Set(printings.flatMap(({ shared }) => Object.keys(shared)));
  const seen = new Set<string>();
  return [...names].sort().flatMap((name): Factor[] => {
    const index = new Map<string, number>();
    const level = Int32Array.from(printings, ({ shared }) => {
      const word = shared[name] ?? '';
      if (!index.has(word)) index.set(word, index.size);
      return index.get(word) as number;
    });
    const pattern = level.join();
    if (index.size < 2 || index.size > 0.7 * printings.length || seen.has(pattern)) return [];
    seen.add(pattern);
    return [{ name, level, levels: index.size }];
  });
}

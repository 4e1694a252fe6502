import type { Told } from './fields.ts';
import { LEVEL, type Levels } from './levels.ts';
import type { Columns } from './weights.ts';

/** Up to so many printings every pair is weighed. */
const ALL = 400;

/**
 * The printings worth weighing against a label: all of a small dossier; of a large one those of
 * which the number or the product is said.
 */
export function candidatesFor(told: Told, columns: Columns): (levels: Levels) => Iterable<number> {
  const size = told.ids.length;
  const everyone = told.ids.map((_, at) => at);
  if (size <= ALL) return () => everyone;
  const byNumber = holders(columns.of.number, columns.counts.number.length);
  const byProduct = holders(columns.of.product, columns.counts.product.length);
  return (levels) => {
    const product = agreeing(levels.words.product, byProduct);
    const number = agreeing(levels.number, byNumber);
    if (product.length > 0 && product.length <= ALL && number.length > 0)
      return new Set([...product, ...(number.length <= ALL ? number : [])]);
    if (number.length > 0 && number.length <= ALL) return number;
    return product.length > 0 ? product.slice(0, 4 * ALL) : [];
  };
}

function holders(of: Int32Array, size: number): number[][] {
  const lists = Array.from({ length: size }, (): number[] => []);
  of.forEach((value, printing) => {
    if (value >= 0) (lists[value] as number[]).push(printing);
  });
  return lists;
}

function agreeing(levels: Uint8Array, lists: readonly (readonly number[])[]): number[] {
  const found: number[] = [];
  levels.forEach((level, value) => {
    if (level === LEVEL.agrees) found.push(...(lists[value] as readonly number[]));
  });
  return found;
}

import type { Group, Item } from './items.ts';
import { blend, FAR, FEW_DAYS, type Kernel, NEAR, NEXT_DAY } from './kernels.ts';

/** Ways of being wrong, as the model tells them apart. */
export const WAYS = [
  'next-day',
  'few-days',
  'noise-near',
  'noise-far',
  'other-moment',
  'swapped',
  'first-of-month',
  'year-off',
  'sibling',
  'filled-in',
  'pen',
] as const;

export interface SourceModel {
  /** Chance that a statement about the group is right. */
  right(group: Group, day: number): number;
  /** Shares of `WAYS` among what is not right. */
  readonly shares: readonly number[];
  readonly lag: Kernel;
  /** The first five ways together, with their shares. */
  readonly moved: Kernel;
  /** Chance that a filled-in day lies between two days. */
  fill(first: number, last: number): number;
}

/** A statement of another source that this one may be taken from. */
export interface Parent {
  readonly rate: number;
  readonly agrees: boolean;
}

export interface Model {
  readonly sources: ReadonlyMap<string, SourceModel>;
  /** Shares of Monday … Sunday by market and channel. */
  weekday(group: Group): readonly number[];
  lead(item: Item): Kernel;
  parent(item: Item): Parent | undefined;
}

/** The ways that move a day by some number of days, together. */
export function movedBy(shares: readonly number[], lag: Kernel): Kernel {
  const parts = [NEXT_DAY, FEW_DAYS, NEAR, FAR, lag];
  return blend(parts.map((part, i) => [shares[i]!, part] as const));
}

export const PARTS: readonly Kernel[] = [NEXT_DAY, FEW_DAYS, NEAR, FAR];

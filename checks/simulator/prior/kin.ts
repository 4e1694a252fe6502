import type { Chance } from '../chance.ts';
import type { Design, Origin, Slot } from './design.ts';
import { COPYING, KIN, MANNERS } from './numbers.ts';

/** Who takes from whom, and in which runs. */
export interface Kin {
  /** For each source, its parent, or −1. */
  readonly parents: readonly number[];
  /** The sources, each after its parent. */
  readonly order: readonly number[];
  /** Chance that a statement within a copied run is copied. */
  readonly rate: number;
  /** Whether the run of a statement is copied. */
  copiedRun(slot: Slot): boolean;
}

/** Draws derivations, which run in no circle. */
export function drawKin(chance: Chance, { sources }: Design): Kin {
  const guarded = chance.yes(KIN.guarded);
  for (;;) {
    const parents = sources.map((source, s) => {
      const odds = sources.map((other, q) => {
        if (q === s) return 1;
        return guarded && !source.cites.includes(other.id)
          ? 0
          : oddsOf(source, other, sources.length);
      });
      const drawn = chance.weighted(odds);
      return drawn === s ? -1 : drawn;
    });
    const order = inOrder(parents);
    if (order.length < sources.length) continue;
    const share = Math.max(COPYING.leastRuns, Math.min(COPYING.most, chance.beta(...COPYING.runs)));
    const rate = Math.min(COPYING.most, chance.beta(...COPYING.rate));
    const runs = new Map<string, boolean>();
    const copiedRun = ({ source, property, release }: Slot) => {
      const key = `${source} ${property} ${release.product}`;
      const copied = runs.get(key) ?? chance.yes(share);
      runs.set(key, copied);
      return copied;
    };
    return { parents, order, rate, copiedRun };
  }
}

function oddsOf(source: Origin, other: Origin, count: number): number {
  if (source.cites.includes(other.id)) return KIN.cited;
  const odds = (KIN.others / Math.max(KIN.few, count - 1)) * MANNERS[source.kind]!.borrows;
  return other.cites.includes(source.id) ? odds * KIN.against : odds;
}

/** The sources that lie in no circle, parents first. */
function inOrder(parents: readonly number[]): number[] {
  const order: number[] = [];
  const placed = new Set([-1]);
  for (let found = true; found; ) {
    found = false;
    parents.forEach((parent, s) => {
      if (placed.has(s) || !placed.has(parent)) return;
      placed.add(s);
      order.push(s);
      found = true;
    });
  }
  return order;
}

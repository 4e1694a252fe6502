import type { Source } from '../types.ts';
import type { Reliability } from './types.ts';

/** Chance that a source which says it took things from another did so (`cites`). */
const CITED = 0.8;
/** Share of its facts that a derived source takes over (`dong:2009`). */
export const TAKEN = 0.8;
/** Chance that one of two sources takes from the other, where nothing is known of it. */
const UNKNOWN = 0.1;
/** No more than this is believed before facts are compared. */
const SUREST = 0.95;

/** For each source those before it that it may repeat, with the chance for one fact. */
export type Parents = ReadonlyMap<string, ReadonlyMap<string, number>>;

/** A chance for two sources, whichever came first. */
export class Pairs {
  readonly #chances = new Map<string, number>();

  get(a: string, b: string): number | undefined {
    return this.#chances.get(a < b ? `${a} ${b}` : `${b} ${a}`);
  }

  set(a: string, b: string, chance: number): void {
    this.#chances.set(a < b ? `${a} ${b}` : `${b} ${a}`, chance);
  }
}

/** Who takes from whom as dating found it or, where it found nothing out, as `cites` says. */
export function statedDerivations(
  sources: readonly Source[],
  known: readonly Reliability[],
): Map<string, Map<string, number>> {
  const direct = new Map(
    sources.map(({ id, cites }) => [
      id,
      new Map(cites.map((from) => [from, CITED / cites.length])),
    ]),
  );
  for (const { id, derives } of known)
    if (direct.has(id)) direct.set(id, new Map(derives.map(({ from, p }) => [from, p])));
  return direct;
}

/** Chance that one of two sources takes from the other, before their facts are compared. */
export function priorDependence(
  a: string,
  b: string,
  direct: ReadonlyMap<string, ReadonlyMap<string, number>>,
): number {
  const stated = (direct.get(a)?.get(b) ?? 0) + (direct.get(b)?.get(a) ?? 0);
  return Math.min(SUREST, Math.max(UNKNOWN, stated));
}

/**
 * Who may repeat whom. Two sources that share what the truth does not explain weigh the same
 * whichever of them was first, so each source looks only at those before it in `order`: no circle
 * can arise.
 */
export function parentsOf(order: readonly string[], dependent: Pairs): Parents {
  const parents = new Map<string, ReadonlyMap<string, number>>();
  order.forEach((id, at) => {
    const chances = order
      .slice(0, at)
      .map((from): [string, number] => [from, dependent.get(id, from) ?? 0])
      .filter(([, p]) => p > 0);
    const sum = chances.reduce((all, [, p]) => all + p, 0);
    const scale = TAKEN / Math.max(1, sum);
    parents.set(id, new Map(chances.map(([from, p]) => [from, scale * p])));
  });
  return parents;
}

import type { Answer } from './engine.ts';
import type { Score } from './figures.ts';
import { binned } from './figures.ts';
import type { Truth } from './types.ts';

const pair = (a: string, b: string) => (a < b ? `${a} ${b}` : `${b} ${a}`);

/**
 * How well direct derivations are named, direction aside: two sources are derived when either
 * truly took from the other; the stated probability of a pair is the sum of both directions.
 * Services that only state label years are left out.
 */
export function scoreDerivations(answer: Answer, truth: Truth): Score['derived'] {
  const real = new Set(truth.derivations.map((one) => pair(one.source, one.from)));
  const stated = new Map<string, number>();
  const known = new Set(truth.habits.map((h) => h.id));
  for (const source of answer.sources ?? []) {
    if (!known.has(source.id)) continue;
    for (const { from, p } of source.derives) {
      const key = pair(source.id, from);
      stated.set(key, Math.min(1, (stated.get(key) ?? 0) + p));
    }
  }
  const named = [...stated].filter(([, p]) => p >= 0.5).map(([key]) => key);
  const right = named.filter((key) => real.has(key)).length;
  return {
    named: named.length,
    named_right: right,
    true: real.size,
    found: right,
    bins: binned([...stated].map(([key, p]) => [p, real.has(key)])),
  };
}

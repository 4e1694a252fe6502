import type { Answer } from './engine.ts';
import { binned, type Score } from './score.ts';
import type { Truth } from './types.ts';

const pair = (a: string, b: string) => (a < b ? `${a} ${b}` : `${b} ${a}`);

/**
 * How well direct derivations are named, direction aside: two sources are derived when either
 * truly took from the other; the stated probability of a pair is the sum of both directions.
 */
export function scoreDerivations(answer: Answer, truth: Truth): Score['derived'] {
  const real = new Set(truth.derivations.map((one) => pair(one.source, one.from)));
  const stated = new Map<string, number>();
  for (const source of answer.sources ?? []) {
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

// The enumeration of sequences against samples of JAGS 4.3.1 (fixtures/sequence/jags.json, made by
// checks/makers/sequence): four equal windows, and five events of unequal weights of which some may
// share a day.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Event, enumerateSequence, type Order, summary } from './sequence-enumerated.ts';

interface Sampled {
  readonly label: string;
  readonly first: readonly number[];
  readonly weights: readonly (readonly number[])[];
  readonly earlier: readonly number[];
  readonly later: readonly number[];
  readonly strict: readonly number[];
  readonly events: readonly { readonly mean: number; readonly se: number; readonly p: number[] }[];
}
const file = new URL('../fixtures/sequence/jags.json', import.meta.url);
const { cases } = JSON.parse(readFileSync(file, 'utf8')) as { cases: readonly Sampled[] };

describe.each(cases.map((one) => [one.label, one] as const))('%s', (_, one) => {
  const events = one.first.map((first, i): Event => ({ first, weights: one.weights[i]! }));
  const orders = one.earlier.map(
    (earlier, j): Order => ({ earlier, later: one.later[j]!, strict: one.strict[j] === 1 }),
  );
  const { weights } = enumerateSequence(events, orders);

  it.each(one.events.map((event, i) => [i, event] as const))('event %i', (i, sampled) => {
    const { mean } = summary({ first: events[i]!.first, weights: weights[i]! });
    // Nine means: the largest of them lies 2.8 standard errors away, allowed 3.5.
    expect(Math.abs(mean! - sampled.mean)).toBeLessThan(3.5 * sampled.se);
    // 200,000 draws, correlated: measured 0.0023 on one day, allowed 0.004.
    sampled.p.forEach((p, k) => {
      expect(Math.abs(p - weights[i]![k]!)).toBeLessThan(0.004);
    });
  });
});

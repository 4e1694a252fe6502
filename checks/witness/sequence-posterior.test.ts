// The engine's exact sequences against the cases enumerated in R 4.2.2 (fixtures/sequence/ordering.json)
// and against samples of JAGS 4.3.1 (fixtures/sequence/jags.json); both made by checks/makers/sequence
// or as the files say, and neither by the engine.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sequencePosterior } from '../../src/dating/index.ts';
import { type Event, enumerateSequence, type Order, summary } from './sequence-enumerated.ts';

const read = (name: string) =>
  JSON.parse(readFileSync(new URL(`../fixtures/sequence/${name}.json`, import.meta.url), 'utf8'));

interface Sampled {
  readonly label: string;
  readonly first: readonly number[];
  readonly weights: readonly (readonly number[])[];
  readonly earlier: readonly number[];
  readonly later: readonly number[];
  readonly strict: readonly number[];
  readonly events: readonly { readonly mean: number; readonly se: number; readonly p: number[] }[];
}

describe.each((read('jags').cases as Sampled[]).map((one) => [one.label, one] as const))(
  'sequencePosterior against JAGS: %s',
  (_, one) => {
    const events = one.first.map((first, i): Event => ({ first, weights: one.weights[i]! }));
    const orders = one.earlier.map(
      (earlier, j): Order => ({ earlier, later: one.later[j]!, strict: one.strict[j] === 1 }),
    );
    const { weights } = sequencePosterior(events, orders);

    it.each(one.events.map((event, i) => [i, event] as const))('event %i', (i, sampled) => {
      const { mean } = summary({ first: events[i]!.first, weights: weights[i]! });
      // Nine means: the largest of them lies 2.8 standard errors away, allowed 3.5.
      expect(Math.abs(mean! - sampled.mean)).toBeLessThan(3.5 * sampled.se);
      // 200,000 draws, correlated: measured 0.0023 on one day, allowed 0.004.
      sampled.p.forEach((p, k) => {
        expect(Math.abs(p - weights[i]![k]!)).toBeLessThan(0.004);
      });
    });
  },
);

const fixture = read('ordering') as {
  readonly windows_inclusive: Readonly<Record<string, readonly [number, number]>>;
  readonly cases: readonly {
    readonly label?: string;
    readonly marginals?: Readonly<Record<string, Readonly<Record<string, number>>>>;
  }[];
  readonly marginal_B_strict: readonly (readonly [number, number])[];
};
const names = Object.keys(fixture.windows_inclusive);
const windows = names.map((name): Event => {
  const [first, last] = fixture.windows_inclusive[name]!;
  return { first, weights: new Array<number>(last - first + 1).fill(1) };
});
const likely = windows.map(({ first, weights }, i): Event => {
  if (names[i] !== 'B') return { first, weights };
  return { first, weights: weights.map((_, k) => Math.exp(-0.5 * ((first + k - 33) / 3) ** 2)) };
});
const facts = (strict: boolean, ...pairs: (readonly [number, number])[]) =>
  pairs.map(([earlier, later]) => ({ earlier, later, strict }));
const chain = [
  [0, 1],
  [1, 2],
  [2, 3],
] as const;

// Strict chain, weak chain, a circle of facts, a chain with a likelihood.
describe.each([
  ['strict A<B<C<D', windows, facts(true, ...chain)],
  ['weak A<=B<=C<=D', windows, facts(false, ...chain)],
  [
    'partial order: A before B and C; B and C before D; B and C unordered',
    windows,
    facts(true, [0, 1], [0, 2], [1, 3], [2, 3]),
  ],
  [
    'strict A<B<C<D with a discretised normal likelihood on B, centre 33, sd 3',
    likely,
    facts(true, ...chain),
  ],
] as const)('sequencePosterior against R: %s', (label, events, orders) => {
  const { marginals } = fixture.cases.find((one) => one.label === label)!;
  const { weights } = sequencePosterior(events, orders);

  it.each(names)('gives %s the same distribution', (name) => {
    const i = names.indexOf(name);
    const ours = summary({ first: events[i]!.first, weights: weights[i]! });
    const { min: _, max: __, ...theirs } = marginals![name]!;
    // 10 decimals in the fixture.
    for (const [key, value] of Object.entries(theirs)) expect(ours[key]).toBeCloseTo(value, 8);
  });
});

it('sequencePosterior gives B each of its days as often as R does', () => {
  const { weights } = sequencePosterior(windows, facts(true, ...chain));
  for (const [day, p] of fixture.marginal_B_strict)
    expect(weights[1]![day - windows[1]!.first]).toBeCloseTo(p, 10);
});

// A printing that came no later than three products and mostly with the earliest of them; the circle
// makes the engine fix events. Expected: every combination of days, gone through by the second program.
describe.each([
  ['a tree', []],
  ['a circle', [{ earlier: 1, later: 2, strict: false, sameDay: 3 }]],
] as const)('sequencePosterior where one day for two is likelier: %s', (_, more) => {
  const ordinary = [3, 1, 2, 5].map((first, i): Event => {
    return { first, weights: [4, 1, 3, 2, 6, 1, 2].map((w, k) => w + ((i * k) % 3)) };
  });
  const orders = [
    ...[1, 2, 3].map((later) => ({ earlier: 0, later, strict: false, sameDay: 8 })),
    ...more,
  ];

  it('gives what enumeration gives', () => {
    const expected = enumerateSequence(ordinary, orders).weights.flat();
    sequencePosterior(ordinary, orders)
      .weights.flat()
      .forEach((p, k) => {
        expect(p).toBeCloseTo(expected[k]!, 12);
      });
  });
});

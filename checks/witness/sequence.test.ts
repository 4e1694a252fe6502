// Sequences of events: four windows under strict, weak and partial orders, as fully enumerated in
// R 4.2.2 (fixtures/sequence/ordering.json; method: Buck, Cavanagh & Litton 1996). The enumeration
// in TypeScript is held against R here, so that it may judge the engine on other cases.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Event, enumerateSequence, type Order, summary } from './sequence-enumerated.ts';

interface Case {
  readonly label: string;
  readonly n_admissible?: number;
  readonly prior_probability_of_constraints?: number;
  readonly marginals: Readonly<Record<string, Readonly<Record<string, number>>>>;
}
const file = new URL('../fixtures/sequence/ordering.json', import.meta.url);
const fixture = JSON.parse(readFileSync(file, 'utf8')) as {
  windows_inclusive: Readonly<Record<string, readonly [number, number]>>;
  cases: readonly (Case | number)[];
  marginal_B_strict: readonly (readonly [number, number])[];
};
const names = Object.keys(fixture.windows_inclusive);
const windows = names.map((name): Event => {
  const [first, last] = fixture.windows_inclusive[name]!;
  return { first, weights: new Array<number>(last - first + 1).fill(1) };
});
const chain = (strict: boolean): Order[] =>
  [0, 1, 2].map((earlier) => ({ earlier, later: earlier + 1, strict }));
const diamond: Order[] = [
  [0, 1],
  [0, 2],
  [1, 3],
  [2, 3],
].map(([earlier, later]) => ({ earlier: earlier!, later: later!, strict: true }));
const normal = windows.map((event, i): Event => {
  if (names[i] !== 'B') return event;
  return {
    ...event,
    weights: event.weights.map((_, k) => Math.exp(-0.5 * ((event.first + k - 33) / 3) ** 2)),
  };
});

const CASES: readonly (readonly [label: string, events: Event[], orders: Order[]])[] = [
  ['strict A<B<C<D', windows, chain(true)],
  ['weak A<=B<=C<=D', windows, chain(false)],
  ['partial order: A before B and C; B and C before D; B and C unordered', windows, diamond],
  [
    'strict A<B<C<D with a discretised normal likelihood on B, centre 33, sd 3',
    normal,
    chain(true),
  ],
];

describe.each(CASES)('%s', (label, events, orders) => {
  const expected = fixture.cases.find(
    (one): one is Case => typeof one === 'object' && one.label === label,
  )!;
  const found = enumerateSequence(events, orders);

  it('has the combinations that R counts', () => {
    if (expected.n_admissible === undefined) return;
    expect(found.admissible).toBe(expected.n_admissible);
    expect(found.fit).toBeCloseTo(expected.prior_probability_of_constraints!, 10);
  });

  it.each(names)('gives %s the same distribution', (name) => {
    const i = names.indexOf(name);
    const ours = summary({ first: events[i]!.first, weights: found.weights[i]! });
    const { min: _, max: __, ...theirs } = expected.marginals[name]!;
    // 10 decimals in the fixture.
    for (const [key, value] of Object.entries(theirs)) expect(ours[key]).toBeCloseTo(value, 8);
  });
});

it('gives B each of its days as often as R does', () => {
  const { weights } = enumerateSequence(windows, chain(true));
  for (const [day, p] of fixture.marginal_B_strict)
    expect(weights[1]![day - 10]).toBeCloseTo(p, 10);
});

import { describe, expect, it } from 'vitest';
import { sequencePosterior } from '../../src/dating/index.ts';
import { enumerateSequence } from './sequence-enumerated.ts';

const flat = (first: number, n: number) => ({ first, weights: new Array<number>(n).fill(1) });
const ordinary = [
  { first: 0, weights: [3, 1, 4, 1, 5, 9, 2, 6] },
  { first: 2, weights: [5, 3, 5, 8, 9, 7] },
  { first: -1, weights: [2, 7, 1, 8, 2, 8, 1, 8, 2] },
  flat(3, 6),
];
const precedes = (earlier: number, later: number, strict = true) => ({ earlier, later, strict });

// Source: enumeration of every combination of days, written apart from the engine.
describe('sequencePosterior against enumeration', () => {
  it.each([
    ['no facts', []],
    ['a chain', [precedes(0, 1), precedes(1, 2), precedes(2, 3)]],
    ['a tree, one fact weak', [precedes(0, 1), precedes(0, 2, false), precedes(3, 2)]],
    ['a circle of facts', [precedes(0, 1), precedes(0, 2), precedes(1, 3), precedes(2, 3)]],
    [
      'two circles',
      [precedes(0, 1), precedes(0, 2), precedes(1, 3), precedes(2, 3, false), precedes(0, 3)],
    ],
  ])('agrees for %s', (_, orders) => {
    const found = sequencePosterior(ordinary, orders).weights;
    const truth = enumerateSequence(ordinary, orders).weights;
    // Sums of at most 8·6·9·6 products of whole numbers: rounding only.
    found.forEach((w, e) => {
      const total = truth[e]!.reduce((a, b) => a + b, 0);
      w.forEach((p, j) => {
        expect(p).toBeCloseTo(truth[e]![j]! / total, 12);
      });
    });
  });

  it('throws where no days are left', () => {
    expect(() => sequencePosterior([flat(5, 2), flat(1, 2)], [precedes(0, 1)])).toThrow(RangeError);
  });
});

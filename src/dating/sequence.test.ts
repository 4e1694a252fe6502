import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareDays, firstEvents, medianDay, middleOf, orderEvents } from './sequence.ts';
import type { DayWeights } from './spread.ts';

const spread = (...pairs: readonly (readonly [day: number, p: number])[]): DayWeights => ({
  days: Int32Array.from(pairs, ([day]) => day),
  p: Float64Array.from(pairs, ([, p]) => p),
});

const anySpread = fc
  .uniqueArray(fc.tuple(fc.integer({ min: 0, max: 8 }), fc.integer({ min: 1, max: 9 })), {
    minLength: 1,
    maxLength: 6,
    selector: ([day]) => day,
  })
  .map((list) => {
    const total = list.reduce((sum, [, w]) => sum + w, 0);
    const sorted = [...list].sort((a, b) => a[0] - b[0]);
    return spread(...sorted.map(([day, w]) => [day, w / total] as const));
  });

/** Every combination of days of independent events with its probability. */
function* combinations(
  events: readonly DayWeights[],
  days: readonly number[] = [],
  p = 1,
): Generator<{ days: readonly number[]; p: number }> {
  const event = events[days.length];
  if (event === undefined) yield { days, p };
  else
    for (let j = 0; j < event.days.length; j++)
      yield* combinations(events, [...days, event.days[j]!], p * event.p[j]!);
}

// Sums of at most 6³ products: rounding only. What is first with less than 0.0005 is left out.
const ROUNDING = 10;

describe('two events', () => {
  it('compare as by going through every pair of days', () => {
    fc.assert(
      fc.property(anySpread, anySpread, (a, b) => {
        let before = 0;
        let same = 0;
        for (const { days, p } of combinations([a, b])) {
          if (days[0]! < days[1]!) before += p;
          if (days[0] === days[1]) same += p;
        }
        const found = compareDays(a, b);
        expect(found.before).toBeCloseTo(before, ROUNDING);
        expect(found.same).toBeCloseTo(same, ROUNDING);
      }),
      { seed: 3, numRuns: 200 },
    );
  });

  it('compare by hand: a die of two sides against one of three', () => {
    const { before, same } = compareDays(
      spread([1, 0.5], [3, 0.5]),
      spread([1, 0.25], [2, 0.25], [3, 0.5]),
    );
    expect(before).toBeCloseTo(0.5 * 0.75, 12);
    expect(same).toBeCloseTo(0.5 * 0.25 + 0.5 * 0.5, 12);
  });
});

describe('the first of several events', () => {
  it('is as by going through every triple of days, ties shared', () => {
    fc.assert(
      fc.property(fc.array(anySpread, { minLength: 1, maxLength: 3 }), (events) => {
        const truth = events.map(() => 0);
        for (const { days, p } of combinations(events)) {
          const least = Math.min(...days);
          days.forEach((day, e) => {
            if (day === least) truth[e]! += p;
          });
        }
        const found = firstEvents(events, []);
        truth.forEach((p, e) => {
          if (p < 0.0006) expect(found.get(e) ?? 0).toBeLessThan(0.0006);
          else expect(found.get(e)).toBeCloseTo(p, ROUNDING - 2);
        });
      }),
      { seed: 4, numRuns: 200 },
    );
  });

  it('is none that a fact puts after another', () => {
    const found = firstEvents([spread([5, 1]), spread([3, 1]), spread([7, 1])], [[0, 1]]);
    expect([...found.keys()]).toEqual([0]);
    expect(found.get(0)).toBeCloseTo(1, 12);
  });
});

describe('the order of events', () => {
  it('is that of their middles', () => {
    const events = [spread([9, 1]), spread([1, 0.4], [50, 0.6]), spread([4, 0.6], [60, 0.4])];
    expect(events.map(medianDay)).toEqual([9, 50, 4]);
    expect(orderEvents(events.map(middleOf), [])).toEqual([2, 0, 1]);
  });

  it('never goes against a fact, and else keeps to the middles', () => {
    const events = [8, 6, 4, 2].map((day) => spread([day, 1]));
    expect(orderEvents(events.map(middleOf), [[0, 3]])).toEqual([2, 1, 0, 3]);
    const chain = [
      [0, 1],
      [1, 2],
      [2, 3],
    ] as const;
    expect(orderEvents(events.map(middleOf), chain)).toEqual([0, 1, 2, 3]);
  });

  it('holds every event once, whatever the facts', () => {
    const facts = fc.subarray([
      [0, 1],
      [0, 2],
      [1, 3],
      [2, 3],
      [4, 0],
    ] as [number, number][]);
    fc.assert(
      fc.property(fc.array(anySpread, { minLength: 5, maxLength: 5 }), facts, (events, orders) => {
        const order = orderEvents(events.map(middleOf), orders);
        expect([...order].sort()).toEqual([0, 1, 2, 3, 4]);
        for (const [a, b] of orders) expect(order.indexOf(a)).toBeLessThan(order.indexOf(b));
      }),
      { seed: 5, numRuns: 100 },
    );
  });
});

// What a stated weekday habit does to a day, against the predictive of a Dirichlet–multinomial worked
// out by hand (docs/methods/dating.md): an even week of weight 5, markets pooled to it with 4, channels
// to their market with 4, and eight releases for each stated habit.
import { describe, expect, it } from 'vitest';
import { date } from '../../src/dating/index.ts';
import { dayOf, type WeekdayFact, weekdayOf } from '../../src/evidence/index.ts';
import { dossier, type Said } from './dossier.ts';

const FRIDAY = 5;
/** A Thursday and a Friday, the one as likely as the other by what is claimed. */
const DOUBT: Said = ['x', 'note', '[1999-10-14..1999-10-15]'];
const fact = (part: Partial<WeekdayFact> = {}): WeekdayFact => ({
  row: 2,
  market: 'GB',
  weekdays: [FRIDAY],
  first: dayOf(1999, 1, 1),
  last: dayOf(2003, 12, 31),
  ...part,
});

interface Others {
  readonly names: readonly string[];
  readonly said: readonly Said[];
  readonly orders?: readonly string[];
}
const NOBODY: Others = { names: [], said: [] };

function datedWith(
  weekdays: readonly WeekdayFact[],
  { names, said, orders = [] }: Others,
  doubt = DOUBT,
) {
  const evidence = dossier({
    printings: ['x', ...names].map((id) => ({
      id,
      product: `box ${id}`,
      market: 'GB',
      channel: 'retail',
    })),
    sources: ['note', 'a', 'b', 'c'].map((id) => ({ id, kind: 'own-observation', cites: [] })),
    said: [doubt, ...said],
    orders,
  });
  const { printings } = date({ ...evidence, weekdays });
  return new Map(printings.find(({ id }) => id === 'x')!.days);
}

/** How much likelier the Friday is than the Thursday. */
function fridayOverThursday(weekdays: readonly WeekdayFact[], others = NOBODY): number {
  const days = datedWith(weekdays, others);
  return days.get('1999-10-15')! / days.get('1999-10-14')!;
}

/** Weight of a weekday given how many of the market's releases fell on it, and what is stated of it. */
function predictive(on: number, of: number, stated: number): number {
  const all = (on + 5 / 7) / (of + 5);
  const market = (on + 4 * all) / (of + 4);
  return on + 4 * market + stated;
}

describe('a stated weekday habit', () => {
  it('moves a day that the claims leave open, by the odds of its weekday', () => {
    expect(fridayOverThursday([])).toBeCloseTo(1, 9);
    // (8 + 4/7) to 4/7: one event, whose own day is left out, so that nothing is sampled.
    expect(fridayOverThursday([fact()])).toBeCloseTo(15, 9);
    expect(predictive(0, 0, 8) / predictive(0, 0, 0)).toBeCloseTo(15, 9);
  });

  it('shares its weight among the weekdays that it names', () => {
    const both = fact({ weekdays: [2, FRIDAY] });
    expect(fridayOverThursday([both])).toBeCloseTo(predictive(0, 0, 4) / predictive(0, 0, 0), 9);
    expect(fridayOverThursday([fact({ weekdays: [4, FRIDAY] })])).toBeCloseTo(1, 9);
  });

  it('holds in its market, channel and period only', () => {
    const { market: _, ...everywhere } = fact();
    expect(fridayOverThursday([everywhere])).toBeCloseTo(15, 9);
    expect(fridayOverThursday([fact({ channel: 'retail' })])).toBeCloseTo(15, 9);
    expect(fridayOverThursday([fact({ channel: 'club' })])).toBeCloseTo(1, 9);
    expect(fridayOverThursday([fact({ market: 'FI' })])).toBeCloseTo(1, 9);
    expect(fridayOverThursday([fact({ first: dayOf(2000, 1, 1) })])).toBeCloseTo(1, 9);
    expect(fridayOverThursday([fact({ last: dayOf(1999, 10, 15) })])).toBeCloseTo(15, 9);
  });

  it('does so where a sequence ties the day to others too', () => {
    const later: Others = {
      names: ['y'],
      said: ['a', 'b', 'c'].map((source) => ['y', source, '2002-05-03'] as const),
      orders: ['x<y'],
    };
    // One Friday beside it; on a sweep in two thousand it is held to be another day.
    const odds = predictive(1, 1, 8) / predictive(0, 1, 0);
    const found = fridayOverThursday([fact()], later);
    expect(found / odds).toBeGreaterThan(0.99);
    expect(found / odds).toBeLessThan(1.01);
  });

  it('is spread over the days of a period, and no further', () => {
    const days = datedWith([fact({ first: dayOf(1999, 7, 1) })], NOBODY, ['x', 'note', '1999']);
    const shareOfFridays = (from: number, to: number) => {
      let [fridays, all] = [0, 0];
      for (let day = from; day <= to; day++) {
        const iso = new Date(day * 86_400_000).toISOString().slice(0, 10);
        const p = days.get(iso) ?? 0;
        all += p;
        if (weekdayOf(day) === FRIDAY) fridays += p;
      }
      return fridays / all;
    };
    // Whole weeks: 26 before the period begins, 25 in it.
    expect(shareOfFridays(dayOf(1999, 1, 1), dayOf(1999, 6, 24))).toBeCloseTo(1 / 7, 3);
    expect(shareOfFridays(dayOf(1999, 7, 2), dayOf(1999, 12, 23))).toBeCloseTo(15 / 21, 3);
  });

  it('is overruled by releases that fell otherwise', () => {
    const thursdays = Array.from({ length: 14 }, (_, j) => 10_500 + 7 * j * 11).map(
      (day) => day - weekdayOf(day) + 4,
    );
    const contrary: Others = {
      names: thursdays.map((_, j) => `other${j}`),
      said: thursdays.flatMap((day, j) =>
        ['a', 'b', 'c'].map(
          (source) =>
            [`other${j}`, source, new Date(day * 86_400_000).toISOString().slice(0, 10)] as const,
        ),
      ),
    };
    const odds = predictive(0, 14, 8) / predictive(14, 14, 0);
    expect(odds).toBeLessThan(0.5);
    const found = fridayOverThursday([fact()], contrary);
    expect(found / odds).toBeGreaterThan(0.95);
    expect(found / odds).toBeLessThan(1.05);
  });
});

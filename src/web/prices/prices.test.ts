import { describe, expect, it } from 'vitest';
import type { PrintingPrices, SaleMark, WirePrice } from '../../contract/index.ts';
import { pictureOf } from './picture.ts';
import { stepTo } from './step.ts';
import { amount, explainPrice, explainSale, sayBackTest } from './tell.ts';

const raw: WirePrice = { service: null, grade: null, price: 20, interval80: [10, 40], sales: 1 };
const ten: WirePrice = { ...raw, service: 'plumb', grade: '10', price: 100, sales: 0 };
const sale: SaleMark = {
  ...{ row: 2, day: 9900, service: null, grade: null, kind: 'sold', price: '25.00' },
  ...{ currency: 'GBP', venue: 'Ninestile Rooms', home: 30, rateOf: '2026-01-31', odd: 0.1 },
  ...{ leftOut: null, perhaps: false },
};
const prices: PrintingPrices = {
  ...{ version: 1, on: '2026-06-30', day: 10_000, currency: 'EUR', prices: [raw, ten] },
  sales: [
    sale,
    {
      ...sale,
      row: 3,
      kind: 'asking',
      odd: null,
      home: 500,
      leftOut: 'an asking price is no sale',
    },
    { ...sale, row: 4, home: null },
  ],
  course: [
    { daysBack: 0, log: 0, sd: 0 },
    { daysBack: 100, log: Math.LN2, sd: 0.1 },
  ],
};

describe('a picture of prices', () => {
  const picture = pictureOf(prices, raw, 600, 300);

  it('has every sale with a price, the kind that is chosen told apart', () => {
    expect(picture.marks.map(({ sale: { row }, own }) => [row, own])).toEqual([
      [2, true],
      [3, true],
    ]);
    expect(pictureOf(prices, ten, 600, 300).marks.every(({ own }) => !own)).toBe(true);
  });

  it('is on a scale of logarithms: twice the price is as far everywhere', () => {
    const { low, mid, high } = picture.next;
    expect(low - mid).toBeCloseTo(mid - high, 9);
    const y = (at: number) => picture.ticks.find((tick) => tick.amount === at)!.y;
    expect(y(10) - y(20)).toBeCloseTo(y(50) - y(100), 9);
  });

  it('carries the median back by the market’s course', () => {
    const [now, before] = [...picture.median.matchAll(/([\d.]+) ([\d.]+)/g)].map(([, , y]) =>
      Number(y),
    );
    expect(now! - before!).toBeCloseTo(picture.next.low - picture.next.mid, 0);
  });
});

describe('arrow keys among the sales', () => {
  it('lead to the next and the one before, and stop at both ends', () => {
    expect(stepTo('ArrowRight', 3, 5)).toBe(4);
    expect(stepTo('ArrowDown', 4, 5)).toBe(4);
    expect(stepTo('ArrowLeft', 0, 5)).toBe(0);
    expect([stepTo('Home', 3, 5), stepTo('End', 3, 5)]).toEqual([0, 4]);
    expect(stepTo('Tab', 3, 5)).toBeNull();
  });
});

describe('what is said of prices', () => {
  const titles = new Map([['plumb', 'Plumb Assay']]);

  it('names the rate of the day, and why no price is learned from a row', () => {
    expect(explainSale(sale, titles, 'EUR')).toContain(
      '25.00 GBP (30.0 EUR at the rate of 31 January 2026), Ninestile Rooms; row 2',
    );
    expect(explainSale(prices.sales[1]!, titles, 'EUR')).toMatch(/^Asked raw .*no sale\.$/);
    expect(explainSale({ ...sale, odd: 0.97 }, titles, 'EUR')).toContain(
      'odd with probability 0.97',
    );
  });

  it('says that a kind was never sold, and how the newest sales fell', () => {
    expect(explainPrice(ten, 'EUR', '2026-06-30')).toContain('Never sold so far');
    expect(explainPrice(raw, 'EUR', '2026-06-30')).toContain('one sale of this very kind');
    expect(sayBackTest({ sales: 10, inside: 8, error: Math.log(1.25), days: 75 })).toContain(
      '8 of 10 sales fell within their range; half were off by less than 25 %',
    );
    expect(sayBackTest({ sales: 0, inside: 0, error: null, days: 75 })).toContain(
      'nothing was sold',
    );
    expect([0.5, 12.34, 456.7, 12_345].map(amount)).toEqual(['0.50', '12.3', '457', '12,300']);
  });
});

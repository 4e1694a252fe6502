import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayOf } from '../../evidence/index.ts';
import {
  claimMarks,
  closeup,
  dayAt,
  depth,
  extent,
  large,
  type Markable,
  markPath,
  offsetTicks,
  offsetX,
  panned,
  REACHES,
  ribbon,
  rowsInView,
  telling,
  xOf,
  yearTicks,
  zoomed,
} from './index.ts';

const scale = { from: dayOf(1990, 1, 1), to: dayOf(2000, 1, 1), width: 730 };

describe('the long axis', () => {
  it('turns days into pixels and back', () => {
    fc.assert(
      fc.property(fc.double({ min: -500, max: 1500, noNaN: true }), (x) => {
        // 3,652 days in floating point: measured 5e-11, allowed 1e-6 pixels.
        expect(xOf(scale, dayAt(scale, x))).toBeCloseTo(x, 6);
      }),
    );
  });

  it('holds the day under the pointer while zooming, as far as the limits let it', () => {
    const limits = [0, 10_000] as const;
    const [from, to] = zoomed(limits, 2, 5000, limits);
    expect([from, to]).toEqual([2500, 7500]);
    expect(zoomed([2500, 7500], 0.1, 5000, limits)).toEqual(limits);
    expect(zoomed([0, 100], 100, 50, limits)).toEqual([36, 64]);
  });

  it('never leaves its limits, whatever is done to it', () => {
    const step = fc.tuple(fc.boolean(), fc.double({ min: 0.05, max: 20, noNaN: true }));
    fc.assert(
      fc.property(fc.array(step, { maxLength: 20 }), (steps) => {
        const limits = [0, 9000] as const;
        let span: readonly [number, number] = limits;
        for (const [zooms, by] of steps) {
          span = zooms ? zoomed(span, by, span[0] + 10, limits) : panned(span, by * 99, limits);
        }
        expect(span[0]).toBeGreaterThanOrEqual(0);
        expect(span[1]).toBeLessThanOrEqual(9000);
        // The least span is 28 days; measured loss by rounding 4e-12 of a day.
        expect(span[1] - span[0]).toBeGreaterThan(27.999);
      }),
    );
  });

  it('names years far off, months nearer and days close up', () => {
    const labels = (from: number, to: number) =>
      yearTicks({ from, to, width: 600 })
        .filter(({ major }) => major)
        .map(({ label }) => label);
    expect(labels(dayOf(1990, 1, 1), dayOf(2010, 1, 1))).toEqual([
      '1990',
      '1992',
      '1994',
      '1996',
      '1998',
      '2000',
      '2002',
      '2004',
      '2006',
      '2008',
      '2010',
    ]);
    expect(labels(dayOf(1996, 1, 1), dayOf(1996, 12, 1)).slice(0, 3)).toEqual([
      '1996',
      'Apr 1996',
      'Jul 1996',
    ]);
    expect(labels(dayOf(1996, 2, 5), dayOf(1996, 3, 10))).toContain('26 Feb');
  });

  it('keeps labels apart by at least what is asked for', () => {
    fc.assert(
      fc.property(fc.integer({ min: 30, max: 200_000 }), (days) => {
        const ticks = yearTicks({ from: 3000, to: 3000 + days, width: 500 }, 50);
        const xs = ticks.filter(({ major }) => major).map(({ x }) => x);
        for (const [at, x] of xs.entries()) {
          const before = xs[at - 1];
          // A February is 28 of a month's mean 30.4 days, so labels may come 8 % nearer.
          if (before !== undefined) expect(x - before).toBeGreaterThan(50 * 0.9);
        }
      }),
    );
  });

  it('spans whole years that hold every day', () => {
    const days = [dayOf(1993, 6, 1), dayOf(2007, 2, 3)];
    expect(extent(days)).toEqual([dayOf(1993, 1, 1), dayOf(2008, 1, 1)]);
    expect(extent([])[0]).toBeLessThan(extent([])[1]);
  });
});

describe('the ribbon', () => {
  it('is as deep as the probability, and nothing where there is next to none', () => {
    expect(depth(1)).toBe(1);
    expect(depth(0.25)).toBe(0.5);
    expect(depth(0.004)).toBe(0);
  });

  it('never gets fainter when probability is added', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (a, b) => {
          expect(depth(Math.max(a, b))).toBeGreaterThanOrEqual(depth(Math.min(a, b)));
        },
      ),
    );
  });

  it('puts a sure day in one cell and joins cells of one depth', () => {
    const sure = dayOf(1995, 1, 1);
    expect(ribbon([[sure, 1]], scale)).toEqual([{ x: 363, width: 3, ink: 1 }]);
    const even = Array.from({ length: 300 }, (_, k) => [sure + k, 1 / 300] as const);
    expect(ribbon(even, scale).length).toBeLessThan(4);
  });
});

describe('the close-up', () => {
  it('draws a bar a day, as high as the root of the probability, and counts what lies outside', () => {
    const drawn = closeup(
      [
        [95, 0.1],
        [100, 0.64],
        [101, 0.25],
        [200, 0.01],
      ],
      100,
      7,
      {
        width: 150,
        height: 20,
      },
    );
    expect(drawn.bars.map(({ height }) => Math.round(height))).toEqual([6, 16, 10]);
    expect(drawn.bars.map(({ x, width }) => x + width / 2)).toEqual([25, 75, 85]);
    expect([drawn.before, drawn.after]).toEqual([0, 0.01]);
  });

  it('loses no probability when days share a pixel', () => {
    const days = Array.from({ length: 101 }, (_, k) => [k - 50, 1 / 101] as const);
    const { bars } = closeup(days, 0, 365, { width: 90, height: 20 });
    expect(bars.reduce((sum, { p }) => sum + p, 0)).toBeCloseTo(1, 12);
  });

  it('puts the best day in the middle and names only days within reach', () => {
    for (const reach of REACHES) {
      expect(offsetX(0, reach, 200)).toBeCloseTo(100, 9);
      expect(offsetTicks(reach)).toContain(0);
      expect(Math.max(...offsetTicks(reach))).toBeLessThanOrEqual(reach);
    }
  });
});

describe('claims beneath the days', () => {
  const claim = (property: string, span: Markable['span'], slip = false): Markable => ({
    property,
    slip,
    span,
  });
  const shapes = (claims: readonly Markable[]) =>
    claimMarks(claims, (day) => day, 100).marks.map(({ shape }) => shape);

  it('take a shape for what they are', () => {
    expect(
      shapes([
        claim('on-sale', [10, 10]),
        claim('on-sale', [10, 10], true),
        claim('on-sale', [10, 40]),
        claim('cover-date', [50, 80]),
        claim('seen-by', [10, 20]),
        claim('not-before', [10, 20]),
        claim('on-sale', [null, 30]),
      ]),
    ).toEqual(['tick', 'cross', 'span', 'bracket', 'until', 'from', 'until']);
  });

  it('are counted where they lie outside, and left out where they cover everything', () => {
    const { marks, before, after } = claimMarks(
      [claim('on-sale', [-5, -5]), claim('on-sale', [500, 500]), claim('label-year', [-50, 400])],
      (day) => day,
      100,
    );
    expect([marks.length, before, after]).toEqual([0, 1, 1]);
  });

  it('show a slip by a cross whatever its shape, so that colour is not needed', () => {
    const cross = /l6 6m0 -6l-6 6/;
    for (const span of [
      [10, 10],
      [10, 40],
    ] as const) {
      for (const property of ['on-sale', 'cover-date']) {
        const { marks } = claimMarks([claim(property, span, true)], (day) => day, 100);
        expect(markPath(marks[0]!, 0, 100)).toMatch(cross);
      }
    }
  });

  it('end openly where they run out of the picture', () => {
    const { marks } = claimMarks([claim('cover-date', [50, 180])], (day) => day, 100);
    expect(markPath(marks[0]!, 0, 100)).toBe('M50 8v-6v6H100');
  });

  it('leave bounds and covers out of the long axis beside a known day, slips never', () => {
    const all = [
      claim('on-sale', [10, 10]),
      claim('label-year', [0, 99]),
      claim('label-year', [0, 99], true),
      claim('seen-by', [10, 20]),
    ];
    expect(telling(all, true)).toEqual([all[0], all[2]]);
    expect(telling(all, false)).toEqual(all);
  });
});

describe('rows in view', () => {
  it('are those that the window touches, with some to spare', () => {
    expect(rowsInView(440, 440, 44, 1000, 0)).toEqual({ from: 10, to: 20 });
    expect(rowsInView(440, 440, 44, 1000, 5)).toEqual({ from: 5, to: 25 });
    expect(rowsInView(-300, 440, 44, 3, 5)).toEqual({ from: 0, to: 3 });
  });

  it('refuse a row without height', () => {
    expect(() => rowsInView(0, 100, 0, 10)).toThrow(RangeError);
  });
});

describe('the distribution drawn large', () => {
  it('has a true upright axis: heights are in proportion to probability', () => {
    const { bars, top } = large(
      [
        [0, 0.6],
        [1, 0.3],
        [9, 0.1],
      ],
      { width: 400, height: 100 },
    );
    expect(top).toBe(1);
    expect(bars.map(({ height }) => Math.round(height))).toEqual([60, 30, 10]);
  });

  it('puts days together where they are too many, and loses no probability', () => {
    const days = Array.from({ length: 4000 }, (_, k) => [k, 1 / 4000] as const);
    const { bars, daysPerBar } = large(days, { width: 600, height: 100 });
    expect(daysPerBar).toBeGreaterThan(1);
    expect(bars.reduce((sum, { p }) => sum + p, 0)).toBeCloseTo(1, 9);
    expect(Math.min(...bars.map(({ width }) => width))).toBeGreaterThanOrEqual(2);
  });
});

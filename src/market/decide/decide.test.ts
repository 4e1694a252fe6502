import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayFrom } from '../../evidence/index.ts';
import type { LandedCost } from '../landed/types.ts';
import type { Prices } from '../price/predict.ts';
import type { Price } from '../price/types.ts';
import { highestBid } from './bid.ts';
import { decide } from './decide.ts';
import { switchPoint } from './hinge.ts';
import { optionsOf } from './options.ts';
import type { DecisionGround, HeldCopy, Option, Tier } from './types.ts';

const euros = (amount: number) => ({ minor: Math.round(100 * amount), currency: 'EUR' });
const price = (service: string | null, grade: string | null, median: number): Price => ({
  service,
  grade,
  price: median,
  interval80: [median / 1.3, median * 1.3],
  level: { log: Math.log(median), sd: 0.1 },
  ahead: 0.05,
  sales: 3,
});
const prices: Prices = {
  of: new Map([
    [
      'plain',
      [price(null, null, 40), price('a', '8', 50), price('a', '9', 80), price('a', '10', 200)],
    ],
    [
      'foil',
      [price(null, null, 100), price('a', '8', 120), price('a', '9', 180), price('a', '10', 400)],
    ],
  ]),
  scatter: { raw: [{ share: 1, sd: 0.25 }], graded: [{ share: 1, sd: 0.2 }] },
  odd: new Float64Array(0),
  course: [],
};
const landed = (paid: number): LandedCost => ({
  copy: 'one',
  total: euros(paid + 5),
  lines: [{ name: 'price', parcel: euros(paid), share: euros(paid), how: 'as entered' }],
  assumed: [],
});
const copy = (over: Partial<HeldCopy> = {}): HeldCopy => ({
  id: 'one',
  status: 'arrived',
  printings: [{ id: 'plain', p: 1 }],
  service: null,
  grade: null,
  landed: landed(60),
  clock: { open: [], unclear: [] },
  gradeChances: [
    { service: 'a', p: { 8: 0.5, 9: 0.3, 10: 0.2 }, ungraded: null, by: 'population' },
  ],
  returnShipping: euros(4),
  offeredBack: null,
  sellingFeeRate: 0.1,
  ...over,
});
const tier = (over: Partial<Tier> = {}): Tier => ({
  service: 'a',
  tier: 'plain',
  fee: euros(20),
  maxValue: null,
  upcharge: null,
  ungradedFee: null,
  minCopies: 2,
  postage: euros(10),
  days: 60,
  ...over,
});
const ground = (copies: HeldCopy[], tiers: Tier[] = []): DecisionGround => ({
  on: dayFrom('2026-06-30'),
  currency: 'EUR',
  copies,
  prices,
  tiers,
});
const deadline = (against: string, left: number) => ({
  copy: 'one',
  parcel: '',
  against,
  startsFrom: 'arrived',
  startsOn: '2026-06-18',
  days: 14,
  counts: 'calendar' as const,
  done: '',
  last: dayFrom('2026-06-30') + left,
  left,
});
const open = (against: string, left: number) =>
  ({ open: [deadline(against, left)], unclear: [] }) as unknown as HeldCopy['clock'];
const only = (copies: HeldCopy, tiers: Tier[] = []) =>
  decide(ground([copies], tiers), new Map())[0]!;

describe('what may be done with a copy', () => {
  it('is worth what it may fetch, over the printings that it may be', () => {
    const mixed = only(
      copy({
        printings: [
          { id: 'plain', p: 0.75 },
          { id: 'foil', p: 0.25 },
        ],
      }),
    );
    expect(mixed).toMatchObject({
      keep: 55,
      sell: 49.5,
      return: null,
      complain: null,
      advice: 'keep',
    });
    expect(only(copy({ service: 'a', grade: '9' })).keep).toBe(80);
  });

  it('is returned for its price less postage, while a period runs that is not the carrier’s', () => {
    const held = only(copy({ clock: open('seller', 0) }));
    expect(held).toMatchObject({ return: 56, equalRefund: 16, advice: 'return' });
    expect(held.hingesOn).toContain('56.00 EUR');
    expect(only(copy({ clock: open('seller', -1) })).return).toBeNull();
    expect(only(copy({ clock: open('carrier', 3) })).return).toBeNull();
    expect(only(copy({ clock: open('seller', 3), returnShipping: null })).return).toBeNull();
    expect(only(copy({ clock: open('seller', 3), status: 'offered' })).return).toBeNull();
  });

  it('is complained about for what was offered back, while any period runs', () => {
    const offer = { offeredBack: euros(20) };
    expect(only(copy({ ...offer, clock: open('carrier', 2) }))).toMatchObject({
      complain: 60,
      advice: 'complain',
    });
    expect(only(copy({ ...offer })).complain).toBeNull();
  });

  it('gains by a tier what the grades fetch on average, less raw and fee', () => {
    // By hand: .5 x 50 + .3 x 80 + .2 x 200 = 89; 89 - 40 - 20 = 29; postage 10 / 2; spread 56.3.
    const held = only(copy(), [tier(), tier({ tier: 'quick', fee: euros(45) })]);
    expect(held.options[0]).toMatchObject({
      expectedGain: 29,
      postageShare: 5,
      upcharge: 0,
      ungraded: null,
      by: 'population',
    });
    expect(held.options[0]?.spread).toBeCloseTo(
      Math.sqrt(0.5 * 39 ** 2 + 0.3 * 9 ** 2 + 0.2 * 111 ** 2),
      9,
    );
    expect(held.options[0]?.pLoss).toBeCloseTo(0.5, 9);
    expect(held.submit).toEqual({ service: 'a', tier: 'plain', expectedGain: 24 });
    expect(held.advice).toBe('submit');
  });

  it('tells what a copy costs that comes back without a grade', () => {
    const [chances] = copy().gradeChances;
    const held = copy({ gradeChances: [{ ...chances!, ungraded: 0.04 }] });
    const cost = (over: Partial<Tier>) => only(held, [tier(over)]).options[0]?.ungraded;
    expect(cost({ ungradedFee: euros(8) })).toEqual({ p: 0.04, cost: 13 });
    // Without an entry of its own the whole fee is taken.
    expect(cost({})).toEqual({ p: 0.04, cost: 25 });
    expect(only(held, [tier()]).because).toMatch(/4 % of entries there are no grade/);
  });

  it('has no tier whose limit is passed, and none for a slab, an offer or a copy that is away', () => {
    expect(only(copy(), [tier({ maxValue: euros(88.99) })]).options).toEqual([]);
    expect(
      only(copy(), [tier({ maxValue: euros(89), upcharge: euros(30) })]).options[0]?.upcharge,
    ).toBeCloseTo(6, 9);
    for (const over of [
      { service: 'a', grade: '9' },
      { status: 'offered' },
      { status: 'submitted' },
      { gradeChances: [] },
    ])
      expect(only(copy(over as Partial<HeldCopy>), [tier()]).options).toEqual([]);
  });

  it('turns where the chance of the dearest grade makes submitting equal to the other way', () => {
    const [option] = optionsOf(copy(), prices, [tier()]);
    const at = switchPoint(option as Option, 40, 16);
    const q = at?.chance ?? 0;
    const rest = (0.5 * 50 + 0.3 * 80) / 0.8;
    expect(at).toMatchObject({ grade: '10', now: 0.2 });
    expect(q * 200 + (1 - q) * rest - 40 - 20 - 5).toBeCloseTo(16, 9);
    expect(only(copy({ clock: open('seller', 2) }), [tier()]).hingesOn).toContain(
      'submitting to a (plain) is better than returning if the chance of 10 is over',
    );
  });

  it('has nothing to decide once it is gone, and says why a price is not known', () => {
    expect(only(copy({ status: 'sold' }))).toMatchObject({
      keep: null,
      advice: null,
      because: 'it was sold',
    });
    expect(only(copy({ printings: [{ id: 'other', p: 1 }] })).because).toContain(
      'its price is not known',
    );
  });

  it('is advised by the greatest of what is open', () => {
    const any = fc.record({
      offered: fc.option(fc.integer({ min: 0, max: 60 })),
      paid: fc.integer({ min: 1, max: 120 }),
      fee: fc.integer({ min: 1, max: 60 }),
      left: fc.integer({ min: -2, max: 2 }),
    });
    fc.assert(
      fc.property(any, ({ offered, paid, fee, left }) => {
        const held = only(
          copy({
            landed: landed(paid),
            clock: open('seller', left),
            offeredBack: offered === null ? null : euros(offered),
          }),
          [tier({ fee: euros(fee) })],
        );
        const worth = {
          keep: held.keep,
          return: held.return,
          complain: held.complain,
          submit: held.submit && (held.keep as number) + held.submit.expectedGain,
        };
        const most = Math.max(...Object.values(worth).filter((one) => one !== null));
        expect(worth[held.advice as keyof typeof worth]).toBe(most);
      }),
    );
  });
});

describe('the highest bid', () => {
  // Landed: price, a fifth of it above 20, and 6 for postage.
  const landedAt = (minor: number) => minor + 600 + (minor > 2000 ? Math.round(minor / 5) : 0);

  it('keeps the chance that the copy is worth less than its cost at the limit, and no higher bid does', () => {
    for (const limit of [0.05, 0.2, 0.4]) {
      const bid = highestBid(copy(), prices, limit, landedAt, 100) as number;
      // A normal of sd √(.1² + .05² + .25²) about ln 40.
      const z = (minor: number) =>
        Math.log(landedAt(minor) / 100 / 40) / Math.sqrt(0.01 + 0.0025 + 0.0625);
      const quantile = { 0.05: -1.6448536, 0.2: -0.8416212, 0.4: -0.2533471 }[limit] as number;
      expect(z(bid)).toBeLessThanOrEqual(quantile + 1e-6);
      expect(z(bid + 1)).toBeGreaterThan(quantile);
    }
  });

  it('is nothing where postage alone costs more, and unknown where cost or price are', () => {
    expect(highestBid(copy(), prices, 0.2, (minor) => minor + 9000, 100)).toBe(0);
    expect(highestBid(copy(), prices, 0.2, () => undefined, 100)).toBeUndefined();
    expect(highestBid(copy({ printings: [] }), prices, 0.2, landedAt, 100)).toBeUndefined();
  });
});

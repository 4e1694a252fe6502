import { describe, expect, it } from 'vitest';
import { dayFrom } from '../../evidence/index.ts';
import { chanceUnder } from '../decide/worth.ts';
import { ratesOf } from '../money/rates.ts';
import type { Price } from '../price/types.ts';
import { type Listing, weighListing } from './listing.ts';
import { supposing } from './supposing.ts';
import type { Desk } from './types.ts';

const price: Price = {
  ...{ service: null, grade: null, price: 100, interval80: [70, 140], sales: 3 },
  ...{ level: { log: Math.log(100), sd: 0.1 }, ahead: 0.05 },
};
const prices = {
  of: new Map([['plain', [price]]]),
  scatter: { raw: [{ share: 1, sd: 0.25 }], graded: [{ share: 1, sd: 0.2 }] },
};
const desk: Desk = {
  on: dayFrom('2026-06-30'),
  home: { currency: 'EUR', country: 'FI', regretLimit: 0.2 },
  rates: ratesOf([{ day: dayFrom('2026-06-30'), currency: 'BRL', perEur: '6' }]),
  copies: [],
  parcels: [],
  charges: [
    {
      ...{ origin: '', carrier: '', validFrom: '', currency: 'EUR', taxBase: 'goods+shipping' },
      ...{ dutyRate: '0', taxRate: '0.25', dutyFreeBelow: null, taxFreeBelow: null },
      ...{ handlingFee: '4', paymentFeeRate: '0', sellingFeeRate: null, returnShipping: null },
    },
  ],
  tiers: [],
  wants: [],
};
const listing: Listing = {
  ...{ price: '300', currency: 'BRL', origin: 'BR', shippedBy: '', shipping: '60' },
  ...{ service: null, grade: null, printings: [{ id: 'plain', p: 1 }], pFalse: 0 },
};

describe('a listing', () => {
  it('costs its price, shipping, tax and handling, by hand', () => {
    // 300 and 60 BRL at 6 are 50 and 10 EUR; a quarter of 60 is 15; handling 4.
    expect(weighListing(desk, prices, listing).landed).toMatchObject({ total: { minor: 7900 } });
  });

  it('may be bid for up to the price at which the chance of regret is the limit', () => {
    const { highestBid } = weighListing(desk, prices, listing);
    const landed = (bid: number) => 1.25 * (bid + 10) + 4;
    const regret = (bid: number) =>
      chanceUnder(prices, listing.printings, null, null, landed(bid))!;
    // Lines are rounded to the cent: a cent of tax more or less moves the chance by under 0.001.
    expect(regret(highestBid!)).toBeLessThan(0.201);
    expect(regret(highestBid! + 0.05)).toBeGreaterThan(0.2 - 0.001);
  });

  it('counts a false copy as worth nothing, and takes no bid above the limit', () => {
    const half = weighListing(desk, prices, { ...listing, pFalse: 0.1 });
    const none = weighListing(desk, prices, { ...listing, pFalse: 0.25 });
    const sure = weighListing(desk, prices, listing);
    expect(half.highestBid).toBeLessThan(sure.highestBid!);
    expect(none.highestBid).toBe(0);
    expect(half.pRegret).toBeCloseTo(0.1 + 0.9 * sure.pRegret!, 12);
    const lawless = { ...desk, home: { ...desk.home, regretLimit: null } };
    expect(weighListing(lawless, prices, listing)).toMatchObject({ highestBid: null });
  });
});

describe('supposing', () => {
  const copy = {
    ...{ id: 'one', parcel: null, bought: null, price: '10', currency: 'BRL', offeredBack: null },
    ...{ status: 'offered' as const, printings: listing.printings, service: null, grade: null },
    ...{ clock: { open: [], unclear: [] } },
    gradeChances: [
      { service: 'a', p: { 8: 0.5, 9: 0.3, 10: 0.2 }, ungraded: null, by: 'population' as const },
    ],
  };
  const held = { ...desk, copies: [copy] };
  const none = { fees: [], grades: [], rates: [], prices: [], asked: [], taxRate: null };

  it('nothing changes nothing', () => {
    const same = supposing(held, prices, none);
    expect(same.desk.copies).toEqual(held.copies);
    expect(same.desk.rates.on('BRL', null)).toEqual(held.rates.on('BRL', null));
    expect(same.prices).toEqual(prices);
  });

  it('a chance leaves the other grades their shares, and all add up to 1', () => {
    const grades = [{ copy: 'one', service: 'a', grade: '10', p: 0.6 }];
    const [chances] = supposing(held, prices, { ...none, grades }).desk.copies[0]!.gradeChances;
    expect(chances?.p[8]).toBeCloseTo(0.25, 12);
    expect(chances?.p[9]).toBeCloseTo(0.15, 12);
    expect(chances?.p[10]).toBe(0.6);
  });

  it('a rate holds from the day on, and what was bought before keeps its own', () => {
    const rates = [{ currency: 'BRL', perEur: '5' }];
    const { desk: other } = supposing(held, prices, { ...none, rates });
    expect(other.rates.on('BRL', dayFrom('2026-06-29'))).toEqual(
      held.rates.on('BRL', dayFrom('2026-06-29')),
    );
    expect(Number(other.rates.on('BRL', null)?.perEur.over)).toBe(5);
  });
});

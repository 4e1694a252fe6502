import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { dayFrom } from '../../evidence/index.ts';
import { digitsOf } from '../money/currencies.ts';
import { ratesOf } from '../money/rates.ts';
import { chargeFor } from './charges.ts';
import { type LandedGround, landedCosts } from './landed.ts';
import type { BoughtCopy, Charge, LandedCost, Parcel } from './types.ts';

const charge = (over: Partial<Charge> = {}): Charge => ({
  origin: '',
  carrier: '',
  validFrom: '2026-01-01',
  dutyRate: '0',
  taxRate: '0',
  taxBase: 'goods+shipping+duty',
  dutyFreeBelow: null,
  taxFreeBelow: null,
  currency: 'EUR',
  handlingFee: '0',
  paymentFeeRate: '0',
  sellingFeeRate: null,
  returnShipping: null,
  ...over,
});
const copy = (over: Partial<BoughtCopy> = {}): BoughtCopy => ({
  id: 'one',
  parcel: 'box',
  bought: dayFrom('2026-06-02'),
  price: '100',
  currency: 'EUR',
  ...over,
});
const parcel = (over: Partial<Parcel> = {}): Parcel => ({
  id: 'box',
  origin: 'GB',
  shippedBy: 'letter',
  shipping: '10',
  insurance: '0',
  currency: 'EUR',
  taxPaid: null,
  bankRate: null,
  ...over,
});
const ground = (charges: Charge[], over: Partial<LandedGround> = {}): LandedGround => ({
  home: { currency: 'EUR', country: 'FI' },
  charges,
  rates: ratesOf([
    { day: dayFrom('2026-05-29'), currency: 'GBP', perEur: '0.8' },
    { day: dayFrom('2026-06-30'), currency: 'GBP', perEur: '0.9' },
  ]),
  ...over,
});
const landed = (...args: Parameters<typeof landedCosts>) => {
  const [cost] = landedCosts(...args);
  if (!cost || 'why' in cost) throw new Error(cost?.why ?? 'no cost');
  return cost;
};
const linesOf = ({ lines }: LandedCost) =>
  Object.fromEntries(lines.map(({ name, share }) => [name, digitsOf(share)]));

// Computed with Python 3.11 decimal, by the rule that the file states.
const file = new URL('../../../checks/fixtures/market/landed_cost_rounding.json', import.meta.url);
const { own_examples, carrier_guides } = JSON.parse(readFileSync(file, 'utf8'));

describe('a landed cost', () => {
  it.each((own_examples.cases as Record<string, string>[]).filter(({ inland }) => inland === '0'))(
    'of goods $goods agrees with decimal arithmetic',
    (one) => {
      const cost = landed(
        [copy({ price: one.goods ?? '' })],
        [parcel({ shipping: one.freight ?? '', insurance: one.insurance ?? '' })],
        ground([
          charge({
            dutyRate: one.duty_rate ?? '',
            taxRate: one.vat_rate ?? '',
            handlingFee: one.carrier_fee ?? '',
          }),
        ]),
      );
      expect(linesOf(cost)).toMatchObject({ duty: one.duty, tax: one.vat });
      expect(digitsOf(cost.total)).toBe(one.landed_total);
    },
  );

  it('agrees with a carrier’s public example of duty', () => {
    const { goods, freight_insurance, duty_rate, duty } = carrier_guides[1];
    const cost = landed(
      [copy({ price: String(goods) })],
      [parcel({ shipping: String(freight_insurance) })],
      ground([charge({ dutyRate: String(duty_rate) })]),
    );
    expect(Number(linesOf(cost).duty)).toBe(duty);
  });

  it('shares the lines of a parcel by price, to the last cent', () => {
    const costs = landedCosts(
      [
        copy({ price: '29.00', currency: 'GBP' }),
        copy({ id: 'two', price: '41.00', currency: 'GBP' }),
      ],
      [parcel({ shipping: '6.50', insurance: '1.20', currency: 'GBP' })],
      ground([
        charge({
          taxRate: '0.21',
          taxBase: 'goods+shipping',
          handlingFee: '3.20',
          paymentFeeRate: '0.01',
        }),
      ]),
    );
    // By hand at 0.8: 36.25 + 51.25 = 87.50; 8.125 -> 8.13; 1.50; tax .21 x 97.13 = 20.3973 -> 20.40;
    // 3.20; fee .9713 -> 0.97. By 3625 : 5125 of 8750: 3.37, 0.62, 8.45, 1.33, 0.40.
    expect(linesOf(costs[0] as LandedCost)).toEqual({
      price: '36.25',
      shipping: '3.37',
      insurance: '0.62',
      duty: '0.00',
      tax: '8.45',
      handling: '1.33',
      'payment fee': '0.40',
    });
    expect(linesOf(costs[1] as LandedCost)).toEqual({
      price: '51.25',
      shipping: '4.76',
      insurance: '0.88',
      duty: '0.00',
      tax: '11.95',
      handling: '1.87',
      'payment fee': '0.57',
    });
  });

  it('reckons nothing due below the free amounts, and no handling then', () => {
    const free = charge({
      dutyRate: '0.1',
      taxRate: '0.2',
      handlingFee: '5',
      dutyFreeBelow: '100.01',
      taxFreeBelow: '100.01',
    });
    expect(digitsOf(landed([copy()], [parcel()], ground([free])).total)).toBe('110.00');
    const due = charge({
      dutyRate: '0.1',
      taxRate: '0.2',
      handlingFee: '5',
      dutyFreeBelow: '100',
      taxFreeBelow: '100',
    });
    // 100 + 10; duty 11; tax .2 x 121 = 24.20; 5.
    expect(digitsOf(landed([copy()], [parcel()], ground([due])).total)).toBe('150.20');
  });

  it('takes the bill and the bank’s rate in the place of their estimates', () => {
    const cost = landed(
      [copy({ price: '96000', currency: 'KRW' })],
      [
        parcel({
          origin: 'KR',
          shipping: '18000',
          insurance: null,
          currency: 'KRW',
          taxPaid: '18.40',
          bankRate: '1512.3',
        }),
      ],
      ground([charge({ taxRate: '0.21', handlingFee: '5.5' })]),
    );
    expect(linesOf(cost)).toMatchObject({
      price: '63.48',
      shipping: '11.90',
      tax: '18.40',
      handling: '5.50',
    });
    expect(cost.assumed).toContain('insurance is not entered, counted as nothing');
  });

  it('has only the payment fee within the country, and counts an unknown origin as abroad', () => {
    const all = ground([
      charge({ dutyRate: '0.1', taxRate: '0.2', handlingFee: '5', paymentFeeRate: '0.01' }),
    ]);
    expect(digitsOf(landed([copy()], [parcel({ origin: 'FI' })], all).total)).toBe('111.10');
    const unknown = landed([copy()], [parcel({ origin: '' })], all);
    expect(linesOf(unknown).duty).toBe('11.00');
    expect(unknown.assumed.join()).toContain('counts as abroad');
  });

  it('says what is missing and never reckons it as nothing in silence', () => {
    expect(landed([copy()], [parcel()], ground([])).assumed.join()).toContain(
      'no entry of desk/charges.json fits',
    );
    expect(
      landed([copy()], [parcel()], ground([charge({ taxRate: null })])).assumed.join(),
    ).toContain('tax_rate');
    expect(landedCosts([copy({ price: null })], [parcel()], ground([]))).toEqual([
      { copy: 'one', why: 'its price is not entered' },
    ]);
    expect(landedCosts([copy({ currency: 'JPY' })], [parcel()], ground([]))).toEqual([
      { copy: 'one', why: 'rates.csv has no rate of JPY' },
    ]);
    const [first] = landedCosts([copy(), copy({ id: 'two', price: null })], [parcel()], ground([]));
    expect((first as LandedCost).assumed.join()).toContain('two is left out');
  });
});

describe('the entry for a parcel', () => {
  it('is the one that names most of it, and of those the newest', () => {
    const all = [
      charge({ handlingFee: '1' }),
      charge({ handlingFee: '2', origin: 'GB' }),
      charge({ handlingFee: '3', origin: 'GB', carrier: 'letter', validFrom: '2025-01-01' }),
      charge({ handlingFee: '4', origin: 'GB', carrier: 'letter' }),
      charge({ handlingFee: '5', origin: 'KR', carrier: 'letter', validFrom: '2026-05-01' }),
    ];
    const feeFor = (origin: string, shippedBy: string) =>
      chargeFor(all, { origin, shippedBy })?.handlingFee;
    expect([feeFor('GB', 'letter'), feeFor('GB', 'air'), feeFor('BR', 'letter')]).toEqual([
      '4',
      '2',
      '1',
    ]);
  });
});

import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayFrom } from '../../evidence/index.ts';
import { decimalsOf, digitsOf, moneyOf, sumOf } from './currencies.ts';
import { compared, dividedBy, exactOf, nearest, plus, roundedAway, times } from './exact.ts';
import { exchangedMoney, ratesOf } from './rates.ts';
import { sharedOut } from './shares.ts';

const read = (name: string) =>
  readFileSync(new URL(`../../../checks/fixtures/market/${name}`, import.meta.url), 'utf8');

describe('exact numbers', () => {
  const { rounding, allocation } = JSON.parse(read('landed_cost_rounding.json'));

  // Python 3.11 decimal; IEEE 754-2019 roundTiesToAway.
  it.each(
    (rounding.cases as Record<string, string>[]).map((one) => [
      one.value,
      one.quantum,
      one.half_away,
    ]),
  )('%s to the nearest %s is %s', (value = '', quantum = '', expected = '') => {
    const steps = roundedAway(dividedBy(exactOf(value), exactOf(quantum)));
    const back = times({ over: steps, under: 1n }, exactOf(quantum));
    expect(compared(back, exactOf(expected))).toBe(0);
  });

  it.each(allocation.cases as { total_minor: number; weights: number[]; parts: number[] }[])(
    '$total_minor shared by $weights is $parts',
    ({ total_minor, weights, parts }) => {
      expect(sharedOut(total_minor, weights)).toEqual(parts);
    },
  );

  it('shares add up to the whole and are within one of what is exact', () => {
    const weights = fc.array(fc.integer({ min: 0, max: 10_000 }), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(fc.integer({ min: -100_000, max: 100_000 }), weights, (total, each) => {
        const parts = sharedOut(total, each);
        const sum = each.reduce((a, b) => a + b, 0);
        expect(parts.reduce((a, b) => a + b, 0)).toBe(total);
        if (sum > 0)
          for (const [i, part] of parts.entries())
            expect(Math.abs(part - (total * (each[i] as number)) / sum)).toBeLessThan(1);
      }),
    );
  });

  it('reads decimals as written and refuses anything else', () => {
    expect(nearest(exactOf('-12.50'))).toBe(-12.5);
    expect(nearest(exactOf(1e-7))).toBe(1e-7);
    expect(nearest(plus(exactOf('0.1'), exactOf('0.2')))).toBe(0.3);
    for (const wrong of ['', '1,5', '1.', 'NaN', '1/2'])
      expect(() => exactOf(wrong)).toThrow(RangeError);
    expect(() => dividedBy(exactOf(1), exactOf(0))).toThrow(RangeError);
  });
});

describe('money', () => {
  it.each(
    read('iso4217_minor_units.csv')
      .trim()
      .split('\n')
      .slice(1)
      .map((line) => line.split(',')),
  )('%s has %s decimals by ISO 4217', (code = '', decimals) => {
    expect(decimalsOf(code)).toBe(Number(decimals));
  });

  it('is written with the decimals of its currency', () => {
    expect(digitsOf(moneyOf(exactOf('-0.05'), 'EUR'))).toBe('-0.05');
    expect(digitsOf(moneyOf(exactOf('1234.5'), 'KRW'))).toBe('1235');
    expect(digitsOf(moneyOf(exactOf('0.0005'), 'KWD'))).toBe('0.001');
  });

  it('does not add two currencies', () => {
    expect(() => sumOf([moneyOf(exactOf(1), 'EUR')], 'GBP')).toThrow(RangeError);
  });
});

describe('rates', () => {
  const row = (day: string, perEur: string) => ({ day: dayFrom(day), currency: 'GBP', perEur });
  const rates = ratesOf([row('2026-03-31', '0.9'), row('2026-01-31', '0.8')]);

  it.each([
    ['2026-01-31', '0.8', 'of the day'],
    ['2026-03-30', '0.8', 'last'],
    ['2026-04-02', '0.9', 'last'],
    ['2026-01-01', '0.8', 'first'],
    [null, '0.9', 'of the day'],
  ])('of %s is %s, %s', (day, perEur, how) => {
    const rate = rates.on('GBP', day === null ? null : dayFrom(day));
    expect(rate?.perEur).toEqual(exactOf(perEur));
    expect(rate?.how).toBe(how);
  });

  it('are missing where the table has none, but for the euro', () => {
    expect(rates.on('JPY', null)).toBeUndefined();
    expect(rates.on('EUR', null)?.how).toBe('euro');
  });

  it('go through the euro between two others', () => {
    const more = ratesOf([
      row('2026-01-31', '0.8'),
      { day: dayFrom('2026-01-31'), currency: 'KRW', perEur: '1600' },
    ]);
    const [pound, won] = [more.on('GBP', null), more.on('KRW', null)];
    if (!pound || !won) throw new Error('both have a rate');
    expect(exchangedMoney(exactOf('10'), pound, won)).toEqual({ minor: 20_000, currency: 'KRW' });
  });
});

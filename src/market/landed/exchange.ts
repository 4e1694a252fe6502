import { type Day, sayDay } from '../../evidence/index.ts';
import { type Currency, type Money, moneyOf } from '../money/currencies.ts';
import { dividedBy, type Exact, exactOf } from '../money/exact.ts';
import { exchanged, type Rates, type UsedRate } from '../money/rates.ts';
import type { Parcel } from './types.ts';

/** An amount in the desk's currency and how it got there. */
export interface InDeskMoney {
  /** Not rounded. */
  readonly exact: Exact;
  /** Rounded to the smallest unit. */
  readonly money: Money;
  readonly how: string;
}

/** Turns amounts into the desk's currency. */
export type ToDesk = (
  amount: string,
  currency: Currency | null,
  day: Day | null,
) => InDeskMoney | { readonly why: string };

/**
 * Turns amounts into the desk's currency by the rate of a day; those in the parcel's currency by
 * the rate that the bank took, where the owner entered one.
 */
export function toDeskBy(
  rates: Rates,
  home: Currency,
  { currency: parcelCurrency, bankRate }: Pick<Parcel, 'currency' | 'bankRate'>,
): ToDesk {
  return (amount, currency, day) => {
    if (currency === null) return { why: `${amount} has no currency` };
    const exact = exactOf(amount);
    if (currency === home) return { exact, money: moneyOf(exact, home), how: 'as entered' };
    if (bankRate !== null && currency === parcelCurrency) {
      const changed = dividedBy(exact, exactOf(bankRate));
      return {
        exact: changed,
        money: moneyOf(changed, home),
        how: `${amount} ${currency} at the bank’s rate of ${bankRate}`,
      };
    }
    const from = rates.on(currency, day);
    const to = rates.on(home, day);
    if (from === undefined) return { why: `rates.csv has no rate of ${currency}` };
    if (to === undefined) return { why: `rates.csv has no rate of ${home}` };
    const changed = exchanged(exact, from, to);
    const how = `${amount} ${currency} at the rate of ${[from, to].flatMap(told).join(' and ')}`;
    return { exact: changed, money: moneyOf(changed, home), how };
  };
}

function told({ currency, of, how }: UsedRate): string[] {
  if (of === null) return [];
  const note = how === 'first' ? ', the first there is' : how === 'last' ? ', the last before' : '';
  return [`${sayDay(of)} (${currency}${note})`];
}

/** An amount in the desk's currency at the rate of a day, rounded as charges are. */
export function deskMoney(
  rates: Rates,
  home: Currency,
  amount: string,
  currency: Currency | null,
  day: Day,
): Money | { readonly why: string } {
  const changed = toDeskBy(rates, home, { currency: null, bankRate: null })(amount, currency, day);
  return 'why' in changed ? changed : changed.money;
}
